package rigside.session;

import java.util.List;
import java.util.Optional;
import rigside.protocol.Condition;
import rigside.protocol.Protocol;

/** Which donning comes next, and when a look is due. */
public final class Schedule {
    private Schedule() {}

    /** The conditions of one round in the order they are worn. */
    public static List<String> order(State state, int round) {
        return order(state.protocol(), state.opening().orElseThrow().event().seed(), round);
    }

    /** The same of a session by this protocol that is opened with this seed. */
    public static List<String> order(Protocol protocol, long seed, int round) {
        List<String> ids = protocol.conditions().stream().map(Condition::id).toList();
        return Order.of(ids, protocol.plan().order(), seed, round);
    }

    /**
     * The first turn of the first round without a donning that counts. A donning that was struck
     * out leaves its turn free, so its replacement keeps the round's number.
     */
    public static Activity.NextDonning next(State state) {
        for (int round = 1; ; round++) {
            List<String> order = order(state, round);
            for (int turn = 1; turn <= order.size(); turn++) {
                if (worn(state, round, order.get(turn - 1)).isEmpty()) {
                    return new Activity.NextDonning(round, turn, order.get(turn - 1));
                }
            }
        }
    }

    /**
     * Whether the mask is put on for what comes next: always, but where the protocol lets it stay
     * on and the donning before it was a setting of the same round that came to its end.
     */
    public static boolean isPutOn(State state, Activity.NextDonning next) {
        int before = state.course().donnings().size();
        return !staysOn(state, before, next.round(), next.turn());
    }

    /** The same of a donning that was begun, for as long as there is a session. */
    public static boolean isPutOn(State state, Donning donning) {
        return !staysOn(state, donning.number() - 1, donning.round(), donning.turn());
    }

    /** Whether the mask stays on once this donning is complete: a setting of its round is left. */
    public static boolean isLeftOn(State state, Donning donning) {
        List<String> order = order(state, donning.round());
        return state.protocol().plan().maskStaysOn()
                && order.subList(donning.turn(), order.size()).stream()
                        .anyMatch(each -> worn(state, donning.round(), each).isEmpty());
    }

    /** Struck out it was complete all the same; done again it is put on anew. */
    private static boolean staysOn(State state, int before, int round, int turn) {
        return state.protocol().plan().maskStaysOn()
                && state.course()
                        .donning(before)
                        .filter(each -> each.round() == round && each.turn() < turn)
                        .filter(each -> each.outcome() != Donning.Outcome.ABANDONED)
                        .isPresent();
    }

    /** The complete donning of a condition in a round, if there is one that counts. */
    public static Optional<Donning> worn(State state, int round, String condition) {
        return state.course().donnings().stream()
                .filter(
                        donning ->
                                donning.outcome() == Donning.Outcome.COMPLETE
                                        && donning.round() == round
                                        && donning.condition().equals(condition))
                .findFirst();
    }

    /** The numbers of the rounds in which every condition has a complete donning. */
    public static List<Integer> completeRounds(State state) {
        return state.course().donnings().stream()
                .map(Donning::round)
                .distinct()
                .sorted()
                .filter(
                        round ->
                                state.protocol().conditions().stream()
                                        .allMatch(
                                                each -> worn(state, round, each.id()).isPresent()))
                .toList();
    }

    /** Whether an entry stands and its donning, if it belongs to one, does too. */
    public static boolean counts(State state, Entry entry) {
        int donning = entry.slot().place().donning();
        return entry.stands()
                && (donning == 0
                        || state.course()
                                .donning(donning)
                                .filter(
                                        each ->
                                                each.outcome() == Donning.Outcome.COMPLETE
                                                        || each.outcome() == Donning.Outcome.OPEN)
                                .isPresent());
    }

    /**
     * Due when other donnings make up the complete rounds than at the last look, one of its entries
     * no longer counts, or one that it can have rested on was amended: what changes no value needs
     * no look.
     */
    static boolean lookDue(State state) {
        List<Integer> donnings = donningsOfCompleteRounds(state);
        if (donnings.isEmpty()) {
            return false;
        }
        return state.captured()
                .lastLook()
                .map(
                        last ->
                                !donnings.equals(state.captured().lookedAt())
                                        || lostAnEntry(state, last)
                                        || amended(state))
                .orElse(true);
    }

    /** The numbers of the donnings that make up the complete rounds, round by round. */
    static List<Integer> donningsOfCompleteRounds(State state) {
        return completeRounds(state).stream()
                .flatMap(
                        round ->
                                state.protocol().conditions().stream()
                                        .map(each -> worn(state, round, each.id()).orElseThrow()))
                .map(Donning::number)
                .toList();
    }

    /** Answers from outside the donnings may decide which of their steps were done. */
    private static boolean amended(State state) {
        Captured captured = state.captured();
        return captured.amended().sinceLook().stream()
                .flatMap(number -> captured.entry(number).stream())
                .map(Entry::slot)
                .filter(slot -> isAnalysed(state.protocol(), slot))
                .map(slot -> slot.place().donning())
                .anyMatch(donning -> donning == 0 || captured.lookedAt().contains(donning));
    }

    /** Whatever is read is; of what is answered, what a measure or a step depends on. */
    private static boolean isAnalysed(Protocol protocol, Slot slot) {
        return !(slot instanceof Slot.Field field) || protocol.isAnalysed(field.id());
    }

    private static boolean lostAnEntry(State state, Look look) {
        return look.lines().stream()
                .flatMap(line -> line.entries().stream())
                .anyMatch(
                        number ->
                                state.captured()
                                        .entry(number)
                                        .filter(entry -> !counts(state, entry))
                                        .isPresent());
    }
}
