package rigside.report;

import java.util.ArrayList;
import java.util.List;
import rigside.analysis.Flag;
import rigside.analysis.MeasureResult;

/** What is out of the ordinary, with the verdict with and without it. */
final class ReportFlags {
    private ReportFlags() {}

    static List<Block> of(Material of) {
        List<Block> blocks = new ArrayList<>();
        for (MeasureResult result : of.measures()) {
            for (Flag flag : result.flags()) {
                blocks.add(new Block.Stated(result.measure().title() + ":", flag.reason()));
                List<String> views =
                        flag.whatIf().stream()
                                .map(each -> each.without() + ": " + each.then().sentence())
                                .toList();
                if (!views.isEmpty()) {
                    blocks.add(new Block.Points(views));
                }
            }
        }
        if (!blocks.isEmpty()) {
            blocks.add(
                    new Block.Words(
                            "Flags never act: nothing was left out because of one. What a comparison"
                                    + " would say without something is a view, since a verdict"
                                    + " reached by choosing values is none."));
        }
        return blocks;
    }
}
