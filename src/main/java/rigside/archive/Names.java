package rigside.archive;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;

/** How sessions, and several of anything, are spoken of. */
final class Names {
    private Names() {}

    /** A session's folder. */
    static String of(Archived session) {
        Path name = session.folder().getFileName();
        return name == null ? session.folder().toString() : name.toString();
    }

    /** The day it was worn, for a sentence or a table. */
    static String day(Archived session) {
        return session.day().map(LocalDate::toString).orElse("an unknown day");
    }

    /** "1 session", "3 sessions". */
    static String count(int number, String one, String more) {
        return number + " " + (number == 1 ? one : more);
    }

    /** "a", "a and b", "a, b and c". */
    static String list(List<String> items) {
        int last = items.size() - 1;
        return last <= 0
                ? String.join("", items)
                : String.join(", ", items.subList(0, last)) + " and " + items.get(last);
    }
}
