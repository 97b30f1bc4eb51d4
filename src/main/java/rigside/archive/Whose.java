package rigside.archive;

import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/**
 * Whose session one is. Capitals and spaces around it make no difference in a wearer's code: W01
 * and w01 are one wearer wherever sessions are chosen or set beside each other. Accents do, since
 * nobody should be taken for somebody else.
 */
final class Whose {
    private Whose() {}

    /** Whether a code is that of the session's wearer. */
    static boolean is(Archived session, String code) {
        return session.wearer().map(Whose::plain).equals(Optional.of(plain(code)));
    }

    /** Whether two sessions name the same wearer, or neither names one. */
    static boolean same(Archived one, Archived other) {
        return one.wearer().map(Whose::plain).equals(other.wearer().map(Whose::plain));
    }

    /** Each wearer once in quotes, as first written, "nobody" for sessions that name none. */
    static List<String> wearers(List<Archived> sessions) {
        Map<String, String> wearers = new HashMap<>();
        for (Archived each : sessions) {
            wearers.putIfAbsent(
                    each.wearer().map(Whose::plain).orElse(""),
                    each.wearer().map(code -> "'" + code + "'").orElse("nobody"));
        }
        return wearers.values().stream().sorted().toList();
    }

    private static String plain(String code) {
        return code.strip().toUpperCase(Locale.ROOT).toLowerCase(Locale.ROOT);
    }
}
