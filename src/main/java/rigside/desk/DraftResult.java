package rigside.desk;

import java.io.IOException;
import java.time.ZonedDateTime;
import java.util.ArrayList;
import java.util.List;
import rigside.analysis.Analysis;
import rigside.analysis.Comparison;
import rigside.analysis.Shown;
import rigside.protocol.Protocol;

/** What a drafted protocol brings: checked, planned and rehearsed before it is saved. Slow. */
final class DraftResult {
    /** Any would do; the same answers then always give the same rehearsal. */
    private static final long SEED = 1;

    private DraftResult() {}

    /**
     * As lines to read.
     *
     * @param text of a protocol without problems
     * @param start the wall clock at the rehearsal's opening
     */
    static List<String> of(String text, ZonedDateTime start, String version) {
        ProtocolFile file = ProtocolFile.of("draft.yaml", text, "");
        Protocol protocol = file.protocol().orElseThrow();
        List<String> lines = new ArrayList<>();
        lines.add("The protocol has no problems.");
        lines.add("");
        lines.addAll(ProtocolPages.advice(protocol));
        lines.add("");
        lines.addAll(PlanLines.of(protocol));
        lines.add("");
        lines.add("One rehearsal: every value is invented");
        lines.addAll(rehearsed(file, protocol, start, version));
        lines.add("  It shows that the procedure runs through to its end, not what your masks do.");
        return List.copyOf(lines);
    }

    private static List<String> rehearsed(
            ProtocolFile file, Protocol protocol, ZonedDateTime start, String version) {
        TrialRun run =
                new TrialRun(
                        protocol,
                        Openings.of(file, protocol, new Choice(true, 1), SEED, version),
                        start);
        try {
            TrialRun.Played played = run.play();
            Shown shown = Shown.of(played.state(), Analysis.of(played.state()));
            List<String> lines = new ArrayList<>(List.of("  " + shown.next() + "."));
            shown.measures().stream()
                    .flatMap(each -> each.comparisons().stream())
                    .map(Comparison::sentence)
                    .forEach(each -> lines.add("  - " + each));
            return lines;
        } catch (IOException stopped) {
            return List.of("  " + stopped.getMessage());
        }
    }
}
