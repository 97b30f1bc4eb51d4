package rigside.archive;

import java.util.List;
import java.util.Optional;
import rigside.decide.Verdict;
import rigside.protocol.Measure.Compared.Matters;

/**
 * A verdict as somebody asks for sessions that came to it.
 *
 * @param verdict any comparison of the session has to have
 * @param direction the way the difference has to go: 1 an increase, -1 a decrease; 0 for either
 */
public record VerdictAsked(Verdict verdict, int direction) {
    /** All that can be asked for, in words. */
    public static final List<String> WORDS =
            List.of(
                    "meaningful difference",
                    "meaningful increase",
                    "meaningful decrease",
                    "no meaningful difference",
                    "no meaningful increase",
                    "no meaningful decrease",
                    "difference of unsettled size",
                    "not settled",
                    "too few repeats");

    /** What is asked for, with or without "a" before it; empty when it is none of the words. */
    public static Optional<VerdictAsked> parse(String typed) {
        String words = Folded.of(typed).replace('-', ' ').replaceFirst("^an? ", "");
        return switch (words) {
            case "meaningful difference" -> of(Verdict.MEANINGFUL_DIFFERENCE, 0);
            case "meaningful increase" -> of(Verdict.MEANINGFUL_DIFFERENCE, 1);
            case "meaningful decrease" -> of(Verdict.MEANINGFUL_DIFFERENCE, -1);
            case "no meaningful difference" -> of(Verdict.NO_MEANINGFUL_DIFFERENCE, 0);
            case "no meaningful increase" -> of(Verdict.NO_MEANINGFUL_DIFFERENCE, 1);
            case "no meaningful decrease" -> of(Verdict.NO_MEANINGFUL_DIFFERENCE, -1);
            case "difference of unsettled size" -> of(Verdict.DIFFERENCE_SIZE_UNSETTLED, 0);
            case "not settled" -> of(Verdict.NOT_SETTLED, 0);
            case "too few repeats" -> of(Verdict.TOO_FEW_ROUNDS, 0);
            default -> Optional.empty();
        };
    }

    private static Optional<VerdictAsked> of(Verdict verdict, int direction) {
        return Optional.of(new VerdictAsked(verdict, direction));
    }

    /** Whether a session came to it in one of its comparisons. */
    public boolean isIn(Archived session) {
        return session.findings().stream().anyMatch(this::is);
    }

    /** No meaningful difference in either direction is no meaningful increase too. */
    private boolean is(Archived.Finding finding) {
        if (finding.conclusion().verdict() != verdict) {
            return false;
        }
        return switch (verdict) {
            case MEANINGFUL_DIFFERENCE ->
                    direction == 0 || finding.conclusion().direction() == direction;
            case NO_MEANINGFUL_DIFFERENCE ->
                    direction == 0
                            || finding.matters() == Matters.EITHER
                            || finding.matters()
                                    == (direction > 0 ? Matters.INCREASE : Matters.DECREASE);
            case DIFFERENCE_SIZE_UNSETTLED, NOT_SETTLED, TOO_FEW_ROUNDS -> true;
        };
    }
}
