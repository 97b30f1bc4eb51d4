package rigside.command;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rigside.archive.Archived;
import rigside.archive.Pool;
import rigside.archive.Pooled;
import rigside.report.Block;
import rigside.report.Cell;
import rigside.report.Page;

/** Pooled sessions, to read. */
final class PoolPage {
    private PoolPage() {}

    static Page of(Pool pool, Optional<String> leftOut) {
        List<Block> blocks = new ArrayList<>();
        blocks.add(new Block.Caution(Pool.NO_VERDICT));
        pool.remarks().forEach(each -> blocks.add(new Block.Words(each)));
        leftOut.ifPresent(each -> blocks.add(new Block.Words(each)));
        pool.comparisons().forEach(each -> blocks.add(AcrossBlocks.part(title(each), of(each))));
        blocks.add(AcrossBlocks.NOT_CERTIFIED);
        return new Page(
                pool.sessions().size() + " sessions together",
                pool.sessions().get(pool.sessions().size() - 1).title(),
                blocks);
    }

    private static String title(Pooled each) {
        return each.measure().title() + ": " + each.condition().title();
    }

    private static List<Block> of(Pooled each) {
        List<Block> blocks = new ArrayList<>();
        blocks.add(
                new Block.Table(
                        "",
                        List.of(
                                new Block.Head("session", false),
                                new Block.Head("rounds", true),
                                new Block.Head("difference", true),
                                new Block.Head("by its own looks", false)),
                        each.lines().stream().map(line -> row(each, line)).toList()));
        each.sentences().forEach(sentence -> blocks.add(new Block.Words(sentence)));
        return blocks;
    }

    private static List<Cell> row(Pooled of, Pooled.Line line) {
        return Cell.texts(
                List.of(
                        AcrossBlocks.name(line.session()),
                        String.valueOf(line.n()),
                        line.n() == 0 ? "-" : of.scale().change(line.estimate()),
                        line.finding().map(found -> finding(of, found)).orElse("-")));
    }

    private static String finding(Pooled of, Archived.Finding found) {
        return found.words()
                + found.interval()
                        .map(limits -> " (" + of.scale().changesAsRead(limits) + ")")
                        .orElse("");
    }
}
