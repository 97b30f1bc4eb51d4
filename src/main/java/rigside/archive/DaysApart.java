package rigside.archive;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import rigside.decide.Interval;
import rigside.decide.Summary;
import rigside.decide.TwoMeans;
import rigside.protocol.Plan;

/**
 * Two conditions tested in two sessions. What differs between them is also all that differs between
 * two days; so there is no verdict, and the interval is as wide as that makes it.
 *
 * @param one the first
 * @param two the second, told compared with the first
 * @param compared one for each measure both have
 * @param remarks what has to be known of them; may be empty
 */
public record DaysApart(Side one, Side two, List<Compared> compared, List<String> remarks) {

    /** The confidence of every interval here. */
    public static final double CONFIDENCE = 0.95;

    /** Fewer other days tell nothing of how days differ. */
    private static final int FEWEST_DAYS = 3;

    public DaysApart {
        compared = List.copyOf(compared);
        remarks = List.copyOf(remarks);
    }

    /** A condition of a session. */
    public record Side(Archived session, Archived.Worn condition) {
        /** "With the disc (2026-11-25)", where that tells it from the other; else its session. */
        String words(Side other) {
            return isLike(other)
                    ? condition.title() + " (" + Names.of(session) + ")"
                    : condition.title() + " (" + Names.day(session) + ")";
        }

        private boolean isLike(Side other) {
            return condition.title().equals(other.condition.title())
                    && session.day().equals(other.session.day());
        }

        /** The condition others are compared with in this session. */
        Archived.Worn reference() {
            return session.conditions().get(0);
        }

        boolean isReference() {
            return condition.id().equals(reference().id());
        }
    }

    /**
     * One measure.
     *
     * @param measure the measure
     * @param scale of its numbers
     * @param summaries of the values of the first and the second, on the scale of the analysis
     * @param through second less first, each less the reference of its own session; empty where
     *     that cannot be
     * @param overDays second less first with the spread of days in it; empty where that is not
     *     known
     * @param days how many other days that spread comes from
     * @param within second less first by the spread within each session alone, too narrow; empty
     *     below two values of each
     * @param bounded whether some values are only known as "at least"
     */
    public record Compared(
            Archived.Measured measure,
            Scaled scale,
            List<Summary> summaries,
            Optional<Interval> through,
            Optional<Interval> overDays,
            int days,
            Optional<Interval> within,
            boolean bounded) {
        public Compared {
            summaries = List.copyOf(summaries);
        }
    }

    /** Both sides as they are spoken of, the first one first. */
    public List<String> sides() {
        return List.of(one.words(two), two.words(one));
    }

    /** "With the disc (2026-11-25), compared with As it is (2026-11-18)". */
    public String title() {
        return sides().get(1) + ", compared with " + sides().get(0);
    }

    /**
     * Whether these can be set against each other.
     *
     * @param one the first session
     * @param two the second
     */
    public static Optional<Refusal> refusal(
            Chosen one, String conditionOfOne, Chosen two, String conditionOfTwo) {
        if (one.session().folder().equals(two.session().folder())) {
            return Optional.of(
                    new Refusal(
                            "both conditions are of one session",
                            "its own rounds compare them: 'rigside analyse'"));
        }
        return Together.refusal(List.of(one, two))
                .or(() -> unknown(one, conditionOfOne))
                .or(() -> unknown(two, conditionOfTwo))
                .or(() -> measures(one, two));
    }

    private static Optional<Refusal> unknown(Chosen chosen, String condition) {
        return chosen.session().condition(condition).isPresent()
                ? Optional.empty()
                : Optional.of(
                        new Refusal(
                                chosen.name() + " has no condition '" + condition + "'",
                                "it has "
                                        + Names.list(
                                                chosen.session().conditions().stream()
                                                        .map(each -> "'" + each.id() + "'")
                                                        .toList())));
    }

    private static Optional<Refusal> measures(Chosen one, Chosen two) {
        return shared(one.session(), two.session()).isEmpty()
                ? Optional.of(
                        new Refusal(
                                "the two sessions measure nothing in the same way",
                                "measures are the same where id, kind, unit and scale are"))
                : Optional.empty();
    }

    private static List<Archived.Measured> shared(Archived one, Archived two) {
        return two.measures().stream()
                .filter(each -> one.measure(each.id()).filter(m -> isSame(m, each)).isPresent())
                .toList();
    }

    static boolean isSame(Archived.Measured one, Archived.Measured two) {
        return one.id().equals(two.id())
                && one.kind().equals(two.kind())
                && one.unit().equals(two.unit())
                && one.ratio() == two.ratio();
    }

    /** Which sessions of the archive may tell how far days differ. */
    public static Predicate<Archived> mayTell(Chosen one, Chosen two) {
        return each -> OtherDays.isOther(each, one.session(), two.session());
    }

    /**
     * Sets them against each other.
     *
     * @param all every session of the archive, from which the spread of days comes; the two
     *     themselves are passed over
     */
    public static DaysApart of(
            Chosen one,
            String conditionOfOne,
            Chosen two,
            String conditionOfTwo,
            List<WithValues> all) {
        Side first = new Side(one.session(), one.session().condition(conditionOfOne).orElseThrow());
        Side second =
                new Side(two.session(), two.session().condition(conditionOfTwo).orElseThrow());
        List<WithValues> others =
                all.stream().filter(each -> mayTell(one, two).test(each.session())).toList();
        List<Compared> compared =
                shared(one.session(), two.session()).stream()
                        .map(
                                measure ->
                                        compared(
                                                measure,
                                                one.values(),
                                                first,
                                                two.values(),
                                                second,
                                                others))
                        .toList();
        return new DaysApart(first, second, compared, remarks(one, two, first, second));
    }

    private static Compared compared(
            Archived.Measured measure,
            WithValues one,
            Side first,
            WithValues two,
            Side second,
            List<WithValues> others) {
        Scaled scale = Scaled.of(measure);
        List<WithValues.Value> ofOne = Taken.counting(one, measure.id(), first.condition().id());
        List<WithValues.Value> ofTwo = Taken.counting(two, measure.id(), second.condition().id());
        Summary a = Summary.of(Taken.numbers(ofOne, scale, Taken.Bounded.STATED));
        Summary b = Summary.of(Taken.numbers(ofTwo, scale, Taken.Bounded.STATED));
        boolean enough = a.n() > 1 && b.n() > 1;
        Summary days = OtherDays.of(others, measure, first, second);
        return new Compared(
                measure,
                scale,
                List.of(a, b),
                through(measure, scale, one, first, two, second),
                enough && days.n() >= FEWEST_DAYS
                        ? Optional.of(TwoMeans.overDays(a, b, days, CONFIDENCE))
                        : Optional.empty(),
                days.n(),
                enough ? Optional.of(TwoMeans.apart(a, b, CONFIDENCE)) : Optional.empty(),
                ofOne.stream().anyMatch(WithValues.Value::bounded)
                        || ofTwo.stream().anyMatch(WithValues.Value::bounded));
    }

    /** Only where both have it, and neither side is it. */
    private static Optional<Interval> through(
            Archived.Measured measure,
            Scaled scale,
            WithValues one,
            Side first,
            WithValues two,
            Side second) {
        if (!first.reference().id().equals(second.reference().id())
                || first.isReference()
                || second.isReference()
                || !isByRounds(one)
                || !isByRounds(two)) {
            return Optional.empty();
        }
        Summary a = differences(one, measure, scale, first);
        Summary b = differences(two, measure, scale, second);
        return a.n() > 1 && b.n() > 1
                ? Optional.of(TwoMeans.apart(a, b, CONFIDENCE))
                : Optional.empty();
    }

    private static boolean isByRounds(WithValues each) {
        return each.session()
                .protocol()
                .filter(protocol -> protocol.design() == Plan.Design.ROUNDS)
                .isPresent();
    }

    private static Summary differences(
            WithValues session, Archived.Measured measure, Scaled scale, Side side) {
        return Summary.of(
                Taken.pairs(session, measure.id(), side.reference().id(), side.condition().id())
                        .stream()
                        .mapToDouble(each -> each.difference(scale, Taken.Bounded.STATED))
                        .toArray());
    }

    private static List<String> remarks(Chosen one, Chosen two, Side first, Side second) {
        List<String> remarks = new ArrayList<>();
        if (one.session().simulated()) {
            remarks.add("Simulated: every value of these sessions is invented.");
        }
        if (one.session().wearer().isEmpty()) {
            remarks.add(
                    "No wearer's code is on record: that both were worn by one person is taken for"
                            + " granted.");
        }
        remarks.addAll(AnsweredUnlike.remarks(List.of(one.session(), two.session())));
        if (!one.protocol()
                .orElseThrow()
                .donning()
                .equals(two.protocol().orElseThrow().donning())) {
            remarks.add(
                    "The steps of a donning are not the same in the two protocols: part of the"
                            + " difference may be theirs.");
        }
        if (first.condition().piece().equals(second.condition().piece())) {
            remarks.add(
                    "Both wore the same piece ("
                            + first.condition().piece()
                            + "): it was worn more often before one of them, which may be part of"
                            + " the difference.");
        }
        return List.copyOf(remarks);
    }
}
