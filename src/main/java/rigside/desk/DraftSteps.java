package rigside.desk;

import static rigside.desk.DraftAnswers.BREATHING;
import static rigside.desk.DraftAnswers.NUMBER;
import static rigside.desk.DraftAnswers.SEAL;

import java.util.ArrayList;
import java.util.List;
import rigside.yaml.Quoted;

/** The procedure of a drafted protocol: before, one donning, after. */
final class DraftSteps {
    private final DraftAnswers answers;
    private final List<String> lines = new ArrayList<>();

    DraftSteps(DraftAnswers answers) {
        this.answers = answers;
    }

    List<String> lines() {
        before();
        puttingOn();
        if (answers.exercises()) {
            lines.addAll(new DraftExercises(answers).lines());
        }
        if (answers.measures(BREATHING)) {
            trials();
        }
        if (answers.measures(NUMBER)) {
            number();
        }
        afterwards();
        return List.copyOf(lines);
    }

    private void add(String block) {
        lines.addAll(block.lines().toList());
    }

    private void before() {
        add(
                """
                before:
                  - step: checklist
                    title: Bench
                    items:
                      - check: Clean room air, floor clear, tubes taped down, a chair without wheels
                        if-not: stop
                      - check: No beard or stubble where the mask seals
                        if-not: stop
                """);
        if (answers.gauge()) {
            add(
                    """
                          - check: The gauge reads zero with its tube open
                            if-not: repeat
                    """);
        }
        if (answers.measures(SEAL)) {
            add(
                    """
                          - check: The counter is warmed up
                            if-not: repeat
                      # What the counter has to read before a test is worth its time. Both limits are examples:
                      # common practice, from memory.
                      - step: gates
                        title: Air and counter
                        gates:
                          - gate: zero             # filtered air through the mask's sample tube
                            at-most: 0.02 /cm3
                            for: 60 s
                          - gate: ambient          # the air of the room
                            at-least: 1000 /cm3
                            for: 10 s
                    """);
        }
        lines.add("");
    }

    private void puttingOn() {
        add(
                """
                # All that is done from putting the mask on until it comes off.
                donning:
                  - step: checklist
                    title: Put the mask on
                    say: The same way every time. Straps in the same order, with the same tension.
                    items:
                      - check: Chin placed, no hair, strap or collar under the seal
                        if-not: repeat
                """);
        if (answers.measures(SEAL) || answers.gauge()) {
            add(
                    """
                          - check: The sample tube is on its probe and hangs free
                            if-not: repeat
                    """);
        }
        add(
                """
                      # A mask put on badly is not measured: the donning is abandoned, and counted as such.
                      - check: User seal check, inlets covered, the mask is drawn in and stays for 10 s
                        if-not: abandon
                      - check: User seal check, outlet covered, the mask lifts evenly and no air is felt at the edge
                        if-not: abandon
                """);
        if (answers.measures(SEAL)) {
            add(
                    """
                      - step: countdown
                        title: Purge
                        say: Breathe normally. The particles caught in the mask clear away.
                        for: 3 min
                    """);
        } else {
            add(
                    """
                      - step: countdown
                        title: Settle
                        say: Breathe as you like.
                        for: 60 s
                    """);
        }
    }

    private void trials() {
        if (answers.exercises()) {
            add(
                    """
                      - step: countdown
                        title: Sit down and rest
                        say: Sit on the steady chair. Breathe as you like.
                        for: 60 s
                    """);
        }
        add(
                """
                  - step: trials
                    title: Timed inhalations
                    say: >-
                      Breathe out fully during the count. Press again as you begin to breathe in, keep the gauge on
                      the target, and press once more when your lungs are full.
                    feeds: breathing
                """);
        lines.add("    trials: " + answers.of("trials"));
        lines.add("    target: " + Quoted.text(answers.of("target")));
        add(
                """
                    tolerance: 20 %
                    rest: 60 s               # full breaths closer together make dizzy and tired
                    shortest: 1 s
                    longest: 40 s
                """);
    }

    private void number() {
        add(
                """
                  - step: form
                """);
        lines.add("    title: " + Quoted.text(answers.of("number-name")));
        add(
                """
                    fields:
                      - id: number-read
                """);
        lines.add("        ask: " + Quoted.text(answers.of("number-name")));
        lines.add("        unit: " + Quoted.text(answers.of("number-unit")));
        lines.add("        # from: and to: would ask again about a value that is not plausible");
    }

    private void afterwards() {
        add(
                """
                  - step: observations
                    title: How it was
                    fields:
                      - id: comfort
                        ask: Comfort
                        scale: {from: 0, to: 10, low: unbearable, high: not noticed}
                      - id: effort
                        ask: Effort of breathing
                        scale: {from: 0, to: 10, low: none, high: the most I can do}
                      - id: slipping
                        ask: Did the mask slip
                        choices: [no, a little, clearly]
                      - id: remark
                        ask: Anything else seen or felt
                        words: 200
                        may-be-empty: yes

                after:
                  - step: note
                    title: Afterwards
                    say: Clean and dry mask, valves and tube. Keep the specimens together, marked as test pieces.
                """);
    }
}
