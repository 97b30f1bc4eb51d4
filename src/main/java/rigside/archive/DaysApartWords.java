package rigside.archive;

import java.util.ArrayList;
import java.util.List;
import rigside.decide.Interval;
import rigside.decide.Summary;

/** Conditions of two sessions against each other, in plain words. */
public final class DaysApartWords {

    /** Said of all of it. */
    public static final String WARNING =
            "These are two sessions. The room, the instruments, the wearer and the practice of the"
                    + " hand differ from day to day as well as the condition, and no number here can"
                    + " tell the one from the other. No verdict is given: only rounds of one session"
                    + " that hold both conditions can settle it.";

    /** Fewer days leave their spread uncertain by a fifth or more: about 1 / sqrt(2 days). */
    private static final int FEW = 10;

    private final DaysApart apart;
    private final DaysApart.Compared of;

    private DaysApartWords(DaysApart apart, DaysApart.Compared of) {
        this.apart = apart;
        this.of = of;
    }

    /** What one measure says, the best comparison first. */
    public static List<String> of(DaysApart apart, DaysApart.Compared compared) {
        return new DaysApartWords(apart, compared).all();
    }

    private List<String> all() {
        List<String> all = new ArrayList<>();
        if (of.summaries().stream().anyMatch(each -> each.n() == 0)) {
            return List.of("One of the two has no value, so nothing is compared.");
        }
        of.through().ifPresent(each -> all.add(through(each)));
        direct(all);
        if (of.bounded()) {
            all.add(
                    "Some values are only known as \"at least\": the condition with them may have"
                            + " been higher than these numbers say.");
        }
        return all;
    }

    private String through(Interval interval) {
        return "Through the reference of both sessions ("
                + apart.one().reference().title()
                + "): "
                + against()
                + change(interval, "95 % interval")
                + ". This takes for granted that the reference was the same both times, and that"
                + " what a day does, it does to both conditions of a session alike"
                + (of.scale().ratio() ? " (by the same factor)." : " (by the same amount).");
    }

    private void direct(List<String> all) {
        if (of.within().isEmpty()) {
            all.add(
                    "Directly: "
                            + against()
                            + of.scale()
                                    .change(
                                            of.summaries().get(1).mean()
                                                    - of.summaries().get(0).mean())
                            + ". One of them has a single value, so there is no interval.");
        } else if (of.overDays().isPresent()) {
            all.add(
                    "Directly: "
                            + against()
                            + change(of.overDays().get(), "95 % interval")
                            + ". How far days differ is taken from the reference condition on "
                            + of.days()
                            + " other days of this wearer"
                            + (of.days() < FEW
                                    ? "; so few days make a wide interval, and they should."
                                    : "."));
            all.add("By the spread within each session alone it would be " + tooNarrow() + ".");
        } else {
            all.add(
                    "Directly: "
                            + against()
                            + of.scale().change(of.within().get().estimate())
                            + ". There is no interval that deserves the name: how far days differ is"
                            + " not known, since the reference condition was measured on "
                            + (of.days() == 0 ? "no" : of.days())
                            + " other "
                            + (of.days() == 1 ? "day" : "days")
                            + " of this wearer, and it takes 3. By the spread within each session"
                            + " alone it is "
                            + tooNarrow()
                            + ".");
        }
    }

    private String tooNarrow() {
        return of.scale().changes(of.within().orElseThrow()) + ", which is too narrow";
    }

    private String against() {
        return apart.title() + ": ";
    }

    private String change(Interval interval, String what) {
        return of.scale().change(interval.estimate())
                + " ("
                + what
                + " "
                + of.scale().changes(interval)
                + ")";
    }

    /** A side's values in a few words: "153 (n 6, spread 12 %)". */
    public static String side(Scaled scale, Summary summary) {
        return summary.n() == 0
                ? "no value"
                : scale.value(summary.mean())
                        + " (n "
                        + summary.n()
                        + (summary.n() > 1 ? ", spread " + scale.spread(summary.sd()) : "")
                        + ")";
    }
}
