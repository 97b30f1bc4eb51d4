package rigside.analysis;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import rigside.protocol.Exercise;
import rigside.protocol.Protocol;
import rigside.protocol.Step;
import rigside.protocol.Window;

/**
 * What to think over in the sample windows: after the tube of a counter was switched, the air of
 * before is still in it.
 */
final class TubeAdvice {

    /** Where the counter is not known, its tube is clear after so long: own judgement. */
    private static final double USUAL_SECONDS = 3;

    /** Of a window with less left than this share no value is taken. */
    private static final double LEAST_LEFT = 0.5;

    private final Optional<ProtocolAdvice.Counter> counter;

    private TubeAdvice(Optional<ProtocolAdvice.Counter> counter) {
        this.counter = counter;
    }

    static List<String> of(Protocol protocol, Optional<ProtocolAdvice.Counter> counter) {
        TubeAdvice advice = new TubeAdvice(counter);
        return protocol.donning().stream()
                .filter(Step.Exercises.class::isInstance)
                .flatMap(step -> advice.exercises((Step.Exercises) step).stream())
                .toList();
    }

    /**
     * A sample after a switch of the tube.
     *
     * @param gap seconds since the sample of the other air ended; none where none was before it
     */
    private record Switched(Exercise exercise, boolean ambient, Window window, double gap) {
        double seconds() {
            return window.to() - window.from();
        }

        String words() {
            return "the "
                    + (ambient ? "ambient" : "mask")
                    + " window of '"
                    + exercise.title()
                    + "'";
        }
    }

    private Optional<String> exercises(Step.Exercises step) {
        List<Switched> all = switched(step.exercises());
        return counter.isPresent() ? known(step, all) : unknown(step, all);
    }

    private Optional<String> known(Step.Exercises step, List<Switched> all) {
        double settling = counter.orElseThrow().settlingSeconds();
        List<Switched> tooShort =
                all.stream()
                        .filter(each -> left(each) < LEAST_LEFT * each.seconds())
                        .sorted(Comparator.comparingDouble(this::left))
                        .toList();
        return tooShort.isEmpty()
                ? Optional.empty()
                : Optional.of(
                        "'"
                                + step.title()
                                + "': the counter settles for "
                                + Digits.three(settling)
                                + " s after its tube is switched, which leaves less than half of "
                                + count(tooShort)
                                + ", and no value is taken then; of "
                                + tooShort.get(0).words()
                                + " it leaves "
                                + Digits.three(left(tooShort.get(0)))
                                + " of "
                                + Digits.three(tooShort.get(0).seconds())
                                + " s; make windows and exercises longer");
    }

    private static Optional<String> unknown(Step.Exercises step, List<Switched> all) {
        List<Switched> tooSoon = all.stream().filter(each -> each.gap() < USUAL_SECONDS).toList();
        return tooSoon.isEmpty()
                ? Optional.empty()
                : Optional.of(
                        "'"
                                + step.title()
                                + "': the tube of a counter takes some seconds to clear, and less"
                                + " than "
                                + Math.round(USUAL_SECONDS)
                                + " s are left for it before "
                                + tooSoon.get(0).words()
                                + (tooSoon.size() == 1
                                        ? ""
                                        : " and " + (tooSoon.size() - 1) + " more")
                                + "; begin windows later, or say how long yours settles with"
                                + " 'rigside check PROTOCOL --rig FILE'");
    }

    private static String count(List<Switched> windows) {
        return windows.size() == 1 ? "1 window" : windows.size() + " windows";
    }

    /** Seconds of a window that are left when the counter has settled. */
    private double left(Switched each) {
        ProtocolAdvice.Counter known = counter.orElseThrow();
        double before = known.tellsSide() ? each.gap() : 0;
        double settling = Math.max(0, known.settlingSeconds() - before);
        return Math.max(0, each.seconds() - settling);
    }

    private static List<Switched> switched(List<Exercise> exercises) {
        List<Switched> all = new ArrayList<>();
        // Before the first one the tube may have been anywhere, for any time.
        Optional<Boolean> side = Optional.empty();
        double ended = Double.NEGATIVE_INFINITY;
        double begun = 0;
        for (Exercise exercise : exercises) {
            for (Switched sample : samples(exercise)) {
                if (!side.equals(Optional.of(sample.ambient()))) {
                    double gap =
                            side.isEmpty()
                                    ? Double.POSITIVE_INFINITY
                                    : begun + sample.window().from() - ended;
                    all.add(new Switched(exercise, sample.ambient(), sample.window(), gap));
                }
                side = Optional.of(sample.ambient());
                ended = begun + sample.window().to();
            }
            begun += exercise.seconds();
        }
        return all;
    }

    /** The samples of an exercise in the order of time. */
    private static List<Switched> samples(Exercise exercise) {
        List<Switched> samples = new ArrayList<>();
        exercise.ambient().forEach(each -> samples.add(new Switched(exercise, true, each, 0)));
        exercise.mask().ifPresent(each -> samples.add(new Switched(exercise, false, each, 0)));
        samples.sort(Comparator.comparingDouble(each -> each.window().from()));
        return samples;
    }
}
