package rigside.desk;

import java.util.ArrayList;
import java.util.List;
import rigside.analysis.ProtocolAdvice;
import rigside.protocol.Protocol;
import rigside.report.Outline;
import rigside.screen.HomeView.Review;

/** Pages to read about a protocol file. */
final class ProtocolPages {
    /** Longer lines are hard to find back in. */
    private static final int READABLE = 100;

    private ProtocolPages() {}

    /** All that is wrong with it. */
    static Review problems(ProtocolFile file) {
        return new Review(file.name(), file.problems());
    }

    /**
     * That it is sound, what to think over all the same, and what its plan can be expected to
     * bring: slow.
     *
     * @param file one without problems
     */
    static Review checked(ProtocolFile file) {
        Protocol protocol = file.protocol().orElseThrow();
        return new Review(protocol.title(), checked(file.name(), protocol));
    }

    static List<String> checked(String name, Protocol protocol) {
        List<String> lines = new ArrayList<>();
        lines.add(name + ": no problems, it can be run.");
        lines.add("");
        lines.addAll(advice(protocol));
        lines.add("");
        lines.addAll(PlanLines.of(protocol));
        return List.copyOf(lines);
    }

    /** All of a protocol on one page, as wide as reads well in a window of some columns. */
    static List<String> outline(Protocol protocol, int columns) {
        return Outline.of(protocol).lines(Math.max(40, Math.min(columns - 4, READABLE)));
    }

    /** What to think over, under its heading. */
    static List<String> advice(Protocol protocol) {
        List<String> advice = ProtocolAdvice.of(protocol);
        if (advice.isEmpty()) {
            return List.of("Nothing to think over was found.");
        }
        List<String> lines = new ArrayList<>(List.of("To think over"));
        advice.forEach(each -> lines.add("  - " + each));
        return List.copyOf(lines);
    }
}
