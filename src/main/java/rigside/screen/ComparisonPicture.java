package rigside.screen;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import rigside.analysis.Comparison;
import rigside.analysis.Digits;
import rigside.analysis.MeasureResult;
import rigside.decide.Forecast;
import rigside.decide.Verdict;
import rigside.protocol.Plan;

/**
 * One comparison: what was found, the interval against the band, what to do next, how the interval
 * moved.
 */
record ComparisonPicture(Scene scene, MeasureResult measure, Comparison comparison) {

    /** Wider lines say no more. */
    private static final int WIDEST = 72;

    private static final int INDENT = 2;

    /** Columns of a look's number, and of its figures. */
    private static final int LABEL = 9;

    private static final int FIGURES = 24;

    /** Columns of a verdict in a row by itself, so that rows keep their places. */
    private static final int USUAL_WORDS = 24;

    private static final int CHANCE = 14;

    /** How much room a comparison takes. */
    enum Room {
        /** A heading, the sentence, the picture with its figures, what to do next. */
        ROOMY,
        /** The measure's name and the band's figures in the row of the picture. */
        CLOSE,
        /** The same; nothing blank between comparisons. */
        TIGHT
    }

    /** The sentence first, then the picture, then what to do next. */
    List<Line> lines(Room room) {
        List<Line> lines = new ArrayList<>();
        if (room == Room.ROOMY) {
            lines.add(Line.of(Tone.STRONG, measure.measure().title()));
        }
        lines.addAll(
                Wrap.hanging(
                        sign(comparison.verdict(), scene.signs()),
                        Tone.STRONG,
                        comparison.sentence(),
                        scene.columns()));
        lines.addAll(room == Room.ROOMY ? picture() : List.of(namedPicture()));
        lines.addAll(
                Wrap.hanging(Line.of("  next: "), Tone.PLAIN, comparison.next(), scene.columns()));
        return List.copyOf(lines);
    }

    /** The interval against the band, and the band's figures below. */
    private List<Line> picture() {
        if (comparison.estimate().isEmpty()) {
            return List.of();
        }
        Axis axis = Axis.of(comparison, Math.min(WIDEST, scene.columns() - INDENT), scene.signs());
        return List.of(
                Line.of(Tone.STRONG, axis.row(comparison)).indented(INDENT),
                Line.of(Tone.QUIET, axis.numbers()).indented(INDENT));
    }

    /** The same in one row, named by the measure. */
    private Line namedPicture() {
        Line name =
                Line.of("  ")
                        .plus(Line.of(measure.measure().title()).cut(18, scene.signs().cut()))
                        .padded(21, Tone.PLAIN);
        String edges = "  " + Axis.edges(comparison.band(), comparison.matters());
        int columns = Math.min(WIDEST, scene.columns()) - 21 - edges.length();
        return comparison.estimate().isEmpty()
                ? name.plus(Tone.QUIET, "no complete round yet")
                : name.plus(
                                Tone.STRONG,
                                Axis.of(comparison, columns, scene.signs()).row(comparison))
                        .plus(Tone.QUIET, edges);
    }

    /**
     * One row: the sign, a name, the picture, the verdict in a few words.
     *
     * @param named columns of the longest name; it has fewer where the picture needs them
     * @param worded columns of the longest verdict
     */
    Line brief(int named, int worded) {
        int words = Math.max(USUAL_WORDS, worded) + 3;
        int width =
                Math.max(scene.columns() / 4, Math.min(named + 3, scene.columns() - words - 22));
        Line title =
                sign(comparison.verdict(), scene.signs())
                        .plus(name().in(width - 3, scene.signs().cut()))
                        .padded(width, Tone.PLAIN);
        int columns = Math.max(8, scene.columns() - width - words - 2);
        String line =
                comparison.estimate().isPresent()
                        ? Axis.of(comparison, columns, scene.signs()).row(comparison)
                        : "no complete round yet";
        return title.plus(Line.of(line).cut(columns, scene.signs().cut()))
                .padded(width + columns + 2, Tone.PLAIN)
                .plus(word());
    }

    /** What tells this comparison from the others. */
    Name name() {
        boolean several = scene.state().protocol().conditions().size() > 2;
        return new Name(
                measure.measure().title(),
                several ? Header.title(scene.state(), comparison.condition()) : "");
    }

    /** Every look, one row each, on the axis of the present one; empty before the first. */
    List<Line> looks() {
        if (comparison.looks().isEmpty()) {
            return List.of();
        }
        int last = comparison.looks().size() - 1;
        int words =
                2
                        + comparison.looks().stream()
                                .mapToInt(this::words)
                                .reduce(USUAL_WORDS, Math::max);
        boolean worded = scene.columns() >= INDENT + LABEL + 30 + FIGURES + words;
        int room = scene.columns() - INDENT - LABEL - FIGURES - (worded ? words : 0);
        Axis axis = Axis.of(comparison, Math.max(20, Math.min(WIDEST, room)), scene.signs());
        List<Line> lines = new ArrayList<>();
        lines.add(Line.of(Tone.QUIET, "  how the interval moved, look by look"));
        for (int at = 0; at <= last; at++) {
            Line row = look(axis, comparison.looks().get(at), worded);
            lines.add(at == last ? row.in(Tone.STRONG) : row);
        }
        lines.add(Line.of(Tone.QUIET, axis.numbers()).indented(INDENT + LABEL));
        return List.copyOf(lines);
    }

    private Line look(Axis axis, Comparison.Seen look, boolean worded) {
        boolean paired = plan().design() == Plan.Design.ROUNDS;
        String label = paired ? "round " + look.n() : look.n() + " each";
        List<String> digits =
                Digits.apart(look.estimate(), look.interval().low(), look.interval().high());
        String figures =
                String.format("  %s (%s to %s)", digits.get(0), digits.get(1), digits.get(2));
        Line row =
                sign(look.verdict(), scene.signs())
                        .plus(String.format("%-" + LABEL + "s", label))
                        .plus(
                                axis.row(
                                        OptionalDouble.of(look.estimate()),
                                        Optional.of(look.interval())))
                        .plus(Tone.QUIET, figures);
        return worded
                ? row.padded(INDENT + LABEL + axis.columns() + FIGURES + 1, Tone.PLAIN)
                        .plus(word(look.verdict()))
                : row;
    }

    /**
     * What going on may bring: the chance to settle as a bar, and where in the plan. Empty once
     * settled, and while nothing can be said.
     */
    List<Line> forecast() {
        Forecast forecast = comparison.forecast();
        if (comparison.isSettled() || forecast.settlesWithinPlan().isEmpty()) {
            return List.of();
        }
        double chance = forecast.settlesWithinPlan().getAsDouble();
        int full = (int) Math.round(chance * CHANCE);
        List<Line> lines = new ArrayList<>();
        lines.addAll(
                Wrap.hanging(
                        Line.of(Tone.QUIET, "  settles in plan ")
                                .plus(Tone.STRONG, scene.signs().block().repeat(full))
                                .plus(Tone.QUIET, scene.signs().dot().repeat(CHANCE - full))
                                .plus(Tone.STRONG, " " + Digits.chance(chance) + ": "),
                        Tone.QUIET,
                        "meaningful "
                                + Digits.chance(forecast.meaningful())
                                + ", not meaningful "
                                + Digits.chance(forecast.noMeaningful()),
                        scene.columns()));
        lines.addAll(rounds(forecast));
        return List.copyOf(lines);
    }

    /** The plan as a row of cells: done, the likely end, what is left. */
    private List<Line> rounds(Forecast forecast) {
        boolean paired = plan().design() == Plan.Design.ROUNDS;
        int most = plan().most();
        if (forecast.median().isEmpty() || comparison.n() >= most) {
            return List.of();
        }
        int median = comparison.n() + forecast.median().getAsInt();
        int low = comparison.n() + forecast.low().orElse(forecast.median().getAsInt());
        int high = forecast.high().isPresent() ? comparison.n() + forecast.high().getAsInt() : most;
        StringBuilder cells = new StringBuilder();
        for (int round = 1; round <= most; round++) {
            cells.append(
                    round <= comparison.n()
                            ? scene.signs().block()
                            : round == median
                                    ? scene.signs().mark()
                                    : round >= low && round <= high
                                            ? scene.signs().heavy()
                                            : scene.signs().dot());
        }
        String likely =
                forecast.high().isEmpty()
                        ? " (in 9 of 10 cases " + low + " or more)"
                        : low == high ? "" : " (in 8 of 10 cases " + low + " to " + high + ")";
        return Wrap.hanging(
                Line.of(Tone.QUIET, paired ? "  rounds          " : "  values each     ")
                        .plus(Tone.STRONG, cells + " "),
                Tone.QUIET,
                comparison.n() + " of " + most + " done; settled after about " + median + likely,
                scene.columns());
    }

    private Plan plan() {
        return scene.state().protocol().plan();
    }

    /** What holds, in a few words. */
    Line word() {
        return word(comparison.verdict());
    }

    private int words(Comparison.Seen look) {
        return word(look.verdict()).width();
    }

    private Line word(Verdict verdict) {
        return Line.of(verdict.settled() ? Tone.STRONG : Tone.PLAIN, comparison.words(verdict));
    }

    /** Whether a verdict is settled, as a sign. */
    static Line sign(Verdict verdict, Glyphs signs) {
        return verdict.settled()
                ? Line.of(Tone.GOOD, signs.tick() + " ")
                : Line.of(Tone.QUIET, "? ");
    }
}
