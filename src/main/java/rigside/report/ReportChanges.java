package rigside.report;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import rigside.analysis.BothWays;
import rigside.analysis.MeasureResult;
import rigside.analysis.SlotWords;
import rigside.analysis.VerdictWords;
import rigside.protocol.Measure;
import rigside.protocol.Measure.Compared.Matters;
import rigside.report.Block.Head;
import rigside.report.Block.Part;
import rigside.session.Donning;
import rigside.session.Entry;

/** What was struck out or amended, and what that does to the verdicts. */
record ReportChanges(Material of) {

    static List<Block> of(Material of) {
        ReportChanges changes = new ReportChanges(of);
        List<Block> blocks = new ArrayList<>();
        List<List<Cell>> struck = changes.struck();
        if (!struck.isEmpty()) {
            blocks.add(
                    Part.of(
                            "Struck out",
                            "",
                            List.of(
                                    new Block.Table(
                                            "What stays on record and does not count",
                                            heads("Value"),
                                            struck),
                                    rule("struck out"))));
        }
        List<List<Cell>> amended = changes.amended();
        if (!amended.isEmpty()) {
            blocks.add(
                    Part.of(
                            "Amended",
                            "",
                            List.of(
                                    new Block.Table(
                                            "What was corrected: the value before stays on record",
                                            heads("Before", "After"),
                                            amended),
                                    rule("amended"))));
        }
        return blocks;
    }

    private static List<Head> heads(String... values) {
        List<Head> heads = new ArrayList<>(Head.of("What"));
        for (String value : values) {
            heads.add(Head.figures(value));
        }
        heads.addAll(Head.of("Reason", "When", "What it does"));
        return heads;
    }

    private static Block rule(String done) {
        return new Block.Words(
                "What is "
                        + done
                        + " before its round's look costs nothing. After it the verdict is reckoned"
                        + " both ways, and stands only if both agree.");
    }

    private List<List<Cell>> struck() {
        List<List<Cell>> rows = new ArrayList<>();
        for (Entry entry : of.state().captured().entries()) {
            entry.struck()
                    .ifPresent(
                            struck ->
                                    rows.add(
                                            Cell.texts(
                                                    List.of(
                                                            what(entry),
                                                            of.shown().isOut(entry)
                                                                    ? entry.value().toString()
                                                                    : "concealed",
                                                            struck.reason(),
                                                            after(struck.looksBefore()),
                                                            effect(entry)))));
        }
        for (Donning donning : of.state().course().donnings()) {
            if (donning.outcome() == Donning.Outcome.STRUCK) {
                rows.add(
                        Cell.texts(
                                List.of(
                                        "donning "
                                                + donning.number()
                                                + " as a whole, "
                                                + of.title(donning.condition()),
                                        "-",
                                        donning.reason(),
                                        after(donning.looksBefore()),
                                        effect(BothWays.of(of.state(), of.shown(), donning)))));
            }
        }
        return rows;
    }

    private List<List<Cell>> amended() {
        List<List<Cell>> rows = new ArrayList<>();
        for (Entry entry : of.state().captured().entries()) {
            for (int at = 0; at < entry.earlier().size(); at++) {
                Entry.Earlier before = entry.earlier().get(at);
                String after =
                        (at + 1 < entry.earlier().size()
                                        ? entry.earlier().get(at + 1).value()
                                        : entry.value())
                                .toString();
                boolean out = of.shown().isOut(entry, before);
                rows.add(
                        Cell.texts(
                                List.of(
                                        what(entry),
                                        out ? before.value().toString() : "concealed",
                                        of.shown().isOut(entry) ? after : "concealed",
                                        before.reason(),
                                        after(before.looksBefore()),
                                        effect(entry))));
            }
        }
        return rows;
    }

    private String what(Entry entry) {
        int donning = entry.slot().place().donning();
        return "entry "
                + entry.number()
                + ", "
                + SlotWords.of(of.state(), entry.slot())
                + (donning == 0 ? "" : "; donning " + donning + ", " + of.worn(donning));
    }

    /** Whether before a look or after it: looks are taken as rounds become complete. */
    private String after(int looks) {
        if (looks == 0) {
            return "before any round was complete";
        }
        int round = of.state().captured().looks().get(looks - 1).round();
        return "after " + round + (round == 1 ? " complete round" : " complete rounds");
    }

    private String effect(Entry entry) {
        return effect(BothWays.of(of.state(), of.shown(), entry));
    }

    private String effect(List<BothWays.Effect> effects) {
        if (!of.shown().result()) {
            return "concealed";
        }
        List<String> all = new ArrayList<>(effects.stream().map(this::effect).toList());
        concealed().forEach(each -> all.add(each.title() + ": concealed"));
        return all.isEmpty() ? "no look had used it: it changes nothing" : String.join("; ", all);
    }

    /** Measures of which not even is told whether it changes anything. */
    private Stream<Measure> concealed() {
        return of.measures().stream()
                .map(MeasureResult::measure)
                .filter(each -> each.compared().isPresent() && !of.shown().isOut(each));
    }

    private String effect(BothWays.Effect each) {
        Matters matters = each.now().matters();
        String now = VerdictWords.of(each.now().presently(), matters);
        return each.measure().title()
                + (of.protocol().conditions().size() > 2
                        ? ", " + of.title(each.now().condition())
                        : "")
                + ": "
                + now
                + (each.agrees()
                        ? " either way"
                        : " now, "
                                + VerdictWords.of(each.before().presently(), matters)
                                + " as it was before");
    }
}
