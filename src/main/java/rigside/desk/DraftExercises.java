package rigside.desk;

import static rigside.desk.DraftAnswers.PRESSURE;
import static rigside.desk.DraftAnswers.SEAL;

import java.util.ArrayList;
import java.util.List;

/** The step of exercises of a drafted protocol. */
record DraftExercises(DraftAnswers answers) {

    /**
     * One exercise of 60 s.
     *
     * @param windows its sample windows where concentrations are read
     * @param breathes whether breaths are found well enough in it to read their pressure
     * @param shortList whether it is in the shorter list too
     */
    private record Exercise(
            String title, String say, List<String> windows, boolean breathes, boolean shortList) {}

    private static final List<String> USUAL = List.of("ambient: 4 to 14 s", "mask: 20 to 60 s");

    private static final List<Exercise> ALL =
            List.of(
                    new Exercise(
                            "Normal breathing",
                            "Stand still. Breathe normally. Do not talk.",
                            USUAL,
                            true,
                            true),
                    new Exercise(
                            "Deep breathing",
                            "Slowly and deeply. Do not hurry.",
                            USUAL,
                            true,
                            true),
                    new Exercise(
                            "Head side to side",
                            "Turn slowly as far as is comfortable. Pause and breathe in at each"
                                    + " end.",
                            USUAL,
                            false,
                            true),
                    new Exercise(
                            "Head up and down",
                            "Slowly. Breathe in when looking up.",
                            USUAL,
                            false,
                            false),
                    new Exercise(
                            "Talking",
                            "Count back aloud from 100, loud enough for the next room.",
                            USUAL,
                            false,
                            false),
                    new Exercise(
                            "Bending over",
                            "Bend at the waist as if to touch your toes, come up, again.",
                            List.of("ambient: 4 to 14 s", "mask: 20 to 48 s"),
                            false,
                            false),
                    new Exercise(
                            "Normal breathing again",
                            "Stand still. Breathe normally. Do not talk.",
                            List.of("mask: 5 to 45 s", "ambient: 50 to 60 s"),
                            true,
                            true));

    List<String> lines() {
        boolean seal = answers.measures(SEAL);
        boolean pressure = answers.measures(PRESSURE);
        List<String> lines = new ArrayList<>();
        if (seal) {
            lines.add(
                    "  # One counter samples ambient and mask air in turn. The ambient air of an"
                            + " exercise is");
            lines.add(
                    "  # the mean of the samples around it. After switching, the tube needs some"
                            + " seconds to");
            lines.add("  # clear: hence the gaps.");
        }
        lines.add("  - step: exercises");
        lines.add("    title: Exercises");
        lines.add("    say: Do not touch the mask from here on. Touching it ends this donning.");
        lines.add(
                "    feeds: "
                        + (seal && pressure ? "[seal, pressure]" : seal ? "seal" : "pressure"));
        lines.add("    exercises:");
        ALL.stream()
                .filter(each -> each.shortList() || answers.of("exercises").equals("long"))
                .filter(each -> seal || each.breathes())
                .forEach(each -> lines.addAll(lines(each)));
        return lines;
    }

    private List<String> lines(Exercise exercise) {
        List<String> lines = new ArrayList<>();
        lines.add("      - title: " + exercise.title());
        lines.add("        say: " + exercise.say());
        lines.add("        for: 60 s");
        if (answers.measures(SEAL)) {
            exercise.windows().forEach(each -> lines.add("        " + each));
        }
        if (answers.measures(PRESSURE) && exercise.breathes()) {
            lines.add("        pressure: 15 to 55 s    # whole breaths are found in it");
        }
        return lines;
    }
}
