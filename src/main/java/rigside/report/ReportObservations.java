package rigside.report;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
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
        List<Block> blocks = new ArrayList<>();
        for (Field field : fields(of)) {
            List<List<Cell>> rows = all.rows(field);
            if (!rows.isEmpty()) {
                blocks.add(all.table(field, rows));
            }
        }
        return blocks;
    }

    /** Each field once, however often a group asks for it. */
    private static Set<Field> fields(Material of) {
        return of.protocol().donning().stream()
                .filter(Step.Observations.class::isInstance)
                .flatMap(step -> step.fields().stream())
                .collect(Collectors.toCollection(LinkedHashSet::new));
    }

    private Block table(Field field, List<List<Cell>> rows) {
        List<Head> heads = new ArrayList<>(List.of(new Head("Round", false)));
        of.protocol().conditions().forEach(each -> heads.add(new Head(each.title(), false)));
        return new Block.Table(field.ask() + " " + ends(field), heads, rows);
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

    private List<List<Cell>> rows(Field field) {
        int last = of.state().course().donnings().stream().mapToInt(Donning::round).max().orElse(0);
        List<List<Cell>> rows = new ArrayList<>();
        for (int round = 1; round <= last; round++) {
            List<String> cells = new ArrayList<>(List.of(String.valueOf(round)));
            for (Condition condition : of.protocol().conditions()) {
                cells.add(answers(field, round, condition.id()));
            }
            if (cells.stream().skip(1).anyMatch(each -> !each.isEmpty())) {
                rows.add(Cell.texts(cells));
            }
        }
        return rows;
    }

    private String answers(Field field, int round, String condition) {
        return of.state().captured().entries().stream()
                .filter(entry -> isOf(entry, field, round, condition))
                .filter(entry -> Schedule.counts(of.state(), entry))
                .map(entry -> of.shown().isOut(entry) ? entry.value().toString() : "concealed")
                .filter(answer -> !answer.isBlank())
                .collect(Collectors.joining("; "));
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
