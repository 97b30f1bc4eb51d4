package rigside.archive;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import rigside.protocol.Measure;
import rigside.protocol.Plan;
import rigside.protocol.Protocol;

/** How far the measures of a protocol spread on record, as the expected spreads of its plan. */
public final class SpreadsForPlan {
    private SpreadsForPlan() {}

    /**
     * What is on record of one measure. Sessions in which the mask stayed on from one condition to
     * the next spread less than donnings do, so they speak only for a plan of the same way.
     *
     * @param measure one of the protocol's
     * @param sessions closed ones of one wearer, all real or all invented, the latest first; may be
     *     empty
     * @return empty where no session tells it, or where trials are values of their own, of which
     *     the archive keeps none
     */
    public static Optional<SpreadOnRecord> of(
            Protocol protocol, Measure measure, List<WithValues> sessions) {
        Plan plan = protocol.plan();
        if (plan.design() == Plan.Design.INDEPENDENT_TRIALS
                && measure.kind() instanceof Measure.TimedInhalation) {
            return Optional.empty();
        }
        List<Archived.Measured> all = FromJournal.measures(protocol);
        Counterpart counterpart =
                new Counterpart(
                        all.stream()
                                .filter(each -> each.id().equals(measure.id()))
                                .findFirst()
                                .orElseThrow(),
                        all);
        List<WithValues> telling =
                sessions.stream()
                        .filter(each -> counterpart.in(each.session()).isPresent())
                        .filter(each -> stayedOn(each) == plan.maskStaysOn())
                        .toList();
        return Optional.of(SpreadOnRecord.of(telling, counterpart.wanted(), counterpart::in))
                .filter(each -> each.planned(plan.design()).isPresent());
    }

    /**
     * Whether the mask stayed on within a round, as far as the pieces tell: one piece then brings
     * two values at the same number of wearings, which no piece does that was put on anew.
     */
    private static boolean stayedOn(WithValues session) {
        record Wearing(String measure, int round, String piece, int before) {}
        Map<String, String> pieces =
                session.session().conditions().stream()
                        .collect(
                                Collectors.toMap(
                                        Archived.Worn::id,
                                        Archived.Worn::piece,
                                        (one, same) -> one));
        List<Wearing> wearings =
                session.values().stream()
                        .filter(WithValues.Value::counts)
                        .map(
                                each ->
                                        new Wearing(
                                                each.measure(),
                                                each.round(),
                                                pieces.getOrDefault(each.condition(), ""),
                                                each.wornBefore()))
                        .toList();
        return wearings.stream().distinct().count() < wearings.size();
    }
}
