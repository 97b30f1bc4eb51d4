package rigside.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.DoubleStream;
import rigside.analysis.Digits;
import rigside.analysis.Shown;
import rigside.protocol.Measure;
import rigside.session.State;

/**
 * Fit factors, or peak pressures, of every exercise and overall: a row for each, in it a line for
 * each condition, on it a sign for each donning that counts.
 */
final class ExercisesPlot {
    /** Room for what a row is, left of it, on a wide sheet. */
    private static final double BESIDE = 210;

    private static final double LINE = 15;

    /** From the first round to the last, on one line. */
    private static final double SPREAD = 7;

    /** Between the letters of the lines and the plot. */
    private static final double LETTER = 18;

    /** Right of the plot: half of the longest number. */
    private static final double EDGE = 26;

    /** Rows beyond this are told on the axis above too. */
    private static final double TALL = 300;

    private final Plotting of;
    private final List<ExerciseRow> rows;
    private final Sheet sheet;
    private final Axis x;

    private ExercisesPlot(Plotting of, double width) {
        this.of = of;
        this.rows = ExerciseRow.all(of);
        this.sheet = new Sheet(width);
        double[] all =
                DoubleStream.concat(
                                rows.stream().flatMapToDouble(ExerciseRow::numbers),
                                of.required().stream())
                        .toArray();
        double left = LETTER + (sheet.isWide() ? BESIDE : 0);
        this.x = Axis.holding(all, of.isLog(all), left, width - EDGE);
    }

    /** None for anything that several exercises do not give, and where nothing may be shown. */
    static Optional<Figure> of(State state, Shown shown, String measure) {
        return Plots.of(state, shown, measure)
                .filter(of -> isOfExercises(of.measure().kind()))
                .filter(of -> ExerciseRow.all(of).size() > 2)
                .map(
                        of ->
                                new Figure(
                                        Plots.name(of, "exercises"),
                                        of.measure().title() + " of every exercise",
                                        words(of),
                                        new ExercisesPlot(of, Drawing.NARROW).drawing(),
                                        new ExercisesPlot(of, Drawing.WIDE).drawing()));
    }

    private static boolean isOfExercises(Measure.Kind kind) {
        return kind instanceof Measure.FitFactor || kind instanceof Measure.PressureTrace;
    }

    private Drawing drawing() {
        double at =
                sheet.paragraph(
                        0, 0, sheet.width(), 2, Mark.Weight.BOLD, Ink.INK, of.heading(x.log()));
        at = keys(at + 4) + 6;
        double top = at + 16;
        List<Double> heights = rows.stream().map(this::height).toList();
        double bottom = top + heights.stream().mapToDouble(each -> each).sum();
        rules(top, bottom);
        at = top;
        for (int row = 0; row < rows.size(); row++) {
            if (row > 0) {
                sheet.line(0, at, sheet.width(), at, Ink.RULE, 0.7);
            }
            row(rows.get(row), at);
            at += heights.get(row);
        }
        return sheet.drawing(bottom + Panel.BELOW + 2);
    }

    private double keys(double top) {
        double at = top;
        for (String condition : of.conditions()) {
            String text = of.title(condition);
            if (of.conditions().size() > 1) {
                text = ExerciseRow.letter(of, condition) + "  " + text;
            }
            at = sheet.key(0, at, sheet.width(), ExerciseRow.shape(of, condition), Ink.INK, text);
        }
        String means =
                "an upright stroke is the "
                        + (of.isRatio() ? "geometric mean" : "mean")
                        + "; later rounds lie lower on a line";
        if (rows.stream().anyMatch(ExerciseRow::isBounded)) {
            at =
                    sheet.key(
                            0,
                            at,
                            sheet.width(),
                            Mark.Shape.RIGHT,
                            Ink.INK,
                            "at least: the counter could not read so few particles");
        }
        return sheet.paragraph(15, at, sheet.width() - 15, 2, Mark.Weight.NORMAL, Ink.QUIET, means);
    }

    private double height(ExerciseRow row) {
        double lines = of.conditions().size() * LINE;
        double title = title(row).size() * Sheet.TEXT * Letters.LEADING;
        return sheet.isWide() ? Math.max(lines, title) + 10 : lines + title + 10;
    }

    private List<String> title(ExerciseRow row) {
        return Letters.lines(
                row.title(),
                Sheet.TEXT,
                row.weight(),
                sheet.isWide() ? BESIDE - 12 : sheet.width(),
                sheet.isWide() ? 3 : 2);
    }

    private void rules(double top, double bottom) {
        List<Ticks.Tick> ticks = x.across(Sheet.SMALL);
        for (Ticks.Tick tick : ticks) {
            double at = x.at(tick.value());
            sheet.line(at, top, at, bottom, Ink.RULE, 0.7);
            number(at, bottom + 4 + Sheet.SMALL, tick.label());
        }
        sheet.line(x.from(), bottom, x.to(), bottom, Ink.QUIET, 1);
        Optional<Double> level = of.required().stream().boxed().findFirst();
        if (level.isPresent()) {
            double at = x.at(level.get());
            sheet.dashed(at, top, at, bottom, Ink.MARK);
            String words = "required " + Digits.three(level.get());
            double half = Panel.width(words) / 2;
            double held = Math.max(half, Math.min(sheet.width() - half, at));
            sheet.words(held, top - 4, Mark.Anchor.MIDDLE, Ink.MARK, words);
        } else if (bottom - top > TALL) {
            ticks.forEach(tick -> number(x.at(tick.value()), top - 4, tick.label()));
        }
    }

    private void number(double at, double down, String label) {
        double half = Panel.width(label) / 2;
        double held = Math.max(half, Math.min(sheet.width() - half, at));
        sheet.words(held, down, Mark.Anchor.MIDDLE, Ink.QUIET, label);
    }

    private void row(ExerciseRow row, double top) {
        double words = top + 3;
        for (String line : title(row)) {
            sheet.put(
                    new Mark.Words(
                            0,
                            words + Sheet.TEXT * Letters.ASCENT,
                            Sheet.TEXT,
                            Mark.Anchor.START,
                            row.weight(),
                            Ink.INK,
                            line));
            words += Sheet.TEXT * Letters.LEADING;
        }
        double at = (sheet.isWide() ? top : words - 3) + 4 + LINE / 2;
        for (String condition : of.conditions()) {
            line(row, condition, at);
            at += LINE;
        }
    }

    private void line(ExerciseRow row, String condition, double y) {
        if (of.conditions().size() > 1) {
            sheet.words(
                    x.from() - 5,
                    y + Sheet.SMALL * 0.36,
                    Mark.Anchor.END,
                    Ink.QUIET,
                    ExerciseRow.letter(of, condition));
        }
        List<ExerciseRow.Dot> dots = row.of(condition);
        double size = dots.size() > 16 ? 2 : 3;
        for (ExerciseRow.Dot dot : dots) {
            double down = y + SPREAD * (dot.share() - 0.5);
            double across = x.at(dot.value());
            if (dot.atLeast()) {
                sheet.line(across, down, across + size * 2.6, down, Ink.INK, 1);
                sheet.sign(across + size * 2.6, down, size * 0.9, Mark.Shape.RIGHT, Ink.INK);
            }
            sheet.sign(across, down, size, ExerciseRow.shape(of, condition), Ink.INK);
        }
        if (dots.size() > 1) {
            double mean = x.at(row.mean(condition, of.isRatio()));
            sheet.line(mean, y - LINE / 2 + 0.5, mean, y + LINE / 2 - 0.5, Ink.MARK, 1.8);
        }
    }

    private static String words(Plotting of) {
        List<String> sentences = new ArrayList<>();
        sentences.add(
                of.heading(of.isRatio())
                        + ", to the right; a row for each exercise and one for the whole donning, in it a line for each condition with a sign for"
                        + " each donning that counts.");
        of.required()
                .ifPresent(
                        level ->
                                sentences.add(
                                        "A dashed line marks the level required, "
                                                + of.number(level, false)
                                                + "."));
        ExerciseRow.all(of).forEach(row -> sentences.add(row.words(of)));
        return String.join(" ", sentences);
    }
}
