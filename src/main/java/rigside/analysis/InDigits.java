package rigside.analysis;

import java.util.List;
import rigside.decide.Conclusion;
import rigside.decide.Limits;
import rigside.protocol.Measure.Compared.Matters;

/**
 * The numbers of a comparison, or of one of its looks, as people read them, with as many digits as
 * tell those apart that differ.
 *
 * @param estimate the change; empty without a value
 * @param interval its two ends; empty before the first look
 * @param band what is too small to matter: both edges, or the one that counts
 */
public record InDigits(String estimate, String interval, String band) {

    /** Of a comparison as it stands. */
    public static InDigits of(Comparison each) {
        Limits interval = each.interval().orElse(each.band());
        List<String> digits =
                Digits.apart(
                        each.estimate().orElse(0),
                        interval.low(),
                        interval.high(),
                        each.band().low(),
                        each.band().high());
        return new InDigits(
                each.estimate().isPresent() ? digits.get(0) : "",
                each.interval()
                        .map(limits -> between(limits, digits.subList(1, 3), each.ratio()))
                        .orElse(""),
                band(each.matters(), digits.subList(3, 5)));
    }

    /** Of one look. */
    public static InDigits of(Comparison each, Comparison.Seen look) {
        List<String> digits =
                Digits.apart(look.estimate(), look.interval().low(), look.interval().high());
        return new InDigits(
                digits.get(0),
                between(look.interval(), digits.subList(1, 3), each.ratio()),
                of(each).band());
    }

    private static String band(Matters matters, List<String> digits) {
        return switch (matters) {
            case EITHER -> digits.get(0) + " to " + digits.get(1);
            case INCREASE -> "up to " + digits.get(1);
            case DECREASE -> "down to " + digits.get(0);
        };
    }

    /** Two limits; one that is nowhere has no number. */
    private static String between(Limits limits, List<String> digits, boolean ratio) {
        boolean low = Double.isFinite(limits.low()) && !(ratio && limits.low() == 0);
        boolean high = Double.isFinite(limits.high());
        if (!low && !high) {
            return "without ends";
        }
        return (low ? digits.get(0) : "no lower end")
                + " to "
                + (high ? digits.get(1) : "no upper end");
    }

    /** What the numbers of a comparison say, and what holds where that is something else. */
    public static String verdict(Comparison each) {
        Conclusion present = each.presently();
        boolean stays =
                each.isSettled()
                        && each.settledAt()
                                .filter(settled -> !settled.conclusion().equals(present))
                                .isPresent();
        if (stays) {
            Comparison.Settled settled = each.settledAt().get();
            return VerdictWords.of(present, each.matters())
                    + " (settled after "
                    + settled.round()
                    + " as "
                    + VerdictWords.of(settled.conclusion(), each.matters())
                    + ", stays)";
        }
        return each.words(each.verdict())
                + (each.verdict() == each.present()
                        ? ""
                        : " (these numbers alone: "
                                + VerdictWords.of(present, each.matters())
                                + ")");
    }
}
