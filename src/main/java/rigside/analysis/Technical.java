package rigside.analysis;

import java.util.List;
import rigside.decide.Course;
import rigside.decide.Finding;
import rigside.decide.Interval;
import rigside.decide.Schedule;

/**
 * One comparison for a statistician: design, counts, estimate with its standard error, interval.
 * All figures are on the scale of the analysis, so that they can be put together again.
 *
 * @param setting what was fixed beforehand
 * @param rows the values
 * @param course all looks at them
 */
record Technical(Setting setting, Rows rows, Course course) {

    String sentence() {
        Finding latest = course.latest();
        Schedule schedule = setting.rules(rows).schedule();
        if (latest.interval().isEmpty()) {
            return design()
                    + ", "
                    + counts(new Schedule.Arms(rows.reference().size(), rows.other().size()))
                    + (Double.isNaN(latest.estimate())
                            ? ""
                            : ": " + centre() + " " + Digits.three(latest.estimate()))
                    + "; no interval before the first look at "
                    + counts(schedule.looks().get(0).arms())
                    + ".";
        }
        int look = course.looks().size();
        return design()
                + ", "
                + counts(schedule.looks().get(look - 1).arms())
                + ": "
                + figures(latest.interval().get())
                + " (look "
                + look
                + " of "
                + schedule.looks().size()
                + ")"
                + (latest.atResolution()
                        ? "; the standard error is the least that rounding allows"
                        : "")
                + step(latest.interval().get())
                + ".";
    }

    private static String step(Interval interval) {
        return interval.shift() > 0
                ? "; on each side a step of the reading is added, "
                        + Digits.three(interval.shift())
                        + ", since the spread is below twice that of rounding"
                : "";
    }

    private String design() {
        String each = setting.isByTrial() ? ", one a trial" : "";
        String unit = setting.measure().unit().symbol();
        String in = unit.isEmpty() ? "" : " in " + unit;
        if (setting.isPaired()) {
            return setting.scale().isRatio() ? "Paired log ratios" : "Paired differences" + in;
        }
        return (setting.scale().isRatio() ? "Independent log values" : "Independent values" + in)
                + each;
    }

    private String counts(Schedule.Arms arms) {
        return "n = "
                + arms.other()
                + (setting.isPaired() ? "" : " against " + arms.reference() + " of the reference");
    }

    private String centre() {
        return setting.isPaired() ? "mean" : "difference of means";
    }

    private String figures(Interval interval) {
        List<String> figures =
                Phrases.alike(
                        interval.standardError(),
                        interval.estimate(),
                        interval.lower(),
                        interval.upper());
        int freedom = (int) interval.degreesOfFreedom();
        return centre()
                + " "
                + figures.get(1)
                + ", "
                + (setting.isPaired() ? "" : "pooled ")
                + "standard error "
                + figures.get(0)
                + " ("
                + Phrases.count(freedom, "degree of freedom", "degrees of freedom")
                + "), repeated "
                + Phrases.confidence(1 - setting.alpha())
                + " confidence interval "
                + (setting.sharing() > 1
                        ? "("
                                + Phrases.confidence(setting.plan().confidence())
                                + " for "
                                + Phrases.all(setting.sharing(), "comparisons")
                                + " together) "
                        : "")
                + figures.get(2)
                + " to "
                + figures.get(3)
                + " with c = "
                + Digits.three(interval.critical());
    }
}
