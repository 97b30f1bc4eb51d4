package rigside.report;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import rigside.analysis.Analysis;
import rigside.analysis.Comparison;
import rigside.protocol.Measure;
import rigside.session.Entry;
import rigside.session.Evolve;
import rigside.session.Recorded;
import rigside.session.Slot;
import rigside.session.State;
import rigside.session.Value;

/**
 * A closed session without what is about the wearer and without free words, to be given to others.
 * It folds, and says what the session says.
 *
 * @param events of the copy, in order
 * @param leftOut how much of each kind was left out; kinds of which there was nothing are missing
 * @param texts the texts that were left out, each once
 */
public record CopyToShare(List<Recorded> events, Map<LeftOut, Integer> leftOut, Set<String> texts) {
    /** Shorter texts are found anywhere. */
    private static final int SHORTEST = 3;

    public CopyToShare {
        events = List.copyOf(events);
        leftOut = new EnumMap<>(leftOut);
        texts = Set.copyOf(texts);
    }

    /**
     * What may be told besides.
     *
     * @param kept the ids of facts and fields whose answers are kept although they would be left
     *     out
     * @param wearerCode what stands for the wearer in the copy; empty for nothing
     */
    public record Terms(Set<String> kept, Optional<String> wearerCode) {
        public Terms {
            kept = Set.copyOf(kept);
        }
    }

    /**
     * The copy of a session.
     *
     * @param state what its events lead to: closed
     */
    public static CopyToShare of(State state, List<Recorded> events, Terms terms) {
        Leaving leaving = new Leaving(state, terms);
        ToShare toShare = new ToShare(leaving);
        List<Recorded> kept = new ArrayList<>();
        for (Recorded each : events) {
            each.event()
                    .match(toShare)
                    .ifPresent(
                            event ->
                                    kept.add(
                                            new Recorded(
                                                    kept.size() + 1,
                                                    each.wall(),
                                                    each.at(),
                                                    event)));
        }
        return new CopyToShare(kept, leaving.leftOut(), leaving.texts());
    }

    /** What the copy's events lead to. */
    public State state() {
        return Evolve.fold(events);
    }

    /** The ids of the facts and fields that were answered. */
    public static Set<String> answered(State state) {
        Set<String> ids = new TreeSet<>();
        for (Entry entry : state.captured().entries()) {
            if (entry.slot() instanceof Slot.Field slot) {
                ids.add(slot.id());
            }
        }
        return ids;
    }

    /** Texts that were left out, and all the same stand in the protocol or in what was kept. */
    public List<String> still() {
        String kept = events.toString();
        return texts.stream()
                .filter(text -> text.codePointCount(0, text.length()) >= SHORTEST)
                .filter(text -> asWord(text).matcher(kept).find())
                .sorted()
                .toList();
    }

    private static Pattern asWord(String text) {
        return Pattern.compile("(?<![\\p{L}\\p{N}])" + Pattern.quote(text) + "(?![\\p{L}\\p{N}])");
    }

    /** What was left out and what was kept, for those who are given the copy. */
    public String told() {
        StringBuilder told = new StringBuilder();
        told.append("This is a copy of a session, made to be shared.\n\nLeft out:\n");
        leftOut.forEach((kind, count) -> told.append("  ").append(kind.words(count)).append('\n'));
        if (leftOut.isEmpty()) {
            told.append("  nothing\n");
        }
        told.append("  raw readings of instruments, if there were any\n");
        if (lacksVitalCapacity()) {
            told.append("\nWithout the vital capacity, flows and resistances are not reckoned.\n");
        }
        return told.append(
                        """

                        Kept: the protocol as its author wrote it; day, times and time zone; readings, times,
                        choices and numbers; answers about mask, room and instruments as typed; how
                        evenly the tester reacted in the self-test. The verdicts are those of the session.
                        """)
                .toString();
    }

    private boolean lacksVitalCapacity() {
        State state = state();
        return state.protocol().measures().stream()
                .map(Measure::kind)
                .filter(Measure.TimedInhalation.class::isInstance)
                .flatMap(kind -> ((Measure.TimedInhalation) kind).vitalCapacityFact().stream())
                .anyMatch(
                        id ->
                                state.captured().entries().stream()
                                        .anyMatch(
                                                entry ->
                                                        entry.slot() instanceof Slot.Field field
                                                                && field.id().equals(id)
                                                                && entry.value()
                                                                        .equals(
                                                                                new Value.Said(
                                                                                        ""))));
    }

    /**
     * The comparisons that say something else in the copy, by measure and condition, in words;
     * empty where the copy says what the session says.
     */
    public List<String> differs(State whole) {
        List<Comparison> before = Analysis.of(whole).comparisons();
        List<Comparison> after = Analysis.of(state()).comparisons();
        List<String> differs = new ArrayList<>();
        for (int at = 0; at < before.size(); at++) {
            Comparison one = before.get(at);
            Comparison other = after.get(at);
            boolean same =
                    one.verdict() == other.verdict()
                            && one.n() == other.n()
                            && one.estimate().equals(other.estimate())
                            && one.interval().equals(other.interval());
            if (!same) {
                differs.add(one.measure() + " of " + one.condition());
            }
        }
        return List.copyOf(differs);
    }
}
