package rigside.report;

import java.time.ZonedDateTime;
import java.time.format.DateTimeFormatter;
import java.util.Locale;

/** Moments and lengths of a session as a report tells them. */
final class Clock {
    private static final DateTimeFormatter DAY =
            DateTimeFormatter.ofPattern("d MMM uuuu", Locale.ENGLISH);
    private static final DateTimeFormatter LATER =
            DateTimeFormatter.ofPattern("d MMM, HH:mm:ss", Locale.ENGLISH);
    private static final DateTimeFormatter MINUTE =
            DateTimeFormatter.ofPattern("HH:mm", Locale.ENGLISH);
    private static final DateTimeFormatter SECOND =
            DateTimeFormatter.ofPattern("HH:mm:ss", Locale.ENGLISH);
    private static final double NANOS = 1e9;

    private Clock() {}

    /** {@code 25 Nov 2026, 12:46}. */
    static String minute(ZonedDateTime when) {
        return DAY.format(when) + ", " + MINUTE.format(when);
    }

    /** The same with its zone: {@code 25 Nov 2026, 12:46 (Etc/UTC, +00:00)}. */
    static String whole(ZonedDateTime when) {
        String zone = when.getZone().getId().equals("Z") ? "UTC" : when.getZone().getId();
        String offset =
                when.getOffset().getTotalSeconds() == 0 ? "+00:00" : when.getOffset().getId();
        return minute(when) + " (" + (zone.equals(offset) ? zone : zone + ", " + offset) + ")";
    }

    /** The time, with the day where it is another than that of the moment before it. */
    static String second(ZonedDateTime before, ZonedDateTime when) {
        return before.toLocalDate().equals(when.toLocalDate())
                ? SECOND.format(when)
                : LATER.format(when);
    }

    /** A length of session time, to the second. */
    static String length(long fromNanos, long toNanos) {
        return Lengths.of(Math.rint((toNanos - fromNanos) / NANOS));
    }
}
