package rigside.report;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import rigside.analysis.Happened;
import rigside.analysis.SlotWords;
import rigside.analysis.StruckOut;
import rigside.analysis.VerdictWords;
import rigside.protocol.Measure.Compared.Matters;
import rigside.report.Block.Head;
import rigside.report.Block.Part;
import rigside.session.Entry;

/** What went otherwise than the protocol has it, and what that does to the verdicts. */
record ReportDeviations(Material of) {

    static List<Block> of(Material of) {
        ReportDeviations all = new ReportDeviations(of);
        List<Block> blocks = new ArrayList<>();
        all.struck(blocks);
        all.amended(blocks);
        for (Happened.Section each : Happened.sections(of.state())) {
            blocks.add(Part.of(each.heading(), "", List.of(new Block.Points(each.lines()))));
        }
        blocks.addAll(ReportCourse.of(of));
        return blocks.isEmpty() && of.state().course().cautionsRead()
                ? List.of(
                        new Block.Words(
                                "Nothing: no entry struck out, none left out, no pause, no note."))
                : blocks;
    }

    private void struck(List<Block> blocks) {
        List<StruckOut> all = StruckOut.of(of.state(), of.shown());
        if (all.isEmpty()) {
            return;
        }
        List<Block> within = new ArrayList<>();
        within.add(
                new Block.Table(
                        "What was struck out stays on record and does not count",
                        List.of(
                                new Head("What", false),
                                new Head("Value", false),
                                new Head("Reason", false),
                                new Head("When", false),
                                new Head("What it does", false)),
                        all.stream().map(this::row).toList()));
        within.add(
                new Block.Words(
                        "What is struck out before its round's look costs nothing. After it the"
                                + " verdict is reckoned both ways, and stands only if both agree."));
        blocks.add(Part.of("Struck out", "", within));
    }

    private List<Cell> row(StruckOut struck) {
        String what =
                struck.entry()
                        .map(
                                entry ->
                                        "entry "
                                                + entry.number()
                                                + ", "
                                                + SlotWords.of(of.state(), entry.slot())
                                                + worn(struck.donning()))
                        .orElseGet(
                                () ->
                                        "donning "
                                                + struck.donning()
                                                + " as a whole, "
                                                + of.worn(struck.donning()));
        String value =
                struck.entry()
                        .map(
                                entry ->
                                        of.shown().isOut(entry)
                                                ? entry.value().toString()
                                                : "concealed")
                        .orElse("-");
        return Cell.texts(
                List.of(
                        what,
                        value,
                        struck.reason(),
                        after(struck.looksBefore()),
                        effect(struck.effects())));
    }

    private String worn(int donning) {
        return donning == 0 ? "" : "; donning " + donning + ", " + of.worn(donning);
    }

    private static String after(int looks) {
        return looks == 0 ? "before any look" : "after look " + looks;
    }

    private String effect(List<StruckOut.Effect> effects) {
        if (effects.isEmpty()) {
            return of.shown().result() ? "no look had used it: it changes nothing" : "concealed";
        }
        return effects.stream().map(this::effect).collect(Collectors.joining("; "));
    }

    private String effect(StruckOut.Effect each) {
        Matters matters = each.without().matters();
        String with = VerdictWords.of(each.with().presently(), matters);
        return each.measure().title()
                + (of.protocol().conditions().size() > 2
                        ? ", " + of.title(each.without().condition())
                        : "")
                + ": "
                + (each.agrees()
                        ? with + " with it and without it"
                        : VerdictWords.of(each.without().presently(), matters)
                                + " without it, "
                                + with
                                + " with it");
    }

    private void amended(List<Block> blocks) {
        List<List<Cell>> rows = new ArrayList<>();
        for (Entry entry : of.state().captured().entries()) {
            for (int at = 0; at < entry.earlier().size(); at++) {
                Entry.Earlier before = entry.earlier().get(at);
                boolean out = of.shown().isOut(entry) && of.shown().concealed().isEmpty();
                String after =
                        (at + 1 < entry.earlier().size()
                                        ? entry.earlier().get(at + 1).value()
                                        : entry.value())
                                .toString();
                rows.add(
                        Cell.texts(
                                List.of(
                                        "entry "
                                                + entry.number()
                                                + ", "
                                                + SlotWords.of(of.state(), entry.slot())
                                                + worn(entry.slot().place().donning()),
                                        out ? before.value().toString() : "concealed",
                                        out ? after : "concealed",
                                        before.reason(),
                                        after(before.looksBefore()))));
            }
        }
        if (!rows.isEmpty()) {
            blocks.add(
                    Part.of(
                            "Amended",
                            "",
                            List.of(
                                    new Block.Table(
                                            "What was corrected later: the value before stays on"
                                                    + " record",
                                            Head.of("What", "Before", "Now", "Reason", "When"),
                                            rows))));
        }
    }
}
