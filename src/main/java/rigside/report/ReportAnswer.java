package rigside.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rigside.analysis.Comparison;
import rigside.analysis.ConditionSummary;
import rigside.analysis.InDigits;
import rigside.analysis.InstrumentCheck;
import rigside.analysis.MeasureResult;
import rigside.analysis.Reach;
import rigside.analysis.Repeatability;
import rigside.report.Block.Head;

/** What was found, one sentence a comparison, and how far it reaches. */
record ReportAnswer(Material of) {

    static List<Block> found(Material of) {
        ReportAnswer answer = new ReportAnswer(of);
        return InstrumentCheck.of(of.state()).map(answer::gates).orElseGet(answer::found);
    }

    private List<Block> gates(InstrumentCheck check) {
        List<Block> blocks = new ArrayList<>();
        if (check.gates().isEmpty()) {
            return List.of(new Block.Words(of.shown().next() + "."));
        }
        blocks.add(
                new Block.Table(
                        "What each gate read",
                        Head.of("Gate", "Needed", "Read", "Met"),
                        check.gates().stream()
                                .map(
                                        gate ->
                                                Cell.texts(
                                                        List.of(
                                                                gate.title(),
                                                                gate.needs(),
                                                                gate.read().orElse("not read"),
                                                                met(gate.standing()))))
                                .toList()));
        return blocks;
    }

    private static String met(InstrumentCheck.Standing standing) {
        return switch (standing) {
            case MET -> "yes";
            case NOT_MET -> "NO";
            case NOT_READ -> "not read";
        };
    }

    private List<Block> found() {
        List<Block> blocks = new ArrayList<>();
        if (!of.shown().result()) {
            blocks.add(
                    new Block.Words("Nothing of it is told yet: " + of.shown().concealed() + "."));
            blocks.addAll(beside());
            return blocks;
        }
        for (MeasureResult result : of.measures()) {
            result.repeatability().ifPresent(each -> blocks.addAll(spread(result, each)));
            result.comparisons().forEach(each -> blocks.addAll(compared(result, each)));
            if (!of.shown().isOut(result.measure())) {
                blocks.add(new Block.Stated(result.measure().title() + ":", "not told yet."));
            }
        }
        numbers().ifPresent(blocks::add);
        blocks.addAll(beside());
        return blocks;
    }

    private static List<Block> spread(MeasureResult result, Repeatability spread) {
        List<String> sentences = spread.sentences();
        if (sentences.isEmpty()) {
            return List.of(new Block.Stated(result.measure().title() + ":", "no value yet."));
        }
        List<Block> blocks = new ArrayList<>();
        blocks.add(
                new Block.Stated(
                        result.measure().title() + ":",
                        String.join(" ", sentences.subList(0, Math.min(2, sentences.size())))));
        if (sentences.size() > 2) {
            blocks.add(new Block.Points(sentences.subList(2, sentences.size())));
        }
        return blocks;
    }

    /** The verdict in a few words, the sentence, and what would change it. */
    private List<Block> compared(MeasureResult result, Comparison each) {
        String of = several() ? ", " + this.of.title(each.condition()) : "";
        String lead = result.measure().title() + of + ": " + each.words(each.verdict()) + ".";
        List<Block> blocks = new ArrayList<>();
        blocks.add(new Block.Stated(lead, each.sentenceBelowVerdict()));
        if (!each.isSettled()) {
            blocks.add(new Block.Words(each.next()));
        }
        blocks.add(new Block.Words(each.words().change()));
        return blocks;
    }

    private boolean several() {
        return of.protocol().conditions().size() > 2;
    }

    private Optional<Block> numbers() {
        List<List<Cell>> rows = new ArrayList<>();
        for (MeasureResult result : of.measures()) {
            for (Comparison each : result.comparisons()) {
                InDigits digits = InDigits.of(each);
                rows.add(
                        Cell.texts(
                                List.of(
                                        result.measure().title()
                                                + (several()
                                                        ? ", " + of.title(each.condition())
                                                        : ""),
                                        String.valueOf(each.n()),
                                        scale(result, each, digits.estimate()),
                                        scale(result, each, digits.interval()),
                                        scale(result, each, digits.band()),
                                        InDigits.verdict(each))));
            }
        }
        if (rows.isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(
                new Block.Table(
                        "Each change against "
                                + of.protocol().reference().title()
                                + ": a ratio, or a difference with its unit",
                        List.of(
                                new Head("Measure", false),
                                Head.figures("n"),
                                Head.figures("Change"),
                                Head.figures("Interval"),
                                Head.figures("Too small to matter"),
                                new Head("Verdict", false)),
                        rows));
    }

    private static String scale(MeasureResult result, Comparison each, String digits) {
        String unit = each.ratio() ? "" : result.measure().unit().symbol();
        return digits.isEmpty() ? "-" : (digits + " " + unit).strip();
    }

    /** Failed checks, abandoned and struck donnings stand beside every verdict. */
    private List<Block> beside() {
        List<ConditionSummary> conditions =
                of.measures().isEmpty() ? List.of() : of.measures().get(0).conditions();
        List<Block> blocks = new ArrayList<>();
        if (conditions.stream().allMatch(ReportAnswer::isPlain)) {
            if (!conditions.isEmpty()) {
                blocks.add(
                        new Block.Words(
                                "No check failed, no donning was broken off or struck out."));
            }
        } else {
            blocks.add(
                    new Block.Table(
                            "What else came of the donnings",
                            List.of(
                                    new Head("Condition", false),
                                    Head.figures("Failed checks"),
                                    Head.figures("Donnings broken off"),
                                    Head.figures("Donnings struck out")),
                            conditions.stream().map(this::outcomes).toList()));
        }
        long flags = of.measures().stream().mapToLong(each -> each.flags().size()).sum();
        if (flags > 0) {
            blocks.add(
                    new Block.Words(
                            (flags == 1 ? "One thing is" : flags + " things are")
                                    + " worth a second look; nothing was left out because of"
                                    + (flags == 1 ? " it." : " them.")));
        }
        return blocks;
    }

    private static boolean isPlain(ConditionSummary each) {
        return each.failedChecks().isEmpty()
                && each.abandoned().isEmpty()
                && each.struck().isEmpty();
    }

    private List<Cell> outcomes(ConditionSummary each) {
        return Cell.texts(
                List.of(
                        of.title(each.condition()),
                        String.valueOf(each.failedChecks().size()),
                        String.valueOf(each.abandoned().size()),
                        String.valueOf(each.struck().size())));
    }

    static List<Block> reach(Material of) {
        List<Block> blocks = new ArrayList<>();
        List<String> points = new ArrayList<>(Reach.of(of.state(), of.shown()));
        if (of.compares()) {
            points.addAll(
                    of.earlier()
                            .map(all -> List.of(Reach.earlier(all.size())))
                            .orElse(
                                    of.opened().simulated()
                                            ? List.of()
                                            : List.of(Reach.EARLIER_UNKNOWN)));
        }
        if (!points.isEmpty()) {
            blocks.add(new Block.Points(points));
        }
        of.earlier()
                .filter(all -> !all.isEmpty())
                .map(ReportAnswer::earlier)
                .ifPresent(blocks::add);
        blocks.add(new Block.Caution(Reach.noFitTest(of.protocol().purpose())));
        return blocks;
    }

    private static Block earlier(List<Material.Earlier> earlier) {
        return new Block.Table(
                "Earlier plans on the same question",
                List.of(
                        new Head("Begun", false),
                        Head.figures("Rounds"),
                        new Head("Came to", false)),
                earlier.stream()
                        .map(
                                each ->
                                        Cell.texts(
                                                List.of(
                                                        Clock.minute(each.begun()),
                                                        String.valueOf(each.rounds()),
                                                        !each.closed()
                                                                ? "not closed"
                                                                : each.came().isEmpty()
                                                                        ? "nothing compared"
                                                                        : String.join(
                                                                                "; ",
                                                                                each.came()))))
                        .toList());
    }
}
