package rigside.desk;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import rigside.archive.Among;
import rigside.archive.Archive;
import rigside.archive.Archived;
import rigside.archive.Contents;
import rigside.archive.Progress;
import rigside.archive.WithValues;

/**
 * The sessions on record that can say something to a draft: closed ones, really measured, each
 * once.
 *
 * @param sessions the latest first; may be empty
 * @param wearers the codes of their wearers, each once as it was last written; may be empty
 * @param trouble why they cannot be read; empty if they were
 */
record DraftRecord(List<WithValues> sessions, List<String> wearers, Optional<String> trouble) {
    DraftRecord {
        sessions = List.copyOf(sessions);
        wearers = List.copyOf(wearers);
    }

    /** Of sessions that can say something. */
    static DraftRecord of(List<WithValues> sessions) {
        return new DraftRecord(sessions, wearersOf(sessions), Optional.empty());
    }

    static DraftRecord unreadable(String why) {
        return new DraftRecord(List.of(), List.of(), Optional.of(why));
    }

    /** Reads them; slow where the index has to be made. A folder that is not there has none. */
    static DraftRecord read(Archive archive) {
        try {
            Contents contents = archive.contents(Progress.NONE);
            Set<Path> meant = among(Optional.empty()).meant(contents.sessions());
            return of(contents.withValues(each -> meant.contains(each.folder())));
        } catch (IOException unreadable) {
            return unreadable(
                    "'" + archive.sessions() + "' cannot be read: " + unreadable.getMessage());
        }
    }

    private static Among among(Optional<String> wearer) {
        return new Among(Optional.empty(), wearer, false);
    }

    private static List<String> wearersOf(List<WithValues> sessions) {
        List<String> codes = new ArrayList<>();
        for (WithValues each : sessions) {
            Archived session = each.session();
            session.wearer()
                    .filter(code -> codes.stream().noneMatch(known -> isOf(session, known)))
                    .ifPresent(codes::add);
        }
        return List.copyOf(codes);
    }

    /** Those of one wearer. */
    List<WithValues> of(String wearer) {
        return sessions.stream().filter(each -> isOf(each.session(), wearer)).toList();
    }

    private static boolean isOf(Archived session, String wearer) {
        return among(Optional.of(wearer)).holds(session);
    }
}
