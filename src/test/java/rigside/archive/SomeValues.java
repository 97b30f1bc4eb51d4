package rigside.archive;

import java.nio.file.Path;
import java.time.Instant;
import java.time.ZonedDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import rigside.analysis.Standing;
import rigside.protocol.Measure.Compared.Matters;
import rigside.protocol.Plan;
import rigside.protocol.Protocol;
import rigside.protocol.Subject;

/**
 * A closed session made up for a test: seconds of one measure, {@code breathing}, of a reference
 * {@code plain} and of {@code disc}, round by round.
 *
 * @param day when it was begun: a day, or a day with its time
 * @param wearer its code; nobody's when empty
 * @param simulated whether it is invented
 * @param pieces of the two conditions
 * @param wornBefore of the reference's piece, as the protocol says
 * @param values of the two conditions
 */
public record SomeValues(
        String day,
        String wearer,
        boolean simulated,
        List<String> pieces,
        int wornBefore,
        List<WithValues.Value> values) {

    static final Archived.Measured BREATHING =
            new Archived.Measured(
                    "breathing",
                    "Inhalation time",
                    "timed-inhalation",
                    "s",
                    true,
                    Optional.of(new Archived.Compared("10 %", -0.1, 0.1, Matters.EITHER, true)));

    public static SomeValues on(String day, double[] plain, double[] disc) {
        List<WithValues.Value> values = new ArrayList<>();
        for (int round = 1; round <= plain.length; round++) {
            values.add(value("plain", round, plain[round - 1]));
        }
        for (int round = 1; round <= disc.length; round++) {
            values.add(value("disc", round, disc[round - 1]));
        }
        return new SomeValues(day, "A", false, List.of("mask A", "mask A, disc"), 0, values);
    }

    private static WithValues.Value value(String condition, int round, double seconds) {
        return value(condition, round, seconds, seconds, false, false);
    }

    static WithValues.Value value(
            String condition,
            int round,
            double number,
            double halved,
            boolean bounded,
            boolean unresolved) {
        return new WithValues.Value(
                "breathing",
                condition,
                2 * round - (condition.equals("plain") ? 1 : 0),
                round,
                Instant.EPOCH,
                round - 1,
                Standing.COUNTS,
                OptionalDouble.of(number),
                OptionalDouble.of(halved),
                bounded,
                unresolved);
    }

    /** The same donning, complete but without a value. */
    static WithValues.Value withoutValue(WithValues.Value of) {
        return new WithValues.Value(
                of.measure(),
                of.condition(),
                of.donning(),
                of.round(),
                of.worn(),
                of.wornBefore(),
                Standing.WITHOUT_VALUE,
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                false,
                false);
    }

    /** At another time of its day than 9 o'clock. */
    SomeValues at(String time) {
        return new SomeValues(
                day + "T" + time + ":00Z", wearer, simulated, pieces, wornBefore, values);
    }

    public SomeValues by(String code) {
        return new SomeValues(day, code, simulated, pieces, wornBefore, values);
    }

    public SomeValues invented() {
        return new SomeValues(day, wearer, true, pieces, wornBefore, values);
    }

    SomeValues wearing(String piece) {
        return new SomeValues(day, wearer, simulated, List.of(piece, piece + ", disc"), 0, values);
    }

    SomeValues with(WithValues.Value more) {
        List<WithValues.Value> all = new ArrayList<>(values);
        all.add(more);
        return new SomeValues(day, wearer, simulated, pieces, wornBefore, all);
    }

    public WithValues session() {
        return session(List.of());
    }

    /** With more conditions than the two. */
    WithValues session(List<Archived.Worn> more) {
        List<Archived.Worn> worn = new ArrayList<>();
        worn.add(new Archived.Worn("plain", "As it is", pieces.get(0), wornBefore));
        worn.add(new Archived.Worn("disc", "With disc", pieces.get(1), 0));
        worn.addAll(more);
        Optional<ZonedDateTime> begun =
                Optional.of(ZonedDateTime.parse(day.length() > 10 ? day : day + "T09:00:00Z"));
        return new WithValues(
                new Archived(
                        Path.of(day.replaceAll("T(..):(..):00Z", "-$1$2")),
                        Optional.empty(),
                        begun,
                        begun,
                        true,
                        simulated,
                        Optional.empty(),
                        Optional.of(
                                new Archived.Followed(
                                        "disc.yaml",
                                        "Disc",
                                        "Does it?",
                                        "0",
                                        Protocol.Purpose.COMPARISON,
                                        Plan.Design.ROUNDS)),
                        wearer.isEmpty()
                                ? List.of()
                                : List.of(
                                        new Archived.Fact(
                                                "wearer",
                                                "Code",
                                                wearer,
                                                Optional.of(Subject.WEARER_CODE))),
                        worn,
                        List.of(BREATHING),
                        0,
                        List.of(),
                        List.of()),
                values);
    }
}
