package rigside.archive;

import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import rigside.analysis.Standing;

/** Values taken from one session, on the scale of the analysis. */
final class Taken {
    private Taken() {}

    /** What the counter only bounded counts as stated, or at half its penetration. */
    enum Bounded {
        STATED,
        HALVED
    }

    /** A round's values of two conditions. */
    record Pair(WithValues.Value reference, WithValues.Value other) {
        double difference(Scaled scale, Bounded how) {
            return number(other, scale, how) - number(reference, scale, how);
        }

        boolean isBounded() {
            return reference.bounded() || other.bounded();
        }

        /** Taken at half on both sides its ratio stays: that says nothing. */
        boolean isUnresolved() {
            return reference.unresolved() && other.unresolved();
        }
    }

    /** The values that count, in the order they were worn. */
    static List<WithValues.Value> counting(WithValues session, String measure, String condition) {
        return session.values().stream()
                .filter(
                        each ->
                                each.counts()
                                        && each.measure().equals(measure)
                                        && each.condition().equals(condition))
                .toList();
    }

    static double[] numbers(List<WithValues.Value> values, Scaled scale, Bounded how) {
        return values.stream().mapToDouble(each -> number(each, scale, how)).toArray();
    }

    private static double number(WithValues.Value value, Scaled scale, Bounded how) {
        return scale.inward(
                (how == Bounded.STATED ? value.number() : value.halved()).orElseThrow());
    }

    /** One for each round that is complete and has both values, in order. */
    static List<Pair> pairs(
            WithValues session, String measure, String reference, String condition) {
        List<WithValues.Value> references = counting(session, measure, reference);
        List<WithValues.Value> others = counting(session, measure, condition);
        return completeRounds(session, measure).stream()
                .flatMap(
                        round ->
                                inRound(references, round)
                                        .flatMap(
                                                one ->
                                                        inRound(others, round)
                                                                .map(two -> new Pair(one, two)))
                                        .stream())
                .toList();
    }

    private static List<Integer> completeRounds(WithValues session, String measure) {
        TreeSet<Integer> rounds = new TreeSet<>();
        session.values().forEach(each -> rounds.add(each.round()));
        rounds.removeIf(
                round ->
                        !session.session().conditions().stream()
                                .allMatch(
                                        worn ->
                                                session.values().stream()
                                                        .anyMatch(
                                                                each ->
                                                                        isWorn(
                                                                                each, measure,
                                                                                worn.id(),
                                                                                round))));
        return List.copyOf(rounds);
    }

    private static boolean isWorn(
            WithValues.Value value, String measure, String condition, int round) {
        return value.measure().equals(measure)
                && value.condition().equals(condition)
                && value.round() == round
                && (value.counts() || value.standing() == Standing.WITHOUT_VALUE);
    }

    private static Optional<WithValues.Value> inRound(List<WithValues.Value> values, int round) {
        return values.stream().filter(each -> each.round() == round).findFirst();
    }
}
