package rigside.archive;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import rigside.decide.Summary;

/** What a reference condition was on other days: how far days differ. */
final class OtherDays {
    private OtherDays() {}

    /**
     * A closed session of the same wearer on neither day of these two, real or invented as they
     * are: what is said of their days must not come from those days.
     */
    static boolean isOther(Archived each, Archived one, Archived two) {
        return each.closed()
                && each.damage().isEmpty()
                && each.simulated() == one.simulated()
                && Whose.same(each, one)
                && !each.day().equals(one.day())
                && !each.day().equals(two.day());
    }

    /** The means of days on which the reference of either was worn, that with more days. */
    static Summary of(
            List<WithValues> others,
            Archived.Measured measure,
            DaysApart.Side first,
            DaysApart.Side second) {
        Summary one = of(others, measure, first.reference());
        Summary two = of(others, measure, second.reference());
        return two.n() > one.n() ? two : one;
    }

    private static Summary of(
            List<WithValues> others, Archived.Measured measure, Archived.Worn worn) {
        Scaled scale = Scaled.of(measure);
        Map<LocalDate, List<WithValues.Value>> byDay = new LinkedHashMap<>();
        for (WithValues each : others) {
            boolean same =
                    each.session()
                                    .measure(measure.id())
                                    .filter(m -> DaysApart.isSame(m, measure))
                                    .isPresent()
                            && each.session()
                                    .condition(worn.id())
                                    .filter(c -> c.piece().equals(worn.piece()))
                                    .isPresent();
            List<WithValues.Value> values = Taken.counting(each, measure.id(), worn.id());
            if (same && !values.isEmpty()) {
                each.session()
                        .day()
                        .ifPresent(
                                day ->
                                        byDay.computeIfAbsent(day, none -> new ArrayList<>())
                                                .addAll(values));
            }
        }
        return Summary.of(
                byDay.values().stream()
                        .map(each -> Taken.numbers(each, scale, Taken.Bounded.STATED))
                        .mapToDouble(each -> Summary.of(each).mean())
                        .toArray());
    }
}
