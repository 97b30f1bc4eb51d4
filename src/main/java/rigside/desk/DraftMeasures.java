package rigside.desk;

import static rigside.desk.DraftAnswers.BREATHING;
import static rigside.desk.DraftAnswers.NUMBER;
import static rigside.desk.DraftAnswers.PRESSURE;
import static rigside.desk.DraftAnswers.SEAL;

import java.util.ArrayList;
import java.util.List;
import rigside.yaml.Quoted;

/** The measures of a drafted protocol. */
record DraftMeasures(DraftAnswers answers) {

    List<String> lines() {
        List<String> lines = new ArrayList<>();
        lines.add(
                "# What is meaningful was chosen before the first donning: do not fit it to"
                        + " results.");
        lines.add("measures:");
        if (answers.measures(SEAL)) {
            seal(lines);
        }
        if (answers.measures(BREATHING)) {
            breathing(lines);
        }
        if (answers.measures(PRESSURE)) {
            pressure(lines);
        }
        if (answers.measures(NUMBER)) {
            number(lines);
        }
        lines.add("");
        return lines;
    }

    private void seal(List<String> lines) {
        lines.add("  # Ambient over mask concentration, a mean over the exercises of a donning.");
        lines.add("  - id: seal");
        lines.add("    title: Fit factor");
        lines.add("    kind: fit-factor");
        if (!answers.of("detection-limit").isEmpty()) {
            lines.add(
                    "    # A reading at or below it gives \"at least\" this fit factor, never"
                            + " more.");
            lines.add("    detection-limit: " + quoted("detection-limit"));
        }
        compared(lines, SEAL, "ratio");
    }

    private void breathing(List<String> lines) {
        lines.add(
                "  # Times of full breaths at one held suction are proportional to the"
                        + " resistance.");
        lines.add("  - id: breathing");
        lines.add("    title: Inhalation time");
        lines.add("    kind: timed-inhalation");
        lines.add("    vital-capacity: vital-capacity");
        compared(lines, BREATHING, "ratio");
    }

    private void pressure(List<String> lines) {
        lines.add("  # Effort adapts without one's knowing: judge it together with how it felt.");
        lines.add("  - id: pressure");
        lines.add("    title: Peak inhalation pressure");
        lines.add("    kind: pressure-trace");
        compared(lines, PRESSURE, "ratio");
    }

    private void number(List<String> lines) {
        lines.add("  - id: number");
        lines.add("    title: " + quoted("number-name"));
        lines.add("    kind: typed-number");
        lines.add("    field: number-read");
        lines.add("    unit: " + quoted("number-unit"));
        lines.add("    resolution: " + quoted("number-resolution"));
        compared(lines, NUMBER, answers.of("number-compare"));
    }

    private void compared(List<String> lines, String measure, String how) {
        String spread = answers.of(measure + "-spread");
        lines.add("    compare: " + how);
        lines.add("    meaningful: " + quoted(measure + "-meaningful"));
        lines.add("    matters: " + answers.of(measure + "-matters"));
        if (spread.equals(DraftMeasureQuestions.UNKNOWN)) {
            lines.add(
                    "    # expected-spread: not known yet; with it 'rigside plan' says what can"
                            + " settle");
        } else {
            lines.add("    expected-spread: " + Quoted.text(spread));
        }
    }

    private String quoted(String id) {
        return Quoted.text(answers.of(id));
    }
}
