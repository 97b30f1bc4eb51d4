package rigside.archive;

import java.util.ArrayList;
import java.util.List;
import rigside.analysis.Digits;
import rigside.decide.Interval;
import rigside.decide.Limits;
import rigside.decide.Pooling;
import rigside.decide.RandomEffects;

/** What sessions say together, in plain words. */
record PooledWords(Pooled of, Pooling pooling) {

    /** Below it sessions differ by more than chance makes likely. */
    private static final double ALPHA = 0.05;

    /** Below it spreads within sessions are said to be unlike. */
    private static final double UNLIKE = 0.01;

    List<String> all() {
        RandomEffects effects = pooling.effects().orElseThrow();
        List<String> all = new ArrayList<>();
        all.add(found());
        if (effects.estimates().size() == 2) {
            all.add(
                    "Two sessions tell next to nothing of how far sessions differ: the interval"
                            + " reaches 12.7 standard errors to each side for it.");
        }
        if (effects.scatter() < 1) {
            all.add(
                    "The sessions agree better with each other than the spread within them lets"
                            + " expect, so that spread makes the interval; by how they scatter"
                            + " alone, which is right on average but not where they agree by luck,"
                            + " it would be "
                            + of.scale().changes(effects.interval(Pool.CONFIDENCE))
                            + ".");
        }
        of.halved()
                .ifPresent(
                        half ->
                                all.add(
                                        "Some values are only known as \"at least\". Taken at half"
                                                + " their penetration the sessions together give "
                                                + withInterval(half)
                                                + "; read it as what both ways agree on."));
        all.add(between(effects));
        all.add(next(effects));
        all.add(within());
        return List.copyOf(all);
    }

    private String found() {
        return of.condition().title()
                + ", compared with "
                + of.reference().title()
                + ", over "
                + pooling.sessions().size()
                + " sessions with "
                + of.rounds()
                + " rounds: "
                + withInterval(pooling)
                + ".";
    }

    private String withInterval(Pooling each) {
        return of.scale().change(each.mean())
                + " (ordinary 95 % interval "
                + of.scale().changes(each.effects().orElseThrow().cautiousInterval(Pool.CONFIDENCE))
                + ")";
    }

    private String between(RandomEffects effects) {
        boolean differ = effects.p() < ALPHA;
        return "The sessions differ from each other by "
                + (differ ? "more than" : "no more than")
                + " chance makes likely (Cochran's Q "
                + Digits.three(effects.q())
                + " with "
                + degrees(effects.degreesOfFreedom())
                + "; set against the spread within them, "
                + degrees(effects.freedom())
                + ", p "
                + p(effects.p())
                + " by F). Their true differences spread by about "
                + size(effects.spreadBetween())
                + effects.betweenLimits(Pool.CONFIDENCE)
                        .map(limits -> spreading(effects, limits))
                        .orElse(
                                " (tau). How far that may be from the truth cannot be said: sessions"
                                        + " with no such spread agree as well as these in fewer than"
                                        + " 1 of 40 cases.");
    }

    private String spreading(RandomEffects effects, Limits limits) {
        Limits shares = effects.shareLimits(Pool.CONFIDENCE).orElseThrow();
        return " (tau; 95 % limits "
                + size(limits.low())
                + " to "
                + size(limits.high())
                + "); the share of that in the variance of a session's estimate, I squared, is "
                + percent(effects.shareBetween())
                + " ("
                + percent(shares.low())
                + " to "
                + percent(shares.high())
                + ").";
    }

    private static String degrees(double freedom) {
        return (int) freedom + (freedom == 1 ? " degree of freedom" : " degrees of freedom");
    }

    private String size(double spread) {
        return spread > 0 ? of.scale().spread(spread) : "0";
    }

    private String next(RandomEffects effects) {
        Interval next = effects.prediction(Pool.CONFIDENCE);
        return "One more session like these would have its true difference within "
                + of.scale().changes(next)
                + " (95 % prediction interval)"
                + (effects.estimates().size() < 5
                        ? ", by as much as so few sessions can tell."
                        : ".");
    }

    private String within() {
        String spread =
                "Within a session a round's difference spreads by about "
                        + of.scale().spread(pooling.within())
                        + ", taken as one number for all sessions";
        if (pooling.isRounding()) {
            return spread + ": what rounding alone gives, since the values spread by less.";
        }
        return pooling.unlike() < UNLIKE
                ? spread
                        + "; but they spread unlike (Bartlett's test, p "
                        + p(pooling.unlike())
                        + "), so the interval is rougher than it looks."
                : spread + ".";
    }

    static String p(double p) {
        return p < 0.001 ? "below 0.001" : Digits.three(p);
    }

    private static String percent(double share) {
        return Math.round(100 * share) + " %";
    }
}
