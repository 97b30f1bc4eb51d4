package rigside.analysis;

import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import rigside.measure.TimedInhalation;
import rigside.session.Event;

/** What a self-test found, in words. */
public final class SelfTestWords {
    private SelfTestWords() {}

    /** A sentence for the terminal, for the cues and for the tester. */
    public static List<String> of(Event.SelfTested found) {
        OptionalDouble spread = TimedInhalation.pairSpread(found.reactions());
        return List.of(
                found.answers() == 0
                        ? "Terminal: it does not say where its cursor is, so its delay is not known."
                        : String.format(
                                Locale.ROOT,
                                "Terminal: there and back in %.1f ms (median of %d, the longest"
                                        + " %.1f ms).",
                                found.median() * 1e3,
                                found.answers(),
                                found.most() * 1e3),
                found.unheard().isEmpty()
                        ? "Cues: all heard."
                        : "Cues not heard: " + String.join(", ", found.unheard()) + ".",
                String.format(
                        Locale.ROOT,
                        "Reaction: a start and a stop by you spread by %.0f ms (standard deviation,"
                                + " from %d tries at %s). The usual figure is %.0f ms.",
                        spread.orElse(Double.NaN) * 1e3,
                        found.reactions().size(),
                        found.signal().equals("picture") ? "the picture" : found.signal(),
                        TimedInhalation.HAND_TIMING_SD_SECONDS * 1e3));
    }
}
