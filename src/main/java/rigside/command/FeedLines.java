package rigside.command;

import java.io.PrintWriter;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.TreeMap;
import rigside.measure.Quantity;
import rigside.measure.Unit;
import rigside.rig.FeedState;
import rigside.rig.FeedTrouble;
import rigside.rig.Instruments;
import rigside.rig.Seen;
import rigside.yaml.Words;

/**
 * What is printed of instruments that are checked: lines as they come, no more than a person can
 * read, trouble at once, and every five seconds how each is doing.
 */
final class FeedLines {
    /** Of each feed and of each kind, good or nonsense; a person reads no more. */
    private static final int LINES_A_SECOND = 5;

    private static final long SECOND = 1_000_000_000L;
    private static final long STATE_EVERY = 5 * SECOND;

    private final Instruments instruments;
    private final PrintWriter out;
    private final Map<String, Shown> shown = new TreeMap<>();
    private final Map<String, Integer> dropouts = new HashMap<>();
    private long stateAt = STATE_EVERY;
    private boolean allWell;

    FeedLines(Instruments instruments, PrintWriter out) {
        this.instruments = instruments;
        this.out = out;
    }

    /** How many lines of a feed came in one second of its time: nonsense, and others. */
    private record Shown(long second, int good, int nonsense) {
        Shown and(boolean wasNonsense) {
            return new Shown(
                    second, good + (wasNonsense ? 0 : 1), nonsense + (wasNonsense ? 1 : 0));
        }
    }

    void begin() {
        out.println(instruments.title() + "; Ctrl-C ends");
        instruments
                .feeds()
                .forEach(
                        feed ->
                                out.println(
                                        "  "
                                                + feed.id()
                                                + ": "
                                                + feed.sampled().word()
                                                + " from "
                                                + feed.origin().words()
                                                + expected(feed.perSecond())));
        out.flush();
    }

    private static String expected(OptionalDouble perSecond) {
        return perSecond.isEmpty()
                ? ""
                : String.format(
                        Locale.ROOT,
                        ", %s readings a second expected",
                        rate(perSecond.getAsDouble()));
    }

    /**
     * Good lines must not crowd out nonsense, for which wiring is checked, and so each is bounded
     * by itself: at a wrong baud rate all is nonsense, hundreds of lines a second.
     */
    void line(Seen seen) {
        sayHidden(seen.at() / SECOND);
        boolean nonsense = seen.value().isEmpty() && !seen.why().isEmpty();
        Shown before = shown.getOrDefault(seen.feed(), new Shown(seen.at() / SECOND, 0, 0));
        if ((nonsense ? before.nonsense() : before.good()) < LINES_A_SECOND) {
            out.println(
                    String.format(
                                    Locale.ROOT,
                                    "%9.3f s  %-10s %-14s %s%s",
                                    seen.at() / 1e9,
                                    seen.feed(),
                                    value(seen),
                                    Words.quoted(seen.text()),
                                    why(seen))
                            .stripTrailing());
        }
        shown.put(seen.feed(), before.and(nonsense));
    }

    /** Of each second that is over, how many lines were not printed. */
    private void sayHidden(long second) {
        shown.forEach(
                (feed, of) -> {
                    if (of.second() < second) {
                        sayHidden(feed, of, of.good(), "");
                        sayHidden(feed, of, of.nonsense(), " without a reading");
                    }
                });
        shown.values().removeIf(of -> of.second() < second);
    }

    private void sayHidden(String feed, Shown of, int lines, String kind) {
        int hidden = lines - LINES_A_SECOND;
        if (hidden > 0) {
            out.println(
                    String.format(
                            Locale.ROOT,
                            "%9.3f s  %-10s %d more line%s%s",
                            of.second() + 1.0,
                            feed,
                            hidden,
                            hidden == 1 ? "" : "s",
                            kind));
        }
    }

    private static String value(Seen seen) {
        String side = seen.side().isEmpty() ? "" : " " + seen.side();
        return number(seen.value(), seen.unit()) + side;
    }

    private static String why(Seen seen) {
        if (seen.value().isPresent()) {
            return "";
        }
        if (seen.why().isEmpty()) {
            return "  passed over";
        }
        String quoted = Words.quoted(seen.text());
        return "  no reading: "
                + (seen.why().startsWith(quoted)
                        ? "it" + seen.why().substring(quoted.length())
                        : seen.why());
    }

    private static String number(OptionalDouble value, Unit unit) {
        return value.isEmpty() ? "-" : new Quantity(value.getAsDouble(), unit).toString();
    }

    void trouble(FeedTrouble trouble) {
        boolean dropout =
                trouble.kind() == FeedTrouble.Kind.BROKEN
                        || trouble.kind() == FeedTrouble.Kind.SILENT;
        if (dropout) {
            dropouts.merge(trouble.feed(), 1, Integer::sum);
        }
        out.println(
                String.format(
                        Locale.ROOT,
                        "%9.3f s  %s %s",
                        trouble.at() / 1e9,
                        trouble.isOver() ? "--" : "!!",
                        trouble.words()));
    }

    /** Lets time pass: now and then it is said how every feed is doing. */
    void pass(long now, List<FeedState> states) {
        sayHidden(now / SECOND);
        if (now >= stateAt) {
            stateAt = now + STATE_EVERY;
            for (FeedState state : states) {
                out.println(
                        String.format(
                                Locale.ROOT,
                                "%9.3f s  == %s: %s readings a second, now %s, other lines %d%s",
                                now / 1e9,
                                state.id(),
                                rate(state.perSecond()),
                                number(state.value(), state.unit()),
                                state.nonsense(),
                                state.well() ? "" : ", not well"));
            }
        }
        out.flush();
    }

    void end(List<FeedState> states) {
        sayHidden(Long.MAX_VALUE);
        for (FeedState state : states) {
            int lost = dropouts.getOrDefault(state.id(), 0);
            out.println(
                    String.format(
                            Locale.ROOT,
                            "%s: readings %d, other lines %d, drop-outs %d, %s at the end",
                            state.id(),
                            state.count(),
                            state.nonsense(),
                            lost,
                            state.well() && state.count() > 0 ? "well" : "not well"));
        }
        out.flush();
        allWell = states.stream().allMatch(state -> state.well() && state.count() > 0);
    }

    /** Whether every feed was well at the end and had given a reading. */
    boolean allWell() {
        return allWell;
    }

    private static String rate(double perSecond) {
        return String.format(Locale.ROOT, "%.1f", perSecond);
    }
}
