package rigside.desk;

import static rigside.desk.DraftAnswers.BREATHING;
import static rigside.desk.DraftAnswers.SEAL;

import java.util.ArrayList;
import java.util.List;
import rigside.yaml.Quoted;

/**
 * A commented protocol file from the answers of a draft. Every text that was typed is quoted, so
 * that nothing in it can mean anything but itself; quantities are checked by whoever reads the
 * file.
 */
final class DraftText {
    private final DraftAnswers answers;
    private final List<String> lines = new ArrayList<>();

    private DraftText(DraftAnswers answers) {
        this.answers = answers;
    }

    /**
     * The whole file.
     *
     * @param answers to every question, see {@link DraftQuestions#completed}
     */
    static String of(DraftAnswers answers) {
        DraftText text = new DraftText(answers);
        text.head();
        text.cautions();
        text.facts();
        text.conditions();
        text.lines.addAll(new DraftMeasures(answers).lines());
        text.plan();
        text.lines.addAll(new DraftSteps(answers).lines());
        return String.join("\n", text.lines) + "\n";
    }

    /** Lines as they stand in the file; of a text block its lines. */
    private void add(String block) {
        lines.addAll(block.lines().toList());
    }

    private void head() {
        add(
                """
                # Drafted by 'rigside draft'. Change what does not fit: 'rigside watch' beside the
                # editor says at each save whether it can still be run, and what the plan can settle.

                format: 1
                """);
        lines.add("title: " + quoted("title"));
        lines.add("question: " + quoted("question"));
        add(
                """
                about: |
                  A comparison by and for one wearer. It is not an occupational fit test and not proof of
                  protection at work. Times, windows and limits are common practice and our own judgement
                  unless a comment says otherwise.

                """);
    }

    private void cautions() {
        add(
                """
                # Shown and acknowledged before the first donning. Keep them; add what your own part needs.
                cautions:
                  - >-
                    Stop at once, take the mask off and sit down at any dizziness, tingling, chest pain, headache,
                    cough or unease. The session can be resumed later; nothing is lost.
                  - >-
                    Ask a doctor first if you have heart or lung disease, are pregnant, or were told not to strain.
                    Do not do this when ill, or after a recent heart attack, collapsed lung or surgery.
                """);
        if (answers.measures(BREATHING)) {
            add(
                    """
                      - >-
                        Full breaths in a row make you light-headed. Rest at least a minute between them, on a steady
                        chair without wheels.
                    """);
        }
        add("  - Test in clean room air only. Never test where protection is needed.");
        if (answers.exercises()) {
            add(
                    """
                      - >-
                        Clear the floor, tape tubes and leads out of the way, and keep one hand free when you bend or
                        turn.
                    """);
        }
        if (answers.measures(SEAL)) {
            add(
                    """
                      - >-
                        If you make particles with a candle or an aerosol, ventilate and never leave it alone. Never use
                        irritant smoke.
                    """);
        }
        if (answers.gauge()) {
            add(
                    """
                      - Keep the liquid of a water gauge below the tube, with a trap between the mask and the gauge.
                    """);
        }
        add(
                """
                  - >-
                    Own mask, own tube. Clean and dry facepiece, valves and tube between wearers. Throw away a
                    filtering facepiece that is wet, bent or holed.
                  - >-
                    A mask with a probe, a hole or an added part is a test piece. Mark it, and do not wear it for
                    protection.
                  - Hair under the seal, and the arms of spectacles, spoil the result. Shave or do not test.
                  - >-
                    This is no certification and no occupational fit test. It does not replace the law, the maker's
                    instructions or a fit tester.

                """);
    }

    private void facts() {
        add(
                """
                # Recorded once a session, before everything else.
                facts:
                  - id: wearer
                    ask: Wearer code (no name)
                    about: wearer-code
                    words: 20
                  - id: mask
                    ask: Kind and size of mask
                    about: mask
                    words: 60
                  - id: room-temperature
                    ask: Room temperature
                    about: room
                    unit: degC
                    from: 10
                    to: 35
                """);
        if (answers.measures(SEAL)) {
            add(
                    """
                      - id: counter
                        ask: Particle counter and its last calibration
                        about: instrument
                        words: 60
                    """);
        }
        if (answers.gauge()) {
            add(
                    """
                      - id: gauge
                        ask: Pressure gauge and its last calibration
                        about: instrument
                        words: 60
                    """);
        }
        if (answers.measures(BREATHING)) {
            add(
                    """
                      # With it, flow and resistance are reported too, not only ratios.
                      - id: vital-capacity
                        ask: Vital capacity, if it was measured
                        about: wearer
                        unit: L
                        from: 1.5
                        to: 8
                        may-be-empty: yes
                    """);
        }
        lines.add("");
    }

    private void conditions() {
        lines.add("# The first condition is the reference: the others are compared with it.");
        lines.add("conditions:");
        List<String> ids = answers.conditionIds();
        for (int at = 1; at <= ids.size(); at++) {
            lines.add("  - id: " + ids.get(at - 1));
            lines.add("    title: " + quoted("condition-" + at));
            lines.add("    specimen:");
            lines.add("      piece: " + quoted("piece-" + at));
            lines.add("      worn-before: " + answers.of("worn-" + at));
            if (answers.measures(SEAL)) {
                lines.add("    particle-reading: " + answers.of("filters"));
            }
        }
        if (answers.measures(SEAL)) {
            add(
                    """
                    # seal-only: the filters hold so much (99.9 % or more of the particles counted) that what is
                    # found in the mask came past the seal. seal-and-filter: the fit factor mixes both.
                    """);
        }
        lines.add("");
    }

    /** A line with a remark, in the column of the remarks written below it. */
    private void remarked(String line, String remark) {
        lines.add(line + " ".repeat(Math.max(1, 30 - line.length())) + "# " + remark);
    }

    private void plan() {
        lines.add("plan:");
        remarked("  fewest: " + answers.of("fewest"), "rounds before the first look");
        remarked("  most: " + answers.of("most"), "rounds after which the plan is used up");
        add(
                """
                  confidence: 95 %            # over all looks together, however often one looks
                  design: rounds              # a round is one donning of each condition
                  order: balanced             # each condition comes first equally often
                """);
        String until =
                switch (answers.of("conceal")) {
                    case "session" -> "until-session-ends";
                    case "shown" -> "shown";
                    default -> "until-donning-ends";
                };
        lines.add("  # What is seen changes how one breathes next.");
        lines.add("  conceal:");
        lines.add("    trial-clock: " + until);
        lines.add("    result: " + until);
        lines.add("");
    }

    /** An answer as the file writes it. */
    private String quoted(String id) {
        return Quoted.text(answers.of(id));
    }
}
