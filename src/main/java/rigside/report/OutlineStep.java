package rigside.report;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import rigside.measure.Numbers;
import rigside.protocol.Exercise;
import rigside.protocol.Field;
import rigside.protocol.Gate;
import rigside.protocol.IfNot;
import rigside.protocol.Measure;
import rigside.protocol.Protocol;
import rigside.protocol.Step;
import rigside.protocol.Window;
import rigside.report.Block.Head;
import rigside.report.Block.Part;
import rigside.report.Block.Table;

/** One step of the procedure. */
record OutlineStep(Protocol protocol) implements Step.Cases<List<Block>> {

    static Block of(Protocol protocol, Step step, int number) {
        List<Block> blocks = new ArrayList<>();
        if (!step.head().applies().conditions().isEmpty()) {
            blocks.add(new Block.Words("Only for: " + conditions(protocol, step) + "."));
        }
        blocks.addAll(When.of(protocol, step));
        if (!step.say().isBlank()) {
            blocks.add(new Block.Words(step.say()));
        }
        blocks.addAll(step.match(new OutlineStep(protocol)));
        return Part.of(number + ". " + step.title(), StepAside.of(step), blocks);
    }

    static String conditions(Protocol protocol, Step step) {
        return step.head().applies().conditions().stream()
                .map(id -> Outline.title(protocol, id))
                .collect(Collectors.joining(", "));
    }

    @Override
    public List<Block> checklist(Step.Checklist step) {
        return List.of(
                new Block.Points(
                        step.items().stream()
                                .map(item -> item.text() + " (" + ifNot(item.ifNot()) + ")")
                                .toList()));
    }

    static String ifNot(IfNot ifNot) {
        return switch (ifNot) {
            case REPEAT -> "if not: the whole checklist again";
            case ABANDON -> "if not: the donning is abandoned and done again";
            case STOP -> "if not: the session stops";
            case GO_ON -> "if not: it is kept as an outcome, and the list goes on";
        };
    }

    @Override
    public List<Block> form(Step.Form step) {
        return fields(step.fields());
    }

    @Override
    public List<Block> observations(Step.Observations step) {
        return fields(step.fields());
    }

    private static List<Block> fields(List<Field> fields) {
        return Outline.fields(fields);
    }

    @Override
    public List<Block> countdown(Step.Countdown step) {
        return List.of();
    }

    @Override
    public List<Block> note(Step.Note step) {
        return List.of();
    }

    @Override
    public List<Block> exercises(Step.Exercises step) {
        return List.of(exercises(step.exercises()), new Block.Words(readings(step)));
    }

    /** Only the columns that hold something. */
    private static Table exercises(List<Exercise> exercises) {
        List<Column> columns =
                List.of(
                        new Column(new Head("Exercise", false), OutlineStep::named),
                        new Column(Head.figures("Lasts"), each -> Lengths.of(each.seconds())),
                        new Column(
                                new Head("Ambient", false),
                                each ->
                                        each.ambient().stream()
                                                .map(OutlineStep::window)
                                                .collect(Collectors.joining("; "))),
                        new Column(
                                new Head("Mask", false),
                                each -> each.mask().map(OutlineStep::window).orElse("")),
                        new Column(
                                new Head("Pressure", false),
                                each -> each.pressure().map(OutlineStep::window).orElse("")),
                        new Column(new Head("What to do", false), Exercise::say));
        List<Column> filled =
                columns.stream()
                        .filter(
                                column ->
                                        exercises.stream()
                                                .anyMatch(each -> !column.says(each).isBlank()))
                        .toList();
        return new Table(
                filled.stream().map(Column::head).toList(),
                exercises.stream()
                        .map(
                                each ->
                                        filled.stream()
                                                .map(column -> Cell.of(column.says(each)))
                                                .toList())
                        .toList());
    }

    /** A column of the table of exercises. */
    private record Column(Head head, java.util.function.Function<Exercise, String> cell) {
        String says(Exercise exercise) {
            return cell.apply(exercise);
        }
    }

    private static String named(Exercise exercise) {
        return exercise.counted() ? exercise.title() : exercise.title() + " (not counted)";
    }

    /** {@code 10 to 30 s}. */
    static String window(Window window) {
        return Numbers.plain(window.from()) + " to " + Numbers.plain(window.to()) + " s";
    }

    private String readings(Step.Exercises step) {
        List<String> words = new ArrayList<>();
        step.fitFactor()
                .ifPresent(
                        id ->
                                words.add(
                                        "Concentrations in "
                                                + step.unit().symbol()
                                                + " give '"
                                                + measure(id)
                                                + "'; the room may change by "
                                                + Numbers.plain(100 * step.ambientMayMove())
                                                + " % between two samples."));
        step.pressureTrace()
                .ifPresent(
                        id ->
                                words.add(
                                        "Peak inhalation pressures in "
                                                + step.pressureUnit().symbol()
                                                + " give '"
                                                + measure(id)
                                                + "'."));
        words.add(
                switch (step.entering()) {
                    case AFTER_EACH -> "Without instruments they are typed after each exercise.";
                    case AT_END ->
                            "The exercises run on without a pause; without instruments all is typed"
                                    + " at the end.";
                });
        return String.join(" ", words);
    }

    private String measure(String id) {
        return protocol.measure(id).map(Measure::title).orElse(id);
    }

    @Override
    public List<Block> trials(Step.Trials step) {
        List<List<String>> rows = new ArrayList<>();
        String within =
                step.tolerance().isPresent()
                        ? " within " + Numbers.plain(100 * step.tolerance().getAsDouble()) + " %"
                        : "";
        rows.add(List.of("Pressure to hold", step.target() + within));
        rows.add(List.of("Gives", measure(step.measure()) + ", in s"));
        rows.add(List.of("Lead-in", Lengths.of(step.leadInSeconds()) + " before each"));
        rows.add(List.of("Rest", Lengths.of(step.restSeconds()) + " between two"));
        rows.add(
                List.of(
                        "Plausible",
                        Numbers.plain(step.shortest())
                                + " to "
                                + Numbers.plain(step.longest())
                                + " s; other times are offered for voiding"));
        rows.add(
                List.of(
                        "Asked",
                        "was the pull held? before its time is shown, unless a trace tells"));
        return List.of(Table.pairs(rows));
    }

    @Override
    public List<Block> gates(Step.Gates step) {
        List<List<Cell>> rows = new ArrayList<>();
        for (Gate gate : step.gates()) {
            rows.add(
                    Cell.texts(
                            List.of(
                                    gate(gate.kind()),
                                    gate.needs(),
                                    Lengths.of(gate.seconds()),
                                    gate.help())));
        }
        return List.of(
                new Table(
                        List.of(
                                new Head("Read", false),
                                new Head("Needs", false),
                                Head.figures("Lasts"),
                                new Head("If not", false)),
                        rows));
    }

    static String gate(Gate.Kind kind) {
        return switch (kind) {
            case ZERO -> "filtered air";
            case AMBIENT -> "air of the room";
        };
    }
}
