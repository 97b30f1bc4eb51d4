package rigside.analysis;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import rigside.decide.Limits;
import rigside.decide.Verdict;
import rigside.protocol.Measure;

/**
 * What one comparison found, in plain English.
 *
 * @param setting what was fixed beforehand
 * @param condition the words for the condition
 * @param reference the words for the reference
 * @param titled whether these are titles, which begin a sentence with a large letter; ids, else
 */
record Wording(Setting setting, String condition, String reference, boolean titled) {

    /** Of ids, which are left as written. */
    Wording(Setting setting, String condition, String reference) {
        this(setting, condition, reference, false);
    }

    /**
     * What was found.
     *
     * @param rows the values so far
     * @param estimate on the scale people read; NaN when there is no value
     * @param interval on that scale; empty before the first look
     * @param verdict what holds
     */
    String found(Rows rows, double estimate, Optional<Limits> interval, Verdict verdict) {
        String against = opening(condition) + ", compared with " + reference + ": ";
        if (Double.isNaN(estimate)) {
            return against + "no complete round yet.";
        }
        if (interval.isEmpty()) {
            return against
                    + change(estimate)
                    + " so far. Too few for an interval: "
                    + new Lacking(this, rows).soFar()
                    + ".";
        }
        List<String> digits = digits(estimate, interval.get());
        return against
                + change(estimate, digits.get(0))
                + " ("
                + interval(interval.get(), digits)
                + where(verdict)
                + "): "
                + VerdictWords.clause(verdict, setting.compared().matters())
                + ".";
    }

    /** The interval with its confidence, which several comparisons may share. */
    private String interval(Limits limits, List<String> digits) {
        String confidence = Phrases.confidence(setting.plan().confidence());
        return setting.sharing() > 1
                ? "interval "
                        + figures(limits, digits)
                        + ", "
                        + confidence
                        + " for "
                        + Phrases.all(setting.sharing(), "comparisons")
                        + " together"
                : confidence + " interval " + figures(limits, digits);
    }

    /** A condition's name at the beginning of a sentence. */
    String opening(String name) {
        return titled ? Phrases.sentence(name) : name;
    }

    /** What is said of complete rounds of which none has both its values. */
    String nothing() {
        return opening(condition) + ", compared with " + reference + ": nothing to compare yet.";
    }

    /**
     * Said before a look that does not say the same as the verdict reached before it.
     *
     * @param estimate the change when it was reached, as people read it, if known
     * @param contradicted whether the look excludes what was claimed
     */
    String staying(Comparison.Settled settled, OptionalDouble estimate, boolean contradicted) {
        return "Settled after "
                + (setting.isByTrial()
                        ? Phrases.count(settled.round(), "round", "rounds")
                        : units(settled.round()))
                + " as "
                + VerdictWords.of(settled.conclusion(), setting.compared().matters())
                + (estimate.isPresent() ? " (" + limit(estimate.getAsDouble()) + ")" : "")
                + ", which stays. The latest look "
                + (contradicted ? "contradicts it: " : "by itself does not settle it: ");
    }

    /** "1 round", "3 rounds"; values where each donning or trial stands for itself. */
    String units(int n) {
        return n + " " + unit(n);
    }

    /** "1 more round", "3 more rounds"; donnings where each brings several values. */
    String more(int n) {
        int steps = steps(n);
        return steps
                + " more "
                + (setting.isByTrial()
                        ? (steps == 1 ? "donning" : "donnings") + " of each condition"
                        : unit(steps));
    }

    /** What the tester has to do for so many values: rounds, values, or whole donnings. */
    int steps(int n) {
        return setting.isByTrial() ? -Math.floorDiv(-n, setting.perRound()) : n;
    }

    private String unit(int n) {
        String one = setting.isPaired() ? "round" : "value per condition";
        String more = setting.isPaired() ? "rounds" : "values per condition";
        return n == 1 ? one : more;
    }

    /** An estimate as what it means: "inhaling takes 1.20 times as long". */
    String change(double estimate) {
        return change(estimate, Digits.three(estimate));
    }

    private String change(double estimate, String digits) {
        boolean timed = setting.measure().kind() instanceof Measure.TimedInhalation;
        String verb = timed ? "inhaling takes " : subject() + " is ";
        if (setting.scale().isRatio()) {
            return verb + digits + " times as " + (timed ? "long" : "high");
        }
        if (estimate == 0) {
            return verb + (timed ? "as long" : "as high");
        }
        String size = withUnit(estimate < 0 ? digits.substring(1) : digits);
        return verb
                + size
                + (timed
                        ? (estimate < 0 ? " less" : " longer")
                        : (estimate < 0 ? " lower" : " higher"));
    }

    /** "the fit factor", "the inhalation time". */
    String subject() {
        String title = setting.measure().title();
        boolean isName = title.length() < 2 || Character.isUpperCase(title.charAt(1));
        return "the "
                + (isName
                        ? title
                        : title.substring(0, 1).toLowerCase(Locale.ROOT) + title.substring(1));
    }

    /** Of an estimate and its limits, told apart from each other and from the ends of the band. */
    private List<String> digits(double estimate, Limits limits) {
        Limits band = setting.band();
        return Digits.apart(estimate, limits.low(), limits.high(), band.low(), band.high());
    }

    private String figures(Limits limits, List<String> digits) {
        boolean low = isBeyondWords(limits.low());
        boolean high = isBeyondWords(limits.high());
        if (!low && !high) {
            return ofScale(digits.get(1) + " to " + digits.get(2));
        }
        if (low && high && !setting.scale().isRatio()) {
            return "without ends";
        }
        return low && high && limit(limits.low()).equals(limit(limits.high()))
                ? "wholly " + limit(limits.low())
                : "from " + limit(limits.low()) + " to " + limit(limits.high());
    }

    /** One end of an interval. */
    String limit(double limit) {
        if (!isBeyondWords(limit)) {
            return ofScale(Digits.three(limit));
        }
        if (setting.scale().isRatio()) {
            return limit < 1 ? "below 0.001" : "above 1000";
        }
        return limit < 0 ? "no lower end" : "no upper end";
    }

    /** Whether a limit is so far out that its figures say no more than that. */
    boolean isBeyondWords(double limit) {
        return setting.scale().isRatio()
                ? !(limit >= 1e-3 && limit <= 1e3)
                : !Double.isFinite(limit);
    }

    /** A figure on the scale people read, with its unit where it has one. */
    String ofScale(String figure) {
        return setting.scale().isRatio() ? figure : withUnit(figure);
    }

    /** A figure with the measure's unit. */
    String withUnit(String figures) {
        return (figures + " " + setting.measure().unit().symbol()).strip();
    }

    private String where(Verdict verdict) {
        return switch (verdict) {
            case MEANINGFUL_DIFFERENCE -> ", wholly beyond " + band();
            case NO_MEANINGFUL_DIFFERENCE ->
                    switch (setting.compared().matters()) {
                        case EITHER ->
                                ", wholly between "
                                        + Digits.three(setting.band().low())
                                        + " and "
                                        + ofScale(Digits.three(setting.band().high()))
                                        + ", too small to matter";
                        case INCREASE ->
                                ", all below " + ofScale(Digits.three(setting.band().high()));
                        case DECREASE ->
                                ", all above " + ofScale(Digits.three(setting.band().low()));
                    };
            case DIFFERENCE_SIZE_UNSETTLED ->
                    ", clear of "
                            + (setting.scale().isRatio() ? "1" : "0")
                            + " (no change), but not wholly beyond "
                            + band();
            case NOT_SETTLED, TOO_FEW_ROUNDS -> "";
        };
    }

    private String band() {
        String meaningful = setting.compared().meaningful();
        return meaningful.contains(" to ")
                ? meaningful + ", the range too small to matter"
                : "the " + meaningful + " that matters";
    }
}
