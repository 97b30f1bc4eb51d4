package rigside.report;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;
import rigside.measure.Numbers;
import rigside.measure.Unit;
import rigside.protocol.Exercise;
import rigside.protocol.Field;
import rigside.protocol.Gate;
import rigside.protocol.Protocol;
import rigside.protocol.Step;
import rigside.protocol.Window;
import rigside.report.Block.Head;
import rigside.report.Block.Part;
import rigside.report.Block.Table;

/** What is written down of one step. */
record FormStep() implements Step.Cases<List<Block>> {
    /** Lines for pulls that were not held, beside those the protocol asks for. */
    private static final int SPARE_PULLS = 2;

    /** A reading by hand, and words by hand. */
    private static final int NUMBER = 8;

    private static final int WORDS = 24;

    /** From so many steps on a scale is written, not ticked. */
    private static final int LONGEST_SCALE = 11;

    static Block of(Protocol protocol, Step step, int number) {
        List<Block> blocks = new ArrayList<>(When.of(protocol, step));
        if (!step.say().isBlank()) {
            blocks.add(new Block.Words(step.say()));
        }
        blocks.addAll(step.match(new FormStep()));
        return Part.of(number + ". " + step.title(), StepAside.of(step), blocks);
    }

    @Override
    public List<Block> checklist(Step.Checklist step) {
        return List.of(
                new Table(
                        Head.of("Check", "So", "Not so, and what was seen"),
                        step.items().stream()
                                .map(
                                        item ->
                                                List.of(
                                                        Cell.of(
                                                                item.text()
                                                                        + " ("
                                                                        + OutlineStep.ifNot(
                                                                                item.ifNot())
                                                                        + ")"),
                                                        Cell.Ticks.of(""),
                                                        (Cell) new Cell.Blank(WORDS, "")))
                                .toList()));
    }

    @Override
    public List<Block> form(Step.Form step) {
        return fields(step.fields());
    }

    @Override
    public List<Block> observations(Step.Observations step) {
        return fields(step.fields());
    }

    /** What is asked, room for the answer, and what is taken for one. */
    static List<Block> fields(List<Field> fields) {
        return List.of(
                new Table(
                        Head.of("Asked", "Answer", "Plausible"),
                        fields.stream()
                                .map(
                                        field ->
                                                List.of(
                                                        Cell.of(field.ask()),
                                                        field.answer().match(new Room()),
                                                        Cell.of(plausible(field))))
                                .toList()));
    }

    /** What is taken for an answer; choices are printed to be ticked, and not once more. */
    private static String plausible(Field field) {
        return field.answer() instanceof Field.Choice
                ? field.optional() ? "may be left empty" : ""
                : Taken.of(field);
    }

    /** Room for an answer. */
    private record Room() implements Field.Answer.Cases<Cell> {
        @Override
        public Cell numeric(Field.Numeric answer) {
            return new Cell.Blank(NUMBER, answer.unit().symbol());
        }

        @Override
        public Cell choice(Field.Choice answer) {
            return new Cell.Ticks(answer.options());
        }

        @Override
        public Cell scale(Field.Scale answer) {
            return answer.to() - answer.from() >= LONGEST_SCALE
                    ? new Cell.Blank(NUMBER, "")
                    : new Cell.Ticks(
                            IntStream.rangeClosed(answer.from(), answer.to())
                                    .mapToObj(String::valueOf)
                                    .toList());
        }

        @Override
        public Cell words(Field.Words answer) {
            return new Cell.Blank(Math.min(WORDS, answer.longest()), "");
        }
    }

    @Override
    public List<Block> countdown(Step.Countdown step) {
        return done();
    }

    @Override
    public List<Block> note(Step.Note step) {
        return done();
    }

    private static List<Block> done() {
        return List.of(new Table(List.of(), List.of(List.of(Cell.Ticks.of("done")))));
    }

    @Override
    public List<Block> exercises(Step.Exercises step) {
        List<List<Cell>> rows = new ArrayList<>();
        for (Exercise each : step.exercises()) {
            String named = each.title() + ", " + Lengths.of(each.seconds());
            List<List<Cell>> own = readings(step, each);
            for (List<Cell> reading : own) {
                List<Cell> row = new ArrayList<>(List.of(Cell.of(named)));
                row.addAll(reading);
                rows.add(row);
                named = "";
            }
            if (own.isEmpty()) {
                rows.add(List.of(Cell.of(named), Cell.of(""), Cell.Ticks.of("done")));
            }
        }
        return List.of(
                new Table(Head.of("Exercise", "Read", "Value"), rows),
                new Table(
                        List.of(),
                        List.of(
                                List.of(
                                        Cell.of("Struck out or done again, and why"),
                                        new Cell.Blank(WORDS, "")))));
    }

    /** In the order in which they are typed in later: by the time they begin. */
    private static List<List<Cell>> readings(Step.Exercises step, Exercise exercise) {
        record Timed(double from, List<Cell> cells) {}
        List<Timed> timed = new ArrayList<>();
        exercise.ambient()
                .forEach(
                        each ->
                                timed.add(
                                        new Timed(
                                                each.from(), read("ambient", each, step.unit()))));
        exercise.mask()
                .ifPresent(
                        each -> timed.add(new Timed(each.from(), read("mask", each, step.unit()))));
        exercise.pressure()
                .ifPresent(
                        each ->
                                timed.add(
                                        new Timed(
                                                each.from(),
                                                read("peak pressure", each, step.pressureUnit()))));
        return timed.stream()
                .sorted(Comparator.comparingDouble(Timed::from))
                .map(Timed::cells)
                .toList();
    }

    private static List<Cell> read(String what, Window window, Unit unit) {
        return List.of(
                Cell.of(what + ", " + OutlineStep.window(window)),
                new Cell.Blank(NUMBER, unit.symbol()));
    }

    @Override
    public List<Block> trials(Step.Trials step) {
        List<List<Cell>> rows = new ArrayList<>();
        for (int line = 1; line <= step.count() + SPARE_PULLS; line++) {
            rows.add(
                    List.of(
                            Cell.of(line <= step.count() ? String.valueOf(line) : "spare"),
                            new Cell.Blank(NUMBER, "s"),
                            Cell.Ticks.of("yes", "no"),
                            new Cell.Blank(WORDS, "")));
        }
        return List.of(
                new Block.Words(
                        "Hold "
                                + step.target()
                                + (step.tolerance().isPresent()
                                        ? " within "
                                                + Numbers.plain(
                                                        100 * step.tolerance().getAsDouble())
                                                + " %"
                                        : "")
                                + "; "
                                + Lengths.of(step.restSeconds())
                                + " of rest between two; "
                                + Numbers.plain(step.shortest())
                                + " to "
                                + Numbers.plain(step.longest())
                                + " s is plausible. Say whether it was held before you read the"
                                + " stopwatch."),
                new Table(Head.of("Pull", "Time", "Held?", "Struck out, and why"), rows));
    }

    @Override
    public List<Block> gates(Step.Gates step) {
        List<List<Cell>> rows = new ArrayList<>();
        for (Gate gate : step.gates()) {
            rows.add(
                    List.of(
                            Cell.of(
                                    OutlineStep.gate(gate.kind())
                                            + ", "
                                            + Lengths.of(gate.seconds())),
                            Cell.of(gate.needs()),
                            new Cell.Blank(NUMBER, step.unit().symbol()),
                            new Cell.Blank(NUMBER, step.unit().symbol())));
        }
        return List.of(new Table(Head.of("Read", "Needs", "Value", "Read again"), rows));
    }
}
