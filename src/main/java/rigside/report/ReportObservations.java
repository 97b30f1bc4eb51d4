package rigside.report;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import rigside.protocol.Condition;
import rigside.protocol.Field;
import rigside.protocol.Step;
import rigside.report.Block.Head;
import rigside.session.Donning;
import rigside.session.Entry;
import rigside.session.Schedule;
import rigside.session.Slot;
import rigside.session.Stage;

/** What was felt and seen, condition beside condition. */
record ReportObservations(Material of) {

    static List<Block> of(Material of) {
        ReportObservations all = new ReportObservations(of);
        List<List<Cell>> rows =
                fields(of).stream().map(all::row).filter(row -> !row.isEmpty()).toList();
        if (rows.isEmpty()) {
            return List.of();
        }
        List<Head> heads = new ArrayList<>(Head.of("Asked"));
        of.protocol().conditions().forEach(each -> heads.add(new Head(each.title(), false)));
        return List.of(
                new Block.Table("What was felt and seen: the round, then the answer", heads, rows));
    }

    /** Each field once, however often a group asks for it. */
    private static Set<Field> fields(Material of) {
        return of.protocol().donning().stream()
                .filter(Step.Observations.class::isInstance)
                .flatMap(step -> step.fields().stream())
                .collect(Collectors.toCollection(LinkedHashSet::new));
    }

    private static String ends(Field field) {
        return field.answer() instanceof Field.Scale scale
                ? "("
                        + scale.from()
                        + " is "
                        + scale.low()
                        + ", "
                        + scale.to()
                        + " is "
                        + scale.high()
                        + ")"
                : "";
    }

    /** Empty where nobody answered. */
    private List<Cell> row(Field field) {
        List<String> cells = new ArrayList<>(List.of((field.ask() + " " + ends(field)).strip()));
        for (Condition condition : of.protocol().conditions()) {
            cells.add(answers(field, condition.id()));
        }
        return cells.stream().skip(1).allMatch(String::isEmpty) ? List.of() : Cell.texts(cells);
    }

    /** Those of each round after its number: an answer may be missing in any of them. */
    private String answers(Field field, String condition) {
        int last = of.state().course().donnings().stream().mapToInt(Donning::round).max().orElse(0);
        return IntStream.rangeClosed(1, last)
                .mapToObj(round -> round + ": " + answers(field, round, condition))
                .filter(answer -> !answer.endsWith(": "))
                .collect(Collectors.joining("; "));
    }

    private String answers(Field field, int round, String condition) {
        return of.state().captured().entries().stream()
                .filter(entry -> isOf(entry, field, round, condition))
                .filter(entry -> Schedule.counts(of.state(), entry))
                .map(entry -> of.shown().isOut(entry) ? entry.value().toString() : "concealed")
                .filter(answer -> !answer.isBlank())
                .collect(Collectors.joining(", "));
    }

    private boolean isOf(Entry entry, Field field, int round, String condition) {
        return entry.slot() instanceof Slot.Field slot
                && slot.place().stage() == Stage.DONNING
                && slot.id().equals(field.id())
                && of.state()
                        .course()
                        .donning(slot.place().donning())
                        .filter(each -> each.round() == round && each.condition().equals(condition))
                        .isPresent();
    }
}
