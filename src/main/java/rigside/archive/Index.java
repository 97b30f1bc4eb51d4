package rigside.archive;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.time.DateTimeException;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.zip.CRC32;

/**
 * What was made of the journals before, kept so that they need not be read again. It holds nothing
 * that the journals do not: whatever is wrong with it, an empty one takes its place.
 *
 * <p>Written it is a line with the number of things that sessions have in common, a line for each
 * of them, and two lines a session, see {@link IndexLines}.
 */
final class Index {
    /** Raised whenever what is kept, or how it is reckoned from a journal, changes. */
    static final int FORM = 1;

    static final Index NONE = new Index(List.of(), Map.of());

    private final List<Piece> sessions;
    private final Map<String, Common> common;

    private Index(List<Piece> sessions, Map<String, Common> common) {
        this.sessions = sessions;
        this.common = common;
    }

    /** What sessions have in common, and the line that says it. */
    private record Common(String key, About about, Piece line) {
        static Common of(Piece line) throws IOException {
            Cells cells = line.cells();
            return new Common(cells.text(), IndexCells.about(cells), line);
        }

        static Common of(About about) {
            CRC32 sum = new CRC32();
            sum.update(IndexLines.of(about, ""));
            String key =
                    about.protocol().map(Archived.Followed::hash).orElse("")
                            + Long.toHexString(sum.getValue());
            return new Common(key, about, Piece.first(IndexLines.of(about, key)));
        }
    }

    /** A session, and the lines it was read from or can be written as. */
    record Kept(Archived session, Lines lines) {}

    /**
     * The two lines of a session.
     *
     * @param what the first one; the second one stands behind it
     */
    record Lines(Piece what, Common common) {
        static Lines of(WithValues session) {
            Common common = Common.of(About.of(session.session()));
            Piece what = Piece.first(IndexLines.of(session, common.key()));
            return new Lines(what, common);
        }

        /**
         * The values of the session's donnings.
         *
         * @throws IOException if they are damaged, which the check sum should have told
         */
        List<WithValues.Value> readValues() throws IOException {
            return IndexCells.values(what.next().cells());
        }
    }

    /** Of what was written; empty when that is damaged. */
    static Index of(byte[] bytes) {
        try {
            Piece line = Piece.first(bytes);
            Map<String, Common> common = new HashMap<>();
            for (int left = Integer.parseInt(line.text()); left > 0; left--) {
                line = line.next();
                Common each = Common.of(line);
                common.put(each.key(), each);
            }
            List<Piece> sessions = new ArrayList<>();
            while (!line.isLast()) {
                line = line.next();
                sessions.add(line);
                line = line.next();
            }
            return new Index(sessions, common);
        } catch (IOException | IllegalArgumentException damaged) {
            return NONE;
        }
    }

    /** These sessions as {@link #of} takes them. */
    static byte[] written(Collection<Lines> sessions) {
        Map<String, Common> common = new HashMap<>();
        sessions.forEach(each -> common.put(each.common().key(), each.common()));
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        bytes.writeBytes((common.size() + "\n").getBytes(StandardCharsets.UTF_8));
        common.values().forEach(each -> each.line().writeTo(bytes));
        for (Lines each : sessions) {
            each.what().writeTo(bytes);
            each.what().next().writeTo(bytes);
        }
        return bytes.toByteArray();
    }

    int size() {
        return sessions.size();
    }

    /**
     * What is kept of the sessions whose journals are still those that it was made from.
     *
     * @param now the folders there are, by their names
     */
    List<Kept> still(Map<String, InFolder> now) {
        return sessions.parallelStream().flatMap(each -> read(each, now).stream()).toList();
    }

    private Optional<Kept> read(Piece what, Map<String, InFolder> now) {
        try {
            Cells cells = what.cells();
            InFolder found = now.get(cells.text());
            Archived.OnDisk journal = IndexCells.journal(cells);
            if (found == null || !found.journal().equals(Optional.of(journal))) {
                return Optional.empty();
            }
            Common shared = common(cells.text());
            Archived session = IndexCells.session(found.folder(), journal, shared.about(), cells);
            return Optional.of(new Kept(session, new Lines(what, shared)));
        } catch (IOException | IllegalArgumentException | DateTimeException damaged) {
            return Optional.empty();
        }
    }

    private Common common(String key) throws IOException {
        Common found = common.get(key);
        if (found == null) {
            throw new IOException("there is nothing with the key " + key);
        }
        return found;
    }
}
