package rigside.command;

import java.util.ArrayList;
import java.util.List;
import rigside.archive.DaysApart;
import rigside.archive.DaysApartWords;
import rigside.report.Block;
import rigside.report.Cell;
import rigside.report.Page;

/** Conditions of two sessions against each other, to read. */
final class ComparePage {
    private ComparePage() {}

    static Page of(DaysApart apart) {
        List<Block> blocks = new ArrayList<>();
        blocks.add(new Block.Caution(DaysApartWords.WARNING));
        apart.remarks().forEach(each -> blocks.add(new Block.Words(each)));
        for (DaysApart.Compared each : apart.compared()) {
            blocks.add(AcrossBlocks.part(each.measure().title(), of(apart, each)));
        }
        blocks.add(AcrossBlocks.NOT_CERTIFIED);
        return new Page("Two conditions of different sessions", apart.title(), blocks);
    }

    private static List<Block> of(DaysApart apart, DaysApart.Compared each) {
        List<Block> blocks = new ArrayList<>();
        blocks.add(
                new Block.Table("", List.of(), List.of(row(apart, each, 0), row(apart, each, 1))));
        DaysApartWords.of(apart, each).forEach(line -> blocks.add(new Block.Words(line)));
        return blocks;
    }

    private static List<Cell> row(DaysApart apart, DaysApart.Compared each, int at) {
        return Cell.texts(
                List.of(
                        apart.sides().get(at),
                        DaysApartWords.side(each.scale(), each.summaries().get(at))));
    }
}
