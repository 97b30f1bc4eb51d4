package rigside.report;

import java.util.ArrayList;
import java.util.List;
import rigside.protocol.Condition;
import rigside.protocol.Protocol;
import rigside.protocol.Step;
import rigside.report.Block.Part;
import rigside.report.Block.Start;
import rigside.report.Block.Table;
import rigside.session.Schedule;

/**
 * A protocol as a form to be filled in by hand when the laptop stays in the bag. Every round has a
 * page of its own, so that the order comes to light one round at a time.
 */
public final class Form {
    private static final int NOTE_LINES = 3;

    /** Where more donnings come to nothing, a page is printed again. */
    private static final int SPARE_DONNINGS = 1;

    private Form() {}

    /**
     * The form of a whole plan.
     *
     * @param name what the protocol is called on the command line; it is printed too
     * @param seed draws the order; it is printed, so that the form can be typed in later
     */
    public static Page of(Protocol protocol, String name, long seed) {
        List<Block> blocks = new ArrayList<>();
        blocks.add(new Block.Caution("Paper form, seed " + seed + ". " + Outline.NO_FIT_TEST));
        blocks.add(
                new Table(
                        List.of(),
                        List.of(
                                List.of(Cell.of("Filled in on"), new Cell.Blank(16, "")),
                                List.of(Cell.of("Begun and ended at"), new Cell.Blank(16, "")))));
        if (!protocol.cautions().isEmpty()) {
            blocks.add(
                    Part.of(
                            "Cautions",
                            "read them before the first donning",
                            List.of(
                                    new Block.Points(protocol.cautions()),
                                    new Table(
                                            List.of(),
                                            List.of(
                                                    List.of(
                                                            Cell.Ticks.of(
                                                                    "read and understood")))))));
        }
        blocks.add(Part.of("How to fill it in", "", List.of(how(protocol, name, seed))));
        if (!protocol.facts().isEmpty()) {
            blocks.add(Part.of("About this session", "", FormStep.fields(protocol.facts())));
        }
        if (!protocol.before().isEmpty()) {
            blocks.add(Part.of(Outline.before(protocol), "", steps(protocol, protocol.before())));
        }
        if (!protocol.conditions().isEmpty()) {
            for (int round = 1; round <= PlannedRounds.of(protocol).most(); round++) {
                blocks.add(round(protocol, seed, round));
            }
            blocks.add(spare(protocol));
        }
        blocks.add(
                new Part(
                        protocol.donning().isEmpty() ? "Afterwards" : "After the last donning",
                        "",
                        Start.NEW_PAGE,
                        notes(steps(protocol, protocol.after()))));
        return new Page(protocol.title(), protocol.question(), blocks);
    }

    private static Block how(Protocol protocol, String name, long seed) {
        List<String> points = new ArrayList<>();
        points.add(
                "Write every reading down as it is read, in the unit printed; never rub one out."
                        + " Strike it through, write why, and write the new one beside it.");
        if (!protocol.donning().isEmpty()) {
            points.add(
                    0,
                    "Turn to the page of a round only when the round before is done: it names the"
                            + " conditions in the order drawn.");
            points.add(
                    "A donning that is broken off is done again on a spare page at the end, before"
                            + " the next one.");
        }
        if (protocol.donning().stream().anyMatch(Step.Trials.class::isInstance)) {
            points.add(
                    2,
                    "A pull that was not held is written down too, with 'no'; do it again in the"
                            + " next line.");
        }
        points.add(
                "Type it in later with 'rigside enter "
                        + typed(name)
                        + " --seed "
                        + seed
                        + " --on DAY'. Use the same protocol file: another one may draw another"
                        + " order.");
        return new Block.Points(points);
    }

    /** As a shell takes it for one word. */
    private static String typed(String name) {
        return name.matches("[\\w./+:@-]+")
                ? name
                : '"' + name.replaceAll("([\"\\\\$`])", "\\\\$1") + '"';
    }

    private static Block round(Protocol protocol, long seed, int round) {
        List<Block> donnings = new ArrayList<>();
        int turn = 1;
        for (String id : Schedule.order(protocol, seed, round)) {
            Condition worn = protocol.condition(id).orElseThrow();
            donnings.add(
                    Part.of(
                            OutlinePlan.ordinal(turn++) + ": " + worn.title(),
                            worn.specimen().piece(),
                            donning(protocol, protocol.donningOf(id))));
        }
        return new Part("Round " + round, "", Start.NEW_PAGE, donnings);
    }

    /** All steps, whatever the condition: which will need it nobody knows. */
    private static Block spare(Protocol protocol) {
        List<Block> blocks = new ArrayList<>();
        for (int at = 0; at < SPARE_DONNINGS; at++) {
            blocks.add(
                    new Table(
                            List.of(),
                            List.of(
                                    List.of(Cell.of("Again"), new Cell.Blank(4, "of round")),
                                    List.of(
                                            Cell.of("Condition"),
                                            new Cell.Ticks(
                                                    protocol.conditions().stream()
                                                            .map(Condition::title)
                                                            .toList())))));
            blocks.addAll(donning(protocol, protocol.donning()));
        }
        return new Part(
                "Spare donning",
                "in the place of one that was broken off; print more as needed",
                Start.NEW_PAGE,
                blocks);
    }

    private static List<Block> donning(Protocol protocol, List<Step> steps) {
        List<Block> blocks = new ArrayList<>(steps(protocol, steps));
        blocks.add(
                new Table(
                        List.of(),
                        List.of(
                                List.of(
                                        Cell.of("Broken off"),
                                        Cell.Ticks.of("no", "yes, at step"),
                                        new Cell.Blank(4, "")),
                                List.of(Cell.of("Because"), new Cell.Blank(30, ""), Cell.of("")))));
        return notes(blocks);
    }

    private static List<Block> notes(List<Block> blocks) {
        List<Block> all = new ArrayList<>(blocks);
        all.add(new Block.Room("Notes", NOTE_LINES));
        return List.copyOf(all);
    }

    private static List<Block> steps(Protocol protocol, List<Step> steps) {
        List<Block> blocks = new ArrayList<>();
        for (Step step : steps) {
            blocks.add(FormStep.of(protocol, step, blocks.size() + 1));
        }
        return List.copyOf(blocks);
    }
}
