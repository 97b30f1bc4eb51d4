package rigside.report;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.OptionalLong;
import rigside.protocol.Condition;
import rigside.protocol.Field;
import rigside.protocol.Protocol;
import rigside.protocol.Step;
import rigside.report.Block.Part;
import rigside.report.Block.Table;

/** A whole protocol on one page. */
public final class Outline {
    private Outline() {}

    /** What is said of every page that could be taken for more than it is. */
    static final String NO_FIT_TEST =
            "A comparison by and for one wearer. It is not a certified fit test.";

    /** As it is read at any time: how the order is drawn, not what is drawn. */
    public static Page of(Protocol protocol) {
        return of(protocol, OptionalLong.empty());
    }

    /**
     * The same.
     *
     * @param seed that of a session; the order drawn from it is then told for every round of the
     *     plan
     */
    public static Page of(Protocol protocol, OptionalLong seed) {
        List<Block> blocks = new ArrayList<>(paragraphs(protocol.about()));
        blocks.add(new Block.Caution(NO_FIT_TEST));
        add(blocks, "Cautions", points(protocol.cautions()));
        add(blocks, "Asked once a session", fields(protocol.facts()));
        boolean compares = protocol.purpose() == Protocol.Purpose.COMPARISON;
        add(blocks, compares ? "Compared" : "Worn", conditions(protocol.conditions()));
        add(blocks, "Measured", OutlineMeasures.of(protocol));
        add(blocks, "Plan", OutlinePlan.of(protocol, seed));
        add(blocks, before(protocol), steps(protocol, protocol.before()));
        add(blocks, "One donning", steps(protocol, protocol.donning()));
        add(blocks, "After the last donning", steps(protocol, protocol.after()));
        add(blocks, "Time at the bench", OutlineTimes.of(protocol));
        return new Page(protocol.title(), protocol.question(), blocks);
    }

    /** A file breaks its lines where it likes; only a blank line means something. */
    private static List<Block> paragraphs(String about) {
        return Arrays.stream(about.strip().split("\\R\\s*\\R", -1))
                .filter(paragraph -> !paragraph.isBlank())
                .<Block>map(Block.Words::new)
                .toList();
    }

    private static void add(List<Block> blocks, String title, List<Block> within) {
        if (!within.isEmpty()) {
            blocks.add(Part.of(title, "", within));
        }
    }

    private static List<Block> points(List<String> texts) {
        return texts.isEmpty() ? List.of() : List.of(new Block.Points(texts));
    }

    /** What is asked, and what is taken for an answer. */
    static List<Block> fields(List<Field> fields) {
        return fields.isEmpty()
                ? List.of()
                : List.of(
                        Table.pairs(
                                fields.stream()
                                        .map(field -> List.of(field.ask(), Taken.of(field)))
                                        .toList()));
    }

    private static List<Block> conditions(List<Condition> conditions) {
        if (conditions.isEmpty()) {
            return List.of();
        }
        List<List<Cell>> rows = new ArrayList<>();
        for (Condition each : conditions) {
            boolean reference = rows.isEmpty() && conditions.size() > 1;
            rows.add(
                    Cell.texts(
                            List.of(
                                    each.title() + (reference ? " (the reference)" : ""),
                                    each.specimen().piece(),
                                    worn(each.specimen().wornBefore()),
                                    switch (each.reading()) {
                                        case SEAL_ONLY -> "what passes the seal";
                                        case SEAL_AND_FILTER ->
                                                "what passes the seal and the filter";
                                    })));
        }
        return List.of(
                new Table(
                        Block.Head.of(
                                "Condition", "Specimen", "Worn before", "Particles in the mask"),
                        rows));
    }

    private static String worn(int times) {
        return times == 0 ? "never" : times == 1 ? "once" : times + " times";
    }

    private static List<Block> steps(Protocol protocol, List<Step> steps) {
        List<Block> parts = new ArrayList<>();
        for (Step step : steps) {
            parts.add(OutlineStep.of(protocol, step, parts.size() + 1));
        }
        return List.copyOf(parts);
    }

    /** The words the tester knows a condition by. */
    static String title(Protocol protocol, String condition) {
        return protocol.condition(condition).map(Condition::title).orElse(condition);
    }

    /** The heading of the steps that come first: all there are where nothing is worn. */
    static String before(Protocol protocol) {
        return protocol.donning().isEmpty() ? "Steps" : "Before the first donning";
    }
}
