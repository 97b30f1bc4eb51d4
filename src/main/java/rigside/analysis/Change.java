package rigside.analysis;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import rigside.decide.Conclusion;
import rigside.decide.Finding;
import rigside.decide.Interval;
import rigside.decide.Rules;
import rigside.decide.Verdict;
import rigside.protocol.Measure.Compared.Matters;

/**
 * What would change the verdict of one comparison, in plain words: what a settled one rests on, and
 * how far from settling any other is.
 *
 * @param wording the comparison's words
 * @param judged what its looks led to
 */
record Change(Wording wording, Judged judged) {

    /** A smaller share says no more than that it is small. */
    private static final double LEAST = 0.01;

    String sentence() {
        if (judged.verdict().settled()) {
            return settled();
        }
        if (judged.verdict() == Verdict.TOO_FEW_ROUNDS) {
            return tooFew();
        }
        if (!judged.boundedAgrees()) {
            return bounded();
        }
        if (judged.dependsOnChanged()) {
            return changed();
        }
        return judged.course().latest().atResolution() ? resolution() : distance();
    }

    private String settled() {
        String stays = "It stays under this plan";
        if (judged.differsNow()) {
            stays += ", although the latest look by itself says " + said(latest().conclusion());
        } else if (judged.isOpen()) {
            stays += ", whatever further rounds show";
        }
        Conclusion reached = judged.settledAt().orElseThrow().conclusion();
        if (!judged.course().conclusion().equals(reached)) {
            return stays + ", since a look on record settled it.";
        }
        return stays
                + "; only striking out or amending values could unsettle it. "
                + judged.otherwise().restsOn().sentence();
    }

    private String tooFew() {
        Lacking lacking = new Lacking(wording, judged.rows());
        return judged.isOpen()
                ? "A first verdict comes with the first look, after " + lacking.more() + "."
                : nothing() + "it has too few: " + lacking.soFar() + ".";
    }

    private String bounded() {
        if (judged.otherwise().openOnBothSides()) {
            return "Nothing settles while donnings of both conditions have fit factors that are only"
                    + " known as \"at least\"; a new plan with more ambient particles or longer"
                    + " sampling could.";
        }
        Conclusion halved =
                judged.otherwise().halved().orElseGet(() -> judged.course().conclusion());
        return twoWays(
                "With the bounded fit factors as stated the verdict would be ",
                ", at half their penetration ",
                List.of(halved));
    }

    private String changed() {
        Conclusion now = judged.course().conclusion();
        ChangedWords words = words();
        List<Conclusion> others = words.others();
        if (!others.isEmpty()) {
            return twoWays(words.asItStands() + " the verdict would be ", words.asItWas(), others);
        }
        return judged.settledAt()
                .map(Comparison.Settled::conclusion)
                .filter(each -> !each.equals(now))
                .map(
                        before ->
                                "Before something was "
                                        + words.done()
                                        + " it settled as "
                                        + said(before)
                                        + ", now the verdict would be "
                                        + said(now)
                                        + unlessAlike())
                .orElseGet(() -> words.asBefore() + " the verdict would differ" + unlessAlike());
    }

    private ChangedWords words() {
        return new ChangedWords(judged, wording.setting().compared().matters());
    }

    private String twoWays(String one, String other, List<Conclusion> others) {
        return one
                + said(judged.course().conclusion())
                + other
                + String.join(" or ", others.stream().map(this::said).toList())
                + unlessAlike();
    }

    private String unlessAlike() {
        String ways =
                !judged.boundedAgrees() && judged.dependsOnChanged()
                        ? "these ways, and " + words().takenBack() + ","
                        : "both ways";
        return judged.isOpen()
                ? "; it settles once " + ways + " settle alike."
                : "; " + ways + " would have had to settle alike.";
    }

    private String said(Conclusion conclusion) {
        return VerdictWords.of(conclusion, wording.setting().compared().matters());
    }

    private String resolution() {
        Rules rules = wording.setting().rules(judged.rows());
        double rounding = rules.roundingSpread();
        double information =
                rules.schedule().looks().get(judged.course().looks().size() - 1).information();
        double least = latest().interval().orElseThrow().standardError() * Math.sqrt(information);
        String floor =
                wording.setting().scale().isRatio()
                        ? Digits.three(100 * Math.expm1(rounding)) + " %"
                        : wording.ofScale(Digits.three(rounding));
        String seen =
                least < rounding * 1.001
                        ? "they spread by no more than the "
                                + floor
                                + " that rounding alone can explain"
                        : "they do not differ from each other at all";
        return (judged.isOpen()
                        ? "It could settle once the values are read finer: "
                        : nothing() + "the values would have had to be read finer, since ")
                + seen
                + ".";
    }

    /** How far the interval is from what would settle it. */
    private String distance() {
        Interval interval = latest().interval().orElseThrow();
        double low = wording.setting().compared().bandLow();
        double high = wording.setting().compared().bandHigh();
        Matters matters = wording.setting().compared().matters();
        List<String> none = new ArrayList<>();
        if (matters != Matters.DECREASE && !(interval.upper() < high)) {
            none.add(below("upper", interval.upper(), high));
        }
        if (matters != Matters.INCREASE && !(interval.lower() > low)) {
            none.add(above("lower", interval.lower(), low));
        }
        boolean down =
                matters == Matters.DECREASE
                        || (matters == Matters.EITHER && latest().estimate() < 0);
        String beyond =
                down
                        ? below("upper", interval.upper(), low)
                        : above("lower", interval.lower(), high);
        String either =
                "as "
                        + VerdictWords.of(Verdict.NO_MEANINGFUL_DIFFERENCE, matters)
                        + " if "
                        + String.join(" and ", none)
                        + ", as a meaningful "
                        + (down ? "decrease" : "increase")
                        + " if "
                        + beyond;
        return (judged.isOpen() ? "It would settle " : nothing() + "it would have settled ")
                + either
                + "."
                + narrow(interval);
    }

    /**
     * How narrow an interval this estimate would need. A figure about the values there are: none is
     * given for the next one, which would be worn with it in mind.
     */
    private String narrow(Interval interval) {
        double room = room(interval.estimate());
        double share = room / (interval.upper() - interval.estimate());
        Scale scale = wording.setting().scale();
        String low = Digits.three(scale.outward(interval.estimate() - room));
        String high = Digits.three(scale.outward(interval.estimate() + room));
        if (low.equals(high)) {
            return " With the estimate where it is, at the edge of what matters, hardly any interval"
                    + (judged.isOpen() ? " is" : " would have been")
                    + " narrow enough.";
        }
        return " With the estimate where it is, the interval would have "
                + (judged.isOpen() ? "to be" : "had to be")
                + " within "
                + wording.ofScale(low + " to " + high)
                + ": a spread "
                + (share < LEAST
                        ? "less than a hundredth as large"
                        : "at most "
                                + new BigDecimal(share)
                                        .round(new MathContext(2, RoundingMode.DOWN))
                                        .toPlainString()
                                + " times as large")
                + (judged.isOpen() ? " would do that now." : " would have done that.");
    }

    /**
     * How far from the estimate, on the scale of the analysis, the nearest limit is that settles.
     */
    private double room(double estimate) {
        double toLow = Math.abs(estimate - wording.setting().compared().bandLow());
        double toHigh = Math.abs(wording.setting().compared().bandHigh() - estimate);
        return switch (wording.setting().compared().matters()) {
            case EITHER -> Math.min(toLow, toHigh);
            case INCREASE -> toHigh;
            case DECREASE -> toLow;
        };
    }

    private String below(String which, double limit, double edge) {
        return moved(which, limit, edge, "fell below ");
    }

    private String above(String which, double limit, double edge) {
        return moved(which, limit, edge, "rose above ");
    }

    private String moved(String which, double analysedLimit, double analysedEdge, String how) {
        double limit = wording.setting().scale().outward(analysedLimit);
        double edge = wording.setting().scale().outward(analysedEdge);
        List<String> figures = Digits.apart(edge, limit);
        String verb =
                judged.isOpen()
                        ? how
                        : how.replace("fell", "had fallen").replace("rose", "had risen");
        return "the "
                + which
                + " limit "
                + verb
                + wording.ofScale(figures.get(0))
                + " (now "
                + (wording.isBeyondWords(limit)
                        ? wording.limit(limit)
                        : wording.ofScale(figures.get(1)))
                + ")";
    }

    private String nothing() {
        return "Nothing changes it under this plan any more: ";
    }

    private Finding latest() {
        return judged.course().latest();
    }
}
