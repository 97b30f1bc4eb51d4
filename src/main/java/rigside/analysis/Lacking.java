package rigside.analysis;

import java.util.ArrayList;
import java.util.List;

/**
 * What the first look at two conditions waits for, condition by condition where they differ.
 *
 * @param rows the values so far
 */
record Lacking(Wording wording, Rows rows) {

    /** Values of the condition that has fewer. */
    int n() {
        return Math.min(rows.reference().size(), rows.other().size());
    }

    /** "2 more rounds"; "1 more value of plain and 2 more values of disc". */
    String more() {
        int done = wording.setting().perRound() * rows.rounds().size();
        if (rows.rounds().isEmpty() && isUneven()) {
            List<String> each = new ArrayList<>();
            add(each, rows.reference().size(), wording.reference());
            add(each, rows.other().size(), wording.condition());
            return Phrases.list(each);
        }
        int have = rows.rounds().isEmpty() ? n() : done;
        return wording.more(Math.max(1, fewest() - have));
    }

    private void add(List<String> lacking, int have, String of) {
        if (have < fewest()) {
            int more = fewest() - have;
            lacking.add(more + " more " + (more == 1 ? "value" : "values") + " of " + of);
        }
    }

    /** "1 of at least 3 rounds"; "plain has 2, disc 1 of at least 3 values". */
    String soFar() {
        return isUneven()
                ? wording.reference()
                        + " has "
                        + rows.reference().size()
                        + ", "
                        + wording.condition()
                        + " "
                        + rows.other().size()
                        + " of at least "
                        + fewest()
                        + " values"
                : n() + " of at least " + wording.units(fewest());
    }

    private boolean isUneven() {
        return rows.reference().size() != rows.other().size();
    }

    private int fewest() {
        return wording.setting().plan().fewest();
    }
}
