package rigside.analysis;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import rigside.session.Applicable;
import rigside.session.Captured;
import rigside.session.Slot;
import rigside.session.State;

/**
 * What is worth knowing of a session beside its values, as lines under headings: failed checks,
 * what gates read, what was left out and why, what does not count any more, notes. All of it the
 * tester's own doing, so none of it is concealed.
 */
public final class Happened {
    private Happened() {}

    /**
     * What is of one kind.
     *
     * @param heading what kind
     * @param lines at least one
     */
    public record Section(String heading, List<String> lines) {
        public Section {
            lines = List.copyOf(lines);
        }
    }

    /** The lines, each section after a blank one; a section with nothing in it is left away. */
    public static List<String> of(State state) {
        List<String> lines = new ArrayList<>();
        for (Section section : sections(state)) {
            lines.addAll(List.of("", section.heading()));
            section.lines().forEach(line -> lines.add("  " + line));
        }
        return List.copyOf(lines);
    }

    /** The same section by section; one with nothing in it is left away. */
    public static List<Section> sections(State state) {
        Captured captured = state.captured();
        List<Section> sections = new ArrayList<>();
        section(
                sections,
                "Failed checks",
                captured.failedChecks().stream()
                        .map(failed -> where(state, failed.place().donning()) + failed.text()));
        section(sections, "Gates", new GatesRead(state).lines().stream());
        section(
                sections,
                "Left out",
                captured.leftOut().stream()
                        .filter(left -> !(left.slot() instanceof Slot.Gate))
                        .filter(left -> Applicable.at(state, left.slot().place()))
                        .map(
                                left ->
                                        where(state, left.slot().place().donning())
                                                + SlotWords.of(state, left.slot())
                                                + ": "
                                                + left.reason()));
        section(sections, "Not counted", notCounted(state));
        section(
                sections,
                "Notes",
                captured.notes().stream().map(note -> where(state, note.donning()) + note.text()));
        return List.copyOf(sections);
    }

    private static Stream<String> notCounted(State state) {
        Set<Integer> noLonger = Applicable.noLonger(state);
        return state.captured().entries().stream()
                .filter(entry -> noLonger.contains(entry.number()))
                .map(
                        entry ->
                                where(state, entry.slot().place().donning())
                                        + "entry "
                                        + entry.number()
                                        + ", "
                                        + SlotWords.of(state, entry.slot())
                                        + ": "
                                        + Applicable.NO_LONGER);
    }

    private static void section(List<Section> sections, String heading, Stream<String> items) {
        List<String> all = items.toList();
        if (!all.isEmpty()) {
            sections.add(new Section(heading, all));
        }
    }

    /** The donning and what was worn in it; nothing outside donnings. */
    static String where(State state, int donning) {
        return state.course()
                .donning(donning)
                .flatMap(worn -> state.protocol().condition(worn.condition()))
                .map(worn -> "donning " + donning + " (" + worn.title() + "), ")
                .orElse("");
    }
}
