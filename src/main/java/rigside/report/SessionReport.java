package rigside.report;

import java.util.ArrayList;
import java.util.List;
import rigside.analysis.MeasureResult;
import rigside.report.Block.Part;

/**
 * The report of a session: first what was found, then what that says and does not say, then all it
 * rests on.
 */
public final class SessionReport {
    private SessionReport() {}

    /** What stands before everything of a session nobody breathed in. */
    static final String SIMULATED = "Simulated, every value is invented";

    /** All of it. */
    public static Page of(Material of) {
        List<Block> blocks = new ArrayList<>(body(of));
        add(blocks, "All entries", ReportEntries.of(of));
        add(blocks, "The protocol", ReportOrigin.texts(of));
        return page(of, blocks, true);
    }

    /** To be read in a terminal: without the list of all entries and the text of the protocol. */
    public static Page withoutTexts(Material of) {
        List<Block> blocks = new ArrayList<>(body(of));
        blocks.add(
                new Block.Words(
                        "Written as HTML or Markdown the report holds all entries and the text of"
                                + " the protocol, too."));
        return page(of, blocks, false);
    }

    /** Only what was found, and what that says and does not say. */
    public static Page answer(Material of) {
        List<Block> blocks = new ArrayList<>(ReportHead.of(of));
        add(blocks, "What was found", ReportAnswer.found(of));
        add(blocks, "What that says, and what it does not", ReportAnswer.reach(of));
        return page(of, blocks, false);
    }

    private static List<Block> body(Material of) {
        List<Block> blocks = new ArrayList<>(answer(of).blocks());
        if (of.shown().result()) {
            for (MeasureResult each : of.shown().results()) {
                add(blocks, ReportMeasure.title(each.measure()), ReportMeasure.of(of, each));
            }
            add(blocks, "Seal and breathing together", ReportTogether.of(of));
            add(blocks, "Worth a second look", ReportFlags.of(of));
        }
        add(blocks, "Observations", ReportObservations.of(of));
        add(blocks, "Deviations from the protocol", ReportDeviations.of(of));
        add(blocks, "Pieces, instruments, donnings", ReportSession.of(of));
        add(blocks, "Method", ReportMethod.of(of));
        add(blocks, "Where this comes from", ReportOrigin.of(of));
        add(blocks, "Cautions", List.of(new Block.Points(of.protocol().cautions())));
        return blocks;
    }

    private static Page page(Material of, List<Block> blocks, boolean isLong) {
        String title = of.protocol().title();
        return new Page(
                of.opened().simulated() ? SIMULATED + ": " + title : title,
                of.protocol().question(),
                blocks,
                isLong);
    }

    private static void add(List<Block> blocks, String title, List<Block> within) {
        if (!within.isEmpty()) {
            blocks.add(Part.of(title, "", within));
        }
    }
}
