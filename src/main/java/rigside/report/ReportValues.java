package rigside.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.TreeSet;
import rigside.analysis.Digits;
import rigside.analysis.DonningValue;
import rigside.analysis.Level;
import rigside.analysis.MeasureResult;
import rigside.analysis.Part;
import rigside.analysis.Standing;
import rigside.protocol.Condition;
import rigside.protocol.Plan;
import rigside.report.Block.Head;

/**
 * Every value of one measure: round by round side by side, and donning by donning with its parts.
 */
record ReportValues(Material of, MeasureResult result) {

    static List<Block> of(Material of, MeasureResult result) {
        ReportValues values = new ReportValues(of, result);
        List<Block> blocks = new ArrayList<>();
        boolean paired = of.compares() && of.protocol().plan().design() == Plan.Design.ROUNDS;
        if (result.values().isEmpty()) {
            return blocks;
        }
        if (paired && result.values().stream().anyMatch(DonningValue::counts)) {
            blocks.add(values.byRound());
        }
        blocks.add(values.byDonning());
        return blocks;
    }

    /**
     * The values that count, and the change of each round: of two conditions in a column of its
     * own, of more beside the value.
     */
    private Block byRound() {
        List<Condition> conditions = of.protocol().conditions();
        boolean two = conditions.size() == 2;
        String change = isRatio() ? "Ratio" : "Difference";
        List<Head> heads = new ArrayList<>();
        heads.add(new Head("Round", false));
        conditions.forEach(each -> heads.add(Head.figures(each.title())));
        if (two) {
            heads.add(Head.figures(change));
        }
        List<List<Cell>> rows = new ArrayList<>();
        for (int round :
                new TreeSet<>(result.values().stream().map(DonningValue::round).toList())) {
            List<String> cells = new ArrayList<>(List.of(String.valueOf(round)));
            Optional<DonningValue> reference = counting(round, conditions.get(0).id());
            cells.add(number(reference));
            for (Condition other : conditions.subList(1, conditions.size())) {
                Optional<DonningValue> value = counting(round, other.id());
                Optional<String> changed =
                        reference.flatMap(from -> value.map(to -> change(from, to)));
                String beside = two ? "" : changed.map(each -> " (" + each + ")").orElse("");
                cells.add(number(value) + beside);
                if (two) {
                    cells.add(changed.orElse("-"));
                }
            }
            rows.add(Cell.texts(cells));
        }
        return new Block.Table(
                "Round by round, the values that count"
                        + (two
                                ? ""
                                : " (" + change.toLowerCase(Locale.ROOT) + " to the reference)"),
                heads,
                rows);
    }

    private static String number(Optional<DonningValue> value) {
        return value.map(ReportValues::number).orElse("-");
    }

    private boolean isRatio() {
        return result.conditions().stream().anyMatch(each -> each.geometric());
    }

    private Optional<DonningValue> counting(int round, String condition) {
        return result.values().stream()
                .filter(each -> each.counts() && each.round() == round)
                .filter(each -> each.condition().equals(condition))
                .findFirst();
    }

    private String change(DonningValue reference, DonningValue other) {
        double from = reference.value().orElseThrow();
        double to = other.value().orElseThrow();
        boolean open = reference.bounded() || other.bounded();
        return (open ? "about " : "") + Digits.three(isRatio() ? to / from : to - from);
    }

    private static String number(DonningValue each) {
        double value = each.value().orElseThrow();
        return each.bounded() ? "at least " + Digits.threeAtLeast(value) : Digits.three(value);
    }

    private Block byDonning() {
        List<String> usual = usual();
        return new Block.Table(
                "Donning by donning, and what each value is made of",
                List.of(
                        new Head("Donning", false),
                        new Head("Round", false),
                        new Head("Condition", false),
                        Head.figures("Value"),
                        new Head(
                                "Made of"
                                        + (usual.isEmpty() ? "" : ": ")
                                        + String.join("; ", usual),
                                false)),
                result.values().stream()
                        .map(
                                each ->
                                        Cell.texts(
                                                List.of(
                                                        String.valueOf(each.donning()),
                                                        String.valueOf(each.round()),
                                                        of.title(each.condition()),
                                                        value(each),
                                                        parts(each, usual))))
                        .toList());
    }

    /** What the first donning that counts is made of, to be named once; empty of trials alone. */
    private List<String> usual() {
        return result.values().stream()
                .filter(DonningValue::counts)
                .map(each -> titles(made(each)))
                .filter(titles -> !titles.stream().allMatch(ReportValues::isTrial))
                .findFirst()
                .orElse(List.of());
    }

    private String value(DonningValue each) {
        String number = each.value().isPresent() ? number(each) : "";
        return switch (each.standing()) {
            case COUNTS -> number + level(each.level());
            case OPEN -> (number + " still worn").strip();
            case WITHOUT_VALUE -> "none" + why(each);
            case ABANDONED -> "broken off";
            case STRUCK -> (number + " struck out").strip();
        };
    }

    /** Nothing where one of its parts, in the same row, says it. */
    private static String why(DonningValue each) {
        boolean told = each.parts().stream().anyMatch(part -> part.value().isEmpty());
        return told ? "" : ": " + String.join("; ", each.missing());
    }

    private static String level(Level level) {
        return switch (level) {
            case NONE, REACHED -> "";
            case MISSED -> ", below the level";
            case OPEN -> ", level open";
        };
    }

    private static String parts(DonningValue each, List<String> usual) {
        List<Part> made = made(each);
        List<String> titles = titles(made);
        boolean trials = titles.stream().allMatch(ReportValues::isTrial);
        boolean named = !trials && !titles.equals(usual);
        return String.join(
                trials ? ", " : "; ",
                made.stream()
                        .map(part -> (named ? part.title() + " " : "") + number(part))
                        .toList());
    }

    private static List<Part> made(DonningValue each) {
        return each.counts() || each.standing() == Standing.WITHOUT_VALUE
                ? each.parts()
                : each.parts().stream().filter(part -> part.value().isPresent()).toList();
    }

    private static List<String> titles(List<Part> made) {
        return made.stream().map(Part::title).toList();
    }

    private static boolean isTrial(String title) {
        return title.startsWith("trial ");
    }

    private static String number(Part part) {
        String value =
                part.value().isEmpty()
                        ? "none (" + part.missing() + ")"
                        : part.bounded()
                                ? "at least " + Digits.threeAtLeast(part.value().getAsDouble())
                                : Digits.three(part.value().getAsDouble());
        return value
                + level(part.level()).replaceFirst("^, (.*)", " ($1)")
                + (part.counted() ? "" : " (not counted)");
    }
}
