package rigside.desk;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Collectors;
import rigside.analysis.Happened;
import rigside.analysis.Shown;
import rigside.analysis.SlotWords;
import rigside.analysis.TraceWords;
import rigside.protocol.Condition;
import rigside.session.Applicable;
import rigside.session.Donning;
import rigside.session.Entry;
import rigside.session.Event;
import rigside.session.Recorded;
import rigside.session.State;

/**
 * The lines of a review below what was found: what was asked, what happened, all entries. The seed
 * waits until the session is closed: a rehearsal with it would tell the order of what is to come.
 *
 * @param state where the session stands; opened
 * @param shown what concealment lets out
 * @param events everything recorded, in order
 */
record ReviewLines(State state, Shown shown, List<Recorded> events) {

    List<String> all() {
        List<String> lines = new ArrayList<>(begun());
        lines.addAll(Happened.of(state));
        lines.addAll(donnings());
        lines.addAll(entries());
        return List.copyOf(lines);
    }

    private List<String> begun() {
        Event.SessionOpened opened = state.opening().orElseThrow().event();
        List<String> lines = new ArrayList<>();
        if (opened.simulated()) {
            lines.add("simulated: every value is invented");
        }
        opened.paper().map(paper -> paper.words()).ifPresent(lines::add);
        lines.add(state.protocol().question());
        lines.add(
                "begun "
                        + Items.when(events.get(0).wall())
                        + ", last entry "
                        + Items.when(events.get(events.size() - 1).wall())
                        + (state.course().closed() ? ", closed" : ", open")
                        + "; instruments "
                        + opened.rig()
                        + (state.course().closed() ? "; seed " + opened.seed() : ""));
        return lines;
    }

    private List<String> donnings() {
        List<String> lines = new ArrayList<>(List.of("", "Donnings"));
        for (Donning donning : state.course().donnings()) {
            String reason = donning.reason().isEmpty() ? "" : ": " + donning.reason();
            lines.add(
                    "  "
                            + donning.number()
                            + ", round "
                            + donning.round()
                            + ", "
                            + title(donning.condition())
                            + ", "
                            + donning.outcome().toString().toLowerCase(Locale.ROOT)
                            + reason);
        }
        return lines;
    }

    private List<String> entries() {
        List<String> lines = new ArrayList<>(List.of("", "Entries"));
        Set<Integer> noLonger = Applicable.noLonger(state);
        for (Entry entry : state.captured().entries()) {
            int donning = entry.slot().place().donning();
            lines.add(
                    "  "
                            + entry.number()
                            + (donning == 0 ? "" : ", donning " + donning)
                            + ", "
                            + SlotWords.of(state, entry.slot())
                            + ": "
                            + (shown.isOut(entry) ? entry.value() : "concealed")
                            + TraceWords.of(state, entry, shown.isOut(entry))
                                    .map(words -> " (" + words + ")")
                                    .orElse("")
                            + amended(entry)
                            + entry.struck()
                                    .map(struck -> ", struck out: " + struck.reason())
                                    .orElse(
                                            noLonger.contains(entry.number())
                                                    ? ", not counted: " + Applicable.NO_LONGER
                                                    : ""));
        }
        return lines;
    }

    private String amended(Entry entry) {
        return entry.earlier().stream()
                .map(
                        earlier ->
                                ", amended from "
                                        + (shown.isOut(entry, earlier)
                                                ? earlier.value()
                                                : "what is concealed")
                                        + ": "
                                        + earlier.reason())
                .collect(Collectors.joining());
    }

    private String title(String condition) {
        return state.protocol().condition(condition).map(Condition::title).orElse(condition);
    }
}
