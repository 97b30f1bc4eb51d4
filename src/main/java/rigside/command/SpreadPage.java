package rigside.command;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rigside.archive.SpreadOnRecord;
import rigside.archive.SpreadOnRecordWords;
import rigside.protocol.Plan.Design;
import rigside.report.Block;
import rigside.report.Page;

/** How far a measure spread, to read, with the line for a protocol by itself. */
final class SpreadPage {
    private SpreadPage() {}

    static Page of(SpreadOnRecord spread, Optional<String> leftOut) {
        List<Block> blocks = new ArrayList<>();
        spread.remarks().forEach(each -> blocks.add(new Block.Words(each)));
        leftOut.ifPresent(each -> blocks.add(new Block.Words(each)));
        SpreadOnRecordWords.of(spread).forEach(each -> blocks.add(new Block.Words(each)));
        spread.planned(Design.ROUNDS)
                .ifPresent(
                        found ->
                                blocks.add(
                                        new Block.Verbatim(
                                                SpreadOnRecordWords.line(spread, found.upper()))));
        blocks.add(AcrossBlocks.NOT_CERTIFIED);
        return new Page("Spread of " + spread.measure().title(), "from the archive", blocks);
    }
}
