package rigside.report;

import java.util.ArrayList;
import java.util.List;
import rigside.analysis.GatesRead;
import rigside.analysis.Happened;
import rigside.report.Block.Part;

/** What went otherwise than the protocol has it, and what that does to the verdicts. */
final class ReportDeviations {
    private ReportDeviations() {}

    static List<Block> of(Material of) {
        List<Block> blocks = new ArrayList<>(ReportChanges.of(of));
        for (Happened.Section each : Happened.sections(of.state())) {
            List<String> lines = each.lines().stream().filter(line -> !isAsPlanned(line)).toList();
            if (!lines.isEmpty()) {
                blocks.add(Part.of(each.heading(), "", List.of(new Block.Points(lines))));
            }
        }
        blocks.addAll(ReportCourse.of(of));
        return blocks.isEmpty() && of.state().course().cautionsRead()
                ? List.of(
                        new Block.Words(
                                "Nothing: no entry struck out, none left out, no pause, no note."))
                : List.copyOf(blocks);
    }

    /** What gates read that were met at once. */
    static List<String> asPlanned(Material of) {
        return Happened.sections(of.state()).stream()
                .flatMap(each -> each.lines().stream())
                .filter(ReportDeviations::isAsPlanned)
                .toList();
    }

    private static boolean isAsPlanned(String line) {
        return line.endsWith(GatesRead.MET);
    }
}
