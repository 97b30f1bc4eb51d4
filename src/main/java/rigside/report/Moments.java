package rigside.report;

import java.time.ZonedDateTime;
import java.time.format.DateTimeFormatter;
import java.util.Locale;

/** How tables write a moment: ISO 8601 to the microsecond, with its offset from UTC. */
final class Moments {
    /**
     * The same as the pattern that Table Schema takes from the C language's strptime; readers know
     * six places of a second at most.
     */
    static final String PATTERN = "%Y-%m-%dT%H:%M:%S.%f%z";

    private static final DateTimeFormatter WRITTEN =
            DateTimeFormatter.ofPattern("uuuu-MM-dd'T'HH:mm:ss.SSSSSSxxx", Locale.ROOT);

    private Moments() {}

    static String written(ZonedDateTime moment) {
        return WRITTEN.format(moment);
    }
}
