package rigside.report;

import java.time.ZonedDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import rigside.analysis.SelfTestWords;
import rigside.protocol.Condition;
import rigside.protocol.Field;
import rigside.report.Block.Head;
import rigside.report.Block.Part;
import rigside.session.Donning;
import rigside.session.Event;
import rigside.session.Place;
import rigside.session.Recorded;
import rigside.session.Slot;
import rigside.session.Stage;

/** What was answered about the session, the pieces worn, the instruments, and every donning. */
record ReportSession(Material of) {

    static List<Block> of(Material of) {
        ReportSession session = new ReportSession(of);
        List<Block> blocks = new ArrayList<>();
        List<List<String>> facts = session.facts();
        if (!facts.isEmpty()) {
            blocks.add(Block.Table.pairs("About this session", facts));
        }
        if (!of.protocol().conditions().isEmpty()) {
            blocks.add(session.conditions());
        }
        of.state()
                .opening()
                .flatMap(each -> each.selfTest())
                .ifPresent(
                        found ->
                                blocks.add(
                                        Part.of(
                                                "Self-test",
                                                "of " + day(found.when()),
                                                List.of(
                                                        new Block.Points(
                                                                SelfTestWords.of(found))))));
        List<String> gates = ReportDeviations.asPlanned(of);
        if (!gates.isEmpty() && !of.protocol().conditions().isEmpty()) {
            blocks.add(Part.of("Gates that were met", "", List.of(new Block.Points(gates))));
        }
        if (!of.state().course().donnings().isEmpty()) {
            blocks.add(session.donnings());
        }
        return blocks;
    }

    private static String day(String when) {
        return when.substring(0, Math.min(10, when.length()));
    }

    private List<List<String>> facts() {
        List<List<String>> facts = new ArrayList<>();
        for (Field field : of.protocol().facts()) {
            of.state()
                    .captured()
                    .standing(new Slot.Field(new Place(Stage.BEFORE, 0, 0), field.id()))
                    .map(entry -> entry.value().toString())
                    .filter(answer -> !answer.isBlank())
                    .ifPresent(answer -> facts.add(List.of(field.ask(), answer)));
        }
        facts.add(List.of("What answered for the instruments", of.opened().rig()));
        return facts;
    }

    private Block conditions() {
        return new Block.Table(
                "The pieces worn",
                List.of(
                        new Head("Condition", false),
                        new Head("Piece", false),
                        Head.figures("Worn before"),
                        Head.figures("Worn here"),
                        new Head("Particles in the mask came through", false)),
                of.protocol().conditions().stream()
                        .map(
                                each ->
                                        Cell.texts(
                                                List.of(
                                                        reference(each),
                                                        each.specimen().piece(),
                                                        String.valueOf(
                                                                each.specimen().wornBefore()),
                                                        String.valueOf(worn(each)),
                                                        switch (each.reading()) {
                                                            case SEAL_ONLY -> "the seal";
                                                            case SEAL_AND_FILTER ->
                                                                    "the seal and the filter";
                                                        })))
                        .toList());
    }

    private String reference(Condition each) {
        return of.compares() && each.equals(of.protocol().reference())
                ? each.title() + " (the reference)"
                : each.title();
    }

    private long worn(Condition condition) {
        return of.state().course().donnings().stream()
                .filter(each -> each.condition().equals(condition.id()))
                .count();
    }

    private Block donnings() {
        List<Head> heads = new ArrayList<>();
        heads.add(new Head("Donning", false));
        heads.add(new Head("Round", false));
        heads.add(new Head("Condition", false));
        if (of.hasTimesWorn()) {
            heads.add(Head.figures("Begun"));
            heads.add(Head.figures("Took"));
        }
        heads.add(new Head("Came to", false));
        return new Block.Table(
                "Every donning, in the order they were worn",
                heads,
                of.state().course().donnings().stream().map(this::donning).toList());
    }

    private List<Cell> donning(Donning each) {
        List<String> cells = new ArrayList<>();
        cells.add(String.valueOf(each.number()));
        cells.add(String.valueOf(each.round()));
        cells.add(of.title(each.condition()));
        if (of.hasTimesWorn()) {
            cells.add(begun(each));
            cells.add(each.endedAt().map(end -> Clock.length(each.startedAt(), end)).orElse("-"));
        }
        String reason = each.reason().isEmpty() ? "" : ": " + each.reason();
        cells.add(
                switch (each.outcome()) {
                            case OPEN -> "going on";
                            case COMPLETE -> "complete";
                            case ABANDONED -> "broken off";
                            case STRUCK -> "struck out";
                        }
                        + reason);
        return Cell.texts(cells);
    }

    private String begun(Donning donning) {
        ZonedDateTime opened = of.events().get(0).wall();
        return find(event ->
                        event instanceof Event.DonningStarted started
                                && started.donning() == donning.number())
                .map(each -> Clock.second(opened, each.wall()))
                .orElse("-");
    }

    private Optional<Recorded> find(Predicate<Event> which) {
        return of.events().stream().filter(each -> which.test(each.event())).findFirst();
    }
}
