package rigside.command;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rigside.archive.Following;
import rigside.archive.FollowingWords;
import rigside.report.Block;
import rigside.report.Page;

/** One condition over time, to read. */
final class FollowPage {
    private FollowPage() {}

    static Page of(Following following, Optional<String> leftOut) {
        List<Block> blocks = new ArrayList<>();
        following.remarks().forEach(each -> blocks.add(new Block.Words(each)));
        leftOut.ifPresent(each -> blocks.add(new Block.Words(each)));
        blocks.add(new Block.Verbatim(String.join("\n", StripChart.of(following))));
        FollowingWords.of(following).forEach(each -> blocks.add(new Block.Words(each)));
        blocks.add(AcrossBlocks.NOT_CERTIFIED);
        return new Page(
                following.measure().title() + ", " + following.condition() + ", over time",
                following.points().size() == 1
                        ? "1 session"
                        : following.points().size() + " sessions",
                blocks);
    }
}
