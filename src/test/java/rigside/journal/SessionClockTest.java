package rigside.journal;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.time.ZonedDateTime;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import rigside.session.Event;
import rigside.session.Recorded;

class SessionClockTest {
    private static final long LAST_AT = 5_000_000_000L;

    /** The last event was recorded at 01:30 summer time, half an hour before the clocks go back. */
    @ParameterizedTest(name = "{0}")
    @CsvSource({
        "at once, 2026-10-25T01:30:00+02:00[Europe/Paris], 0",
        "a nanosecond later, 2026-10-25T01:30:00.000000001+02:00[Europe/Paris], 1",
        "an hour and a half later by the sun, 2026-10-25T02:00:00+01:00[Europe/Paris],"
                + " 5400000000000",
        "in another zone, 2026-10-25T00:30:00+01:00[Europe/London], 0",
        "clock set back a second, 2026-10-25T01:29:59+02:00[Europe/Paris], 0",
        "clock set back ten years, 2016-10-25T01:30:00+02:00[Europe/Paris], 0",
        "clock set to a far year, +99999-10-25T01:30:00+02:00[Europe/Paris], 315360000000000000"
    })
    void sessionTimeGoesOnByTheWallClockAndNeverBackwards(String what, String now, long passed) {
        Recorded last =
                new Recorded(
                        9,
                        ZonedDateTime.parse("2026-10-25T01:30:00+02:00[Europe/Paris]"),
                        LAST_AT,
                        new Event.SessionLeft());
        assertEquals(
                LAST_AT + passed, SessionClock.resumedAt(last, ZonedDateTime.parse(now)), what);
    }
}
