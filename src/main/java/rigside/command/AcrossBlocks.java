package rigside.command;

import java.util.List;
import rigside.archive.Archived;
import rigside.archive.Following;
import rigside.archive.Scaled;
import rigside.report.Block;

/** Pieces that pages about several sessions have in common. */
final class AcrossBlocks {
    static final Block NOT_CERTIFIED = new Block.Words("This is not a certified fit test.");

    private AcrossBlocks() {}

    static Block part(String title, List<Block> blocks) {
        return new Block.Part(title, "", Block.Start.BELOW, blocks);
    }

    /** A session's folder, by which other commands find it. */
    static String name(Archived session) {
        return session.folder().getFileName().toString();
    }

    /** How far the donnings of a session spread; a dash where that is not known. */
    static String spread(Scaled scale, Following.Point point) {
        return point.spread().isPresent() ? scale.spread(point.spread().getAsDouble()) : "-";
    }
}
