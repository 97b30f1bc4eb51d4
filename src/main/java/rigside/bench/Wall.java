package rigside.bench;

import java.time.ZoneId;
import java.time.ZonedDateTime;

/** The clock on the wall, with its zone; it may be set while the program runs. */
public final class Wall {
    private Wall() {}

    /** Now. */
    public static ZonedDateTime now() {
        return ZonedDateTime.now(ZoneId.systemDefault());
    }
}
