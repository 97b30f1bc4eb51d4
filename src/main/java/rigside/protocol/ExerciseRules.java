package rigside.protocol;

import java.util.List;
import java.util.Optional;
import rigside.yaml.Entry;

/** What the exercises of a step must sample, given the measures they feed. */
final class ExerciseRules {
    private ExerciseRules() {}

    static void check(
            Entry list,
            List<Exercise> exercises,
            Optional<String> fitFactor,
            Optional<String> pressure) {
        boolean mask = exercises.stream().anyMatch(exercise -> exercise.mask().isPresent());
        boolean ambient = exercises.stream().anyMatch(exercise -> !exercise.ambient().isEmpty());
        boolean read = exercises.stream().anyMatch(exercise -> exercise.pressure().isPresent());
        if (fitFactor.isPresent()) {
            concentrations(list, exercises, ambient);
        } else if (mask || ambient) {
            list.wrong(
                    "air is sampled, but the step feeds no fit factor",
                    "name a fit-factor measure in 'feeds', or delete 'ambient' and 'mask'");
        }
        if (pressure.isPresent() && !read) {
            list.wrong(
                    "no exercise reads the pressure that '" + pressure.get() + "' needs",
                    "add for example \"pressure: '15 to 55 s'\" to an exercise");
        }
        if (pressure.isEmpty() && read) {
            list.wrong(
                    "pressure is read, but the step feeds no pressure-trace measure",
                    "name one in 'feeds', or delete 'pressure'");
        }
    }

    private static void concentrations(Entry list, List<Exercise> exercises, boolean ambient) {
        if (!ambient) {
            list.wrong(
                    "no exercise samples the ambient air, so no fit factor can be computed",
                    "add for example 'ambient: 0 to 10 s' to the first and the last exercise");
        }
        List<String> blind =
                exercises.stream()
                        .filter(exercise -> exercise.counted() && exercise.mask().isEmpty())
                        .map(Exercise::title)
                        .toList();
        if (!blind.isEmpty()) {
            list.wrong(
                    "'" + blind.get(0) + "' is counted but samples no air in the mask",
                    "add for example 'mask: 15 to 55 s', or 'counted: no'");
        } else if (exercises.stream().noneMatch(Exercise::counted)) {
            list.wrong(
                    "no exercise is counted, so no fit factor can be computed",
                    "delete 'counted: no' where the mask is sampled");
        }
    }
}
