package rigside.screen;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rigside.analysis.DonningValue;
import rigside.analysis.Level;
import rigside.analysis.Part;
import rigside.protocol.Measure;
import rigside.protocol.Step;
import rigside.session.Activity;
import rigside.session.Applicable;
import rigside.session.Donning;
import rigside.session.Place;
import rigside.session.Procedure;
import rigside.session.Stage;

/**
 * What the exercises of the open donning gave so far, carried along to the steps after them, as far
 * as it may be seen. While something is timed there is no time to read it.
 */
final class FitSoFar {
    private FitSoFar() {}

    static List<Line> of(Scene scene) {
        Optional<Donning> open = scene.state().course().open();
        if (open.isEmpty() || isTimed(scene.state().activity())) {
            return List.of();
        }
        boolean done = scene.state().activity() instanceof Activity.DonningDone;
        int now =
                done
                        ? Integer.MAX_VALUE
                        : Places.of(scene.state())
                                .filter(place -> place.stage() == Stage.DONNING)
                                .map(Place::step)
                                .orElse(0);
        List<Line> lines = new ArrayList<>();
        List<Step> steps = Procedure.steps(scene.state().protocol(), Stage.DONNING);
        for (int at : Applicable.steps(scene.state(), Stage.DONNING, open.get().number())) {
            if (at < now && steps.get(at) instanceof Step.Exercises step) {
                step.fitFactor()
                        .flatMap(measure -> words(scene, measure, done))
                        .ifPresent(words -> lines.addAll(scene.wrapped(words)));
            }
        }
        return List.copyOf(lines);
    }

    private static boolean isTimed(Activity activity) {
        boolean trial =
                StepKeys.isTimed(activity)
                        || activity instanceof Activity.Tracing
                        || activity instanceof Activity.HoldAsked
                        || activity instanceof Activity.VoidAsked
                        || activity instanceof Activity.Resting;
        return trial
                || (activity instanceof Activity.Gating gating && gating.startedAt().isPresent())
                || (activity instanceof Activity.Waiting waiting
                        && waiting.startedAt().isPresent());
    }

    private static Optional<String> words(Scene scene, String id, boolean done) {
        boolean said = done && scene.view().shown().result();
        Optional<DonningValue> value = scene.open(id);
        List<String> parts =
                value.map(DonningValue::parts).orElse(List.of()).stream()
                        .filter(part -> part.value().isPresent())
                        .map(FitSoFar::words)
                        .toList();
        if (parts.isEmpty() || said) {
            return Optional.empty();
        }
        String title =
                scene.state().protocol().measures().stream()
                        .filter(measure -> measure.id().equals(id))
                        .findFirst()
                        .map(Measure::title)
                        .orElse(id);
        String overall =
                value.flatMap(
                                each ->
                                        each.value().isPresent()
                                                ? Optional.of(
                                                        Figures.value(each.value(), each.bounded()))
                                                : Optional.empty())
                        .orElse(scene.view().shown().result() ? "-" : "concealed");
        return Optional.of(
                title
                        + " so far, by exercise: "
                        + String.join(", ", parts)
                        + "; overall "
                        + overall);
    }

    private static String words(Part part) {
        String remark =
                part.level() == Level.MISSED
                        ? " (below the level)"
                        : part.counted() ? "" : " (not counted)";
        return Scene.value(part) + remark;
    }
}
