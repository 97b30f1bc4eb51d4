package rigside.report;

import java.util.ArrayList;
import java.util.List;

/**
 * How the traces of a measure are spread over figures: whole rounds together, so that conditions
 * stand side by side; what is too much for a figure, and too many figures, is only counted.
 *
 * @param pages what each figure shows, none empty
 * @param left how many are not drawn
 */
record PressurePages(List<List<PressureFollowed>> pages, int left) {
    /** In one figure: six rows of four on a wide sheet. */
    static final int PANELS = 24;

    /** Of one measure. */
    static final int FIGURES = 4;

    /** Those in the order of rounds. */
    static PressurePages of(List<PressureFollowed> all) {
        List<List<PressureFollowed>> pages = new ArrayList<>();
        int left = 0;
        for (List<PressureFollowed> round : rounds(all)) {
            List<PressureFollowed> drawn = round.subList(0, Math.min(PANELS, round.size()));
            left += round.size() - drawn.size();
            int last = pages.size() - 1;
            if (last >= 0 && pages.get(last).size() + drawn.size() <= PANELS) {
                pages.get(last).addAll(drawn);
            } else if (pages.size() < FIGURES) {
                pages.add(new ArrayList<>(drawn));
            } else {
                left += drawn.size();
            }
        }
        return new PressurePages(pages, left);
    }

    private static List<List<PressureFollowed>> rounds(List<PressureFollowed> all) {
        List<List<PressureFollowed>> rounds = new ArrayList<>();
        int round = 0;
        for (PressureFollowed each : all) {
            if (rounds.isEmpty() || each.donning().round() != round) {
                rounds.add(new ArrayList<>());
                round = each.donning().round();
            }
            rounds.get(rounds.size() - 1).add(each);
        }
        return rounds;
    }
}
