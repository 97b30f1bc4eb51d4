package rigside.analysis;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import rigside.decide.Conclusion;
import rigside.decide.Forecast;
import rigside.decide.Limits;
import rigside.decide.Verdict;
import rigside.protocol.Measure.Compared.Matters;

/**
 * One condition against the reference, by one measure.
 *
 * @param measure the measure's id
 * @param condition the id of the condition compared
 * @param reference the id of the reference condition
 * @param ratio whether numbers are ratios (condition over reference), else differences (condition
 *     less reference) in the measure's unit
 * @param decides whether the session goes on until this has settled
 * @param n complete rounds used (values per condition where each trial or donning stands for
 *     itself)
 * @param estimate the estimated change; empty without a value
 * @param interval holds at all looks together with the promised confidence; empty before the first
 *     look
 * @param critical the critical value behind it; empty before the first look
 * @param band changes inside it are too small to matter; where one direction matters, only its edge
 *     on that side counts
 * @param matters the direction that matters
 * @param verdict what holds now: the first verdict that settled, if one has and nothing struck out
 *     or amended speaks against it
 * @param settledAt the number of complete rounds at which it first settled, and how
 * @param present what this look would say for itself; differs from {@code verdict} when a later
 *     look contradicts the settled one, or when agreement is lacking
 * @param contradicted whether this look's interval holds nothing of what the settled verdict claims
 * @param planUsedUp whether the plan has no further look
 * @param forecast what to expect from going on: further rounds, or values per condition where each
 *     trial or donning stands for itself; silent while nothing can be said
 * @param atResolution whether the spread is below what rounding explains, so nothing settles
 * @param dependsOnStruck whether the verdict differs with and without what was struck out, or
 *     amended, after a look
 * @param boundedAgrees whether the verdict is the same when what the counter only bounded is taken
 *     at half its penetration
 * @param entries the numbers of the entries used
 * @param looks every look there was, in order; empty before the first
 * @param words what all this means
 */
public record Comparison(
        String measure,
        String condition,
        String reference,
        boolean ratio,
        boolean decides,
        int n,
        OptionalDouble estimate,
        Optional<Limits> interval,
        OptionalDouble critical,
        Limits band,
        Matters matters,
        Verdict verdict,
        Optional<Settled> settledAt,
        Verdict present,
        boolean contradicted,
        boolean planUsedUp,
        Forecast forecast,
        boolean atResolution,
        boolean dependsOnStruck,
        boolean boundedAgrees,
        List<Integer> entries,
        List<Seen> looks,
        Words words) {
    public Comparison {
        entries = List.copyOf(entries);
        looks = List.copyOf(looks);
    }

    /** The same as what it would be, had values been left out by choice: nothing but a view. */
    Comparison asView() {
        return new Comparison(
                measure,
                condition,
                reference,
                ratio,
                decides,
                n,
                estimate,
                interval,
                critical,
                band,
                matters,
                verdict,
                settledAt,
                present,
                contradicted,
                planUsedUp,
                forecast,
                atResolution,
                dependsOnStruck,
                boundedAgrees,
                entries,
                looks,
                new Words(
                        words.sentence(),
                        words.technical(),
                        "Only a view: a verdict reached by choosing values is none.",
                        "It changes nothing: the verdict is the one with all values.",
                        List.of()));
    }

    /**
     * What one look showed.
     *
     * @param n as the comparison's
     * @param estimate the change then
     * @param interval then
     * @param critical the critical value behind it
     * @param verdict of this look by itself
     * @param standardError of the change, on the analysis scale: of a logarithm for a ratio
     * @param degrees of freedom behind it
     * @param shift added on each side of the interval for what rounding may have done, on the
     *     analysis scale; mostly 0
     */
    public record Seen(
            int n,
            double estimate,
            Limits interval,
            double critical,
            Verdict verdict,
            double standardError,
            double degrees,
            double shift) {}

    /**
     * A comparison in words.
     *
     * @param sentence what was found, in plain words
     * @param technical the same for a statistician, in one sentence
     * @param next what to do next for this question, in plain words
     * @param change what would change the verdict, in plain words
     * @param remarks what else has to be known to read it rightly; may be empty
     */
    public record Words(
            String sentence, String technical, String next, String change, List<String> remarks) {
        public Words {
            remarks = List.copyOf(remarks);
        }
    }

    /** What this look would say for itself, with the way it goes. */
    public Conclusion presently() {
        double change = estimate.orElse(Double.NaN);
        return Conclusion.of(present, ratio ? Math.log(change) : change);
    }

    /** A verdict in words that say which direction matters. */
    public String words(Verdict said) {
        return VerdictWords.of(said, matters);
    }

    /** What was found, in plain words. */
    public String sentence() {
        return words.sentence();
    }

    /** The same to stand below its verdict: without the verdict at its end, if it ends with one. */
    public String sentenceBelowVerdict() {
        String end = ": " + VerdictWords.clause(verdict, matters) + ".";
        String all = sentence();
        return all.endsWith(end) ? all.substring(0, all.length() - end.length()) + "." : all;
    }

    /** What to do next for this question, in plain words. */
    public String next() {
        return words.next();
    }

    /** What else has to be known to read it rightly; may be empty. */
    public List<String> remarks() {
        return words.remarks();
    }

    /**
     * When a question was first settled.
     *
     * @param round how many rounds were complete
     * @param conclusion how
     */
    public record Settled(int round, Conclusion conclusion) {}

    /** Whether no further repeat is needed for this question. */
    public boolean isSettled() {
        return verdict.settled();
    }
}
