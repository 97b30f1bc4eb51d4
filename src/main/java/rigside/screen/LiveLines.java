package rigside.screen;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import rigside.analysis.Live;
import rigside.measure.Counted;
import rigside.measure.Numbers;
import rigside.measure.Quantity;
import rigside.measure.Unit;
import rigside.session.Activity;

/** What particle counters give of what is under way. */
record LiveLines(Scene scene, Unit unit) {

    /** Whether there is anything to be said. */
    static boolean isAny(Scene scene) {
        return !scene.view().live().equals(Live.NONE);
    }

    /** What is read just now; nothing without an instrument. */
    List<Line> reading() {
        OptionalDouble read = scene.view().live().concentration();
        if (read.isEmpty()) {
            return List.of();
        }
        Quantity mean = shown(read.getAsDouble());
        return scene.isTall()
                ? Line.stacked(
                        List.of(Line.of("it reads, mean so far")),
                        scene.digits(Numbers.plain(mean.value()), unit.symbol()))
                : List.of(
                        Line.of("it reads ")
                                .plus(Tone.STRONG, mean.toString())
                                .plus(", mean so far"));
    }

    /**
     * What is wrong with what is sampled, or why it gave no value. While a window runs it is the
     * tube: that has to be seen from where the hand on it is.
     */
    static List<Line> amiss(Scene scene) {
        return scene.view().live().amiss().map(words -> amiss(scene, words)).orElse(List.of());
    }

    private static List<Line> amiss(Scene scene, String words) {
        List<Line> plain = Wrap.lines(Tone.WARN, "! " + words, scene.columns());
        boolean asked = scene.state().activity() instanceof Activity.Filling;
        return asked || !scene.isTall()
                ? plain
                : Line.stacked(
                        scene.name("WRONG SIDE").stream().map(line -> line.in(Tone.WARN)).toList(),
                        plain);
    }

    /** The fit factor of an exercise so far, with what counting leaves open. */
    List<Line> fit(int exercise) {
        return scene.view().live().fit(exercise).map(this::fit).orElse(List.of());
    }

    /** In one line where there is no room for more: the clock goes before it. */
    private List<Line> fit(Live.Fit fit) {
        String value = Figures.value(OptionalDouble.of(fit.value()), fit.bounded());
        if (!scene.isTall()) {
            Line line = Line.of("fit factor so far ").plus(Tone.STRONG, value);
            return List.of(fit.counting().map(each -> line.plus("; " + left(each))).orElse(line));
        }
        List<Line> lines = new ArrayList<>();
        Line words = Line.of("fit factor of this exercise, so far");
        lines.add(fit.counting().map(each -> words.plus("; " + left(each))).orElse(words));
        lines.addAll(scene.lesser(value));
        return List.copyOf(lines);
    }

    private static String left(Counted.Limits limits) {
        return limits.high().isPresent()
                ? "counting alone leaves "
                        + digits(limits.low())
                        + " to "
                        + digits(limits.high().getAsDouble())
                : "by counting alone at least " + digits(limits.low());
    }

    /** Whether the air of the room keeps still. */
    Optional<Line> air(double mayMove) {
        Live live = scene.view().live();
        String most = percent(mayMove);
        if (live.ambientMoved()) {
            return Optional.of(
                    Line.of(Tone.WARN, "! the room's air MOVED")
                            .plus(" by more than " + most + " from sample to sample"));
        }
        return live.ambientChange().isPresent()
                ? Optional.of(
                        Line.of("the room's air is steady: ")
                                .plus(percent(Math.abs(live.ambientChange().getAsDouble())))
                                .plus(Tone.QUIET, " from sample to sample, up to " + most))
                : Optional.empty();
    }

    private Quantity shown(double si) {
        double three = new BigDecimal(unit.fromSi(si)).round(new MathContext(3)).doubleValue();
        return new Quantity(three, unit);
    }

    private static String digits(double value) {
        return Figures.value(OptionalDouble.of(value), false);
    }

    private static String percent(double share) {
        return Numbers.plain(Math.rint(share * 100)) + " %";
    }
}
