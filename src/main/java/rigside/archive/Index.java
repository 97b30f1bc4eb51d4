package rigside.archive;

import java.io.ByteArrayOutputStream;
import java.nio.BufferUnderflowException;
import java.nio.ByteBuffer;
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
 * <p>Written it is a piece with the number of things that sessions have in common, a piece for each
 * of them, and two pieces a session, see {@link IndexPieces}.
 */
final class Index {
    /** Raised whenever what is kept, or how it is reckoned from a journal, changes. */
    static final int FORM = 2;

    static final Index NONE = new Index(List.of(), Map.of());

    private final List<Piece> sessions;
    private final Map<String, Common> common;

    private Index(List<Piece> sessions, Map<String, Common> common) {
        this.sessions = sessions;
        this.common = common;
    }

    /** What sessions have in common, and the piece that says it. */
    private record Common(String key, About about, Piece piece) {
        static Common of(Piece piece) {
            Cells cells = piece.cells();
            return new Common(cells.text(), IndexCells.about(cells), piece);
        }

        static Common of(About about) {
            CRC32 sum = new CRC32();
            sum.update(IndexPieces.of(about, ""));
            String key =
                    about.protocol().map(Archived.Followed::hash).orElse("")
                            + Long.toHexString(sum.getValue());
            return new Common(key, about, Piece.first(ByteBuffer.wrap(IndexPieces.of(about, key))));
        }
    }

    /** A session, and the pieces it was read from or can be written as. */
    record Kept(Archived session, Pieces pieces) {}

    /**
     * The two pieces of a session.
     *
     * @param what the first one; the second one stands behind it
     */
    record Pieces(Piece what, Common common) {
        static Pieces of(WithValues session) {
            Common common = Common.of(About.of(session.session()));
            Piece what = Piece.first(ByteBuffer.wrap(IndexPieces.of(session, common.key())));
            return new Pieces(what, common);
        }

        /** The values of the session's donnings. */
        List<WithValues.Value> readValues() {
            return IndexCells.values(what.next().cells());
        }
    }

    /** Of what was written; empty when that is damaged. */
    static Index of(ByteBuffer bytes) {
        try {
            Piece piece = Piece.first(bytes);
            Map<String, Common> common = new HashMap<>();
            for (int left = piece.cells().count(); left > 0; left--) {
                piece = piece.next();
                Common each = Common.of(piece);
                common.put(each.key(), each);
            }
            List<Piece> sessions = new ArrayList<>();
            while (!piece.isLast()) {
                piece = piece.next();
                sessions.add(piece);
                piece = piece.next();
            }
            return new Index(sessions, common);
        } catch (IllegalArgumentException | BufferUnderflowException damaged) {
            return NONE;
        }
    }

    /** These sessions as {@link #of} takes them. */
    static byte[] written(Collection<Pieces> sessions) {
        Map<String, Common> common = new HashMap<>();
        sessions.forEach(each -> common.put(each.common().key(), each.common()));
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        bytes.writeBytes(IndexPieces.of(common.size()));
        common.values().forEach(each -> each.piece().writeTo(bytes));
        for (Pieces each : sessions) {
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
        List<Kept> still = new ArrayList<>();
        for (Piece each : sessions) {
            read(each, now).ifPresent(still::add);
        }
        return still;
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
            return Optional.of(new Kept(session, new Pieces(what, shared)));
        } catch (IllegalArgumentException | BufferUnderflowException | DateTimeException damaged) {
            return Optional.empty();
        }
    }

    private Common common(String key) {
        Common found = common.get(key);
        if (found == null) {
            throw new IllegalArgumentException("there is nothing with the key " + key);
        }
        return found;
    }
}
