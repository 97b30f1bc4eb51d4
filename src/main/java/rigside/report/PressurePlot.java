package rigside.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.DoubleStream;
import rigside.measure.Quantity;
import rigside.measure.Unit;
import rigside.protocol.Step;

/**
 * The pressure over time as the instrument gave it: a panel for each inhalation or exercise, by
 * condition and round, all on the same axes.
 */
final class PressurePlot {
    private static final double GUTTER = 24;

    /** Beside one another on a wide sheet. */
    private static final int MOST_COLUMNS = 4;

    /** Right of the last panel: half of a number that stands at its edge. */
    private static final double EDGE = 14;

    private static final double HIGH = 104;

    /** What stands below a panel: the seconds. */
    private static final double BELOW = 22;

    private final Plotting of;
    private final PressureTraces traces;
    private final List<PressureFollowed> followed;
    private final PressureWords words;
    private final Unit unit;
    private final Sheet sheet;
    private final Axis suction;
    private final Axis seconds;

    private PressurePlot(Plotting of, PressureTraces traces, Drawn drawn, double width) {
        this.of = of;
        this.traces = traces;
        this.followed = drawn.followed();
        this.unit = unit(of, drawn.followed());
        this.words = new PressureWords(of, traces, followed, unit, drawn.left());
        this.sheet = new Sheet(width);
        this.suction =
                Axis.holding(
                        DoubleStream.concat(
                                        DoubleStream.of(0),
                                        drawn.all().stream().flatMapToDouble(this::numbers))
                                .toArray(),
                        false,
                        0,
                        1);
        this.seconds =
                new Axis(
                        false,
                        drawn.all().stream()
                                .mapToDouble(each -> trace(each).window().begin())
                                .min()
                                .orElseThrow(),
                        drawn.all().stream()
                                .mapToDouble(each -> trace(each).window().end())
                                .max()
                                .orElseThrow(),
                        0,
                        1);
    }

    /**
     * What one figure shows.
     *
     * @param followed its panels
     * @param all those of every figure of the measure, which share their axes
     * @param left how many have readings and are in no figure; said in the last one
     */
    private record Drawn(List<PressureFollowed> followed, List<PressureFollowed> all, int left) {}

    /** As many as it takes; none where nothing may be shown or no readings are there. */
    static List<Figure> of(Material of, String measure) {
        return Plots.of(of.state(), of.shown(), measure)
                .map(plotting -> figures(of, plotting))
                .orElse(List.of());
    }

    /** What to say where an instrument followed the pressure and its readings are not there. */
    static Optional<String> missing(Material of, String measure) {
        List<PressureFollowed> all =
                Plots.of(of.state(), of.shown(), measure)
                        .map(plotting -> PressureFollowed.all(of, plotting))
                        .orElse(List.of());
        long without =
                all.stream()
                        .filter(each -> of.pressure().of(each.entry().number()).isEmpty())
                        .count();
        if (without == 0) {
            return Optional.empty();
        }
        return Optional.of(
                without == all.size()
                        ? "No pressure over time: its raw readings are not there."
                        : "Pressure over time: of "
                                + without
                                + " of "
                                + all.size()
                                + " the raw readings are not there.");
    }

    private static List<Figure> figures(Material of, Plotting plotting) {
        List<PressureFollowed> all =
                PressureFollowed.all(of, plotting).stream()
                        .filter(each -> of.pressure().of(each.entry().number()).isPresent())
                        .toList();
        PressurePages pages = PressurePages.of(all);
        List<Figure> figures = new ArrayList<>();
        for (List<PressureFollowed> page : pages.pages()) {
            boolean last = figures.size() == pages.pages().size() - 1;
            Drawn drawn = new Drawn(page, all, last ? pages.left() : 0);
            PressurePlot narrow = new PressurePlot(plotting, of.pressure(), drawn, Drawing.NARROW);
            PressurePlot wide = new PressurePlot(plotting, of.pressure(), drawn, Drawing.WIDE);
            String number = figures.isEmpty() ? "" : "-" + (figures.size() + 1);
            figures.add(
                    new Figure(
                            Plots.name(plotting, "pressure" + number),
                            plotting.measure().title()
                                    + ": pressure over time, "
                                    + narrow.words.rounds(),
                            narrow.words.all(),
                            narrow.drawing(),
                            wide.drawing()));
        }
        return figures;
    }

    private static Unit unit(Plotting of, List<PressureFollowed> followed) {
        return followed.get(0)
                .trials()
                .map(step -> step.target().unit())
                .orElse(of.measure().unit());
    }

    private PressureTrace trace(PressureFollowed each) {
        return traces.of(each.entry().number()).orElseThrow();
    }

    private double perPascal() {
        return new Quantity(1, Unit.PASCAL).in(unit).value();
    }

    private DoubleStream numbers(PressureFollowed each) {
        PressureTrace trace = trace(each);
        DoubleStream seen =
                DoubleStream.of(trace.lowest() * perPascal(), trace.highest() * perPascal());
        return DoubleStream.concat(
                seen,
                each.trials()
                        .map(this::band)
                        .map(band -> DoubleStream.of(band.low(), band.high()))
                        .orElse(DoubleStream.empty()));
    }

    private PressurePanel.Band band(Step.Trials step) {
        double target = step.target().in(unit).value();
        double off = step.tolerance().orElse(0) * target;
        return new PressurePanel.Band(target - off, target, target + off);
    }

    private Drawing drawing() {
        double bottom =
                sheet.paragraph(0, 0, sheet.width(), 3, Mark.Weight.BOLD, Ink.INK, words.heading());
        for (String condition : of.conditions()) {
            List<PressureFollowed> own =
                    followed.stream()
                            .filter(each -> each.donning().condition().equals(condition))
                            .toList();
            if (!own.isEmpty()) {
                bottom = condition(condition, own, bottom + 6);
            }
        }
        return sheet.drawing(keys(bottom + 6));
    }

    private double condition(String condition, List<PressureFollowed> own, double top) {
        double bottom =
                sheet.paragraph(
                        0, top, sheet.width(), 2, Mark.Weight.BOLD, Ink.INK, of.title(condition));
        double margin =
                Panel.margin(
                        new Axis(false, suction.low(), suction.high(), HIGH, 0),
                        PressurePanel.TARGET);
        int columns = columns();
        double wide = (sheet.width() - margin - EDGE - GUTTER * (columns - 1)) / columns;
        for (List<PressureFollowed> row : rows(own)) {
            double from = bottom + 4;
            double upper = from + lines(row, wide) * Sheet.TEXT * Letters.LEADING + 4;
            for (int at = 0; at < row.size(); at++) {
                double left = margin + at * (wide + GUTTER);
                Axis x = new Axis(false, seconds.low(), seconds.high(), left, left + wide);
                Axis y = new Axis(false, suction.low(), suction.high(), upper + HIGH, upper);
                label(row.get(at), left, from, wide);
                panel(row.get(at), new PressurePanel(sheet, x, y, perPascal()), at == 0);
            }
            bottom = upper + HIGH + BELOW;
        }
        return bottom;
    }

    /** The most panels of one donning. */
    private int together() {
        Map<Integer, Long> each =
                followed.stream()
                        .collect(
                                Collectors.groupingBy(
                                        one -> one.donning().donning(), Collectors.counting()));
        return each.values().stream().mapToInt(Long::intValue).max().orElse(1);
    }

    /** On a wide sheet a donning is a row of its own, where that makes good rows. */
    private boolean isByDonning() {
        return sheet.isWide()
                && followed.get(0).trials().isPresent()
                && together() > 1
                && together() <= MOST_COLUMNS;
    }

    private int columns() {
        if (followed.get(0).trials().isEmpty()) {
            return sheet.isWide() ? 2 : 1;
        }
        return isByDonning() ? together() : sheet.isWide() ? MOST_COLUMNS : 2;
    }

    private List<List<PressureFollowed>> rows(List<PressureFollowed> own) {
        List<List<PressureFollowed>> rows = new ArrayList<>();
        int donning = 0;
        for (PressureFollowed each : own) {
            List<PressureFollowed> row = rows.isEmpty() ? List.of() : rows.get(rows.size() - 1);
            boolean isFull = row.isEmpty() || row.size() == columns();
            if (isFull || (isByDonning() && each.donning().donning() != donning)) {
                row = new ArrayList<>();
                rows.add(row);
            }
            donning = each.donning().donning();
            row.add(each);
        }
        return rows;
    }

    private static int lines(List<PressureFollowed> row, double wide) {
        return row.stream().mapToInt(each -> label(each, wide).size()).max().orElse(1);
    }

    private static List<String> label(PressureFollowed each, double wide) {
        return Letters.lines(PressureWords.label(each), Sheet.TEXT, Mark.Weight.NORMAL, wide, 2);
    }

    private void label(PressureFollowed each, double left, double top, double wide) {
        sheet.paragraph(left, top, wide, 2, Mark.Weight.NORMAL, Ink.INK, PressureWords.label(each));
    }

    private void panel(PressureFollowed each, PressurePanel panel, boolean isFirst) {
        Optional<PressurePanel.Band> band = each.trials().map(this::band);
        panel.ground(band);
        if (isFirst) {
            panel.numbers(band);
        }
        PressureTrace trace = trace(each);
        PressureFollowed.Part part = each.part(trace.window());
        panel.curve(trace, part, each.counts(), each.trials().isPresent() ? 1.8 : 1);
        if (each.trials().isPresent()) {
            panel.presses(0, trace.window().seconds());
        } else {
            each.value(of).ifPresent(panel::captured);
        }
        if (!each.counts()) {
            panel.struck();
        } else if (each.trials().isPresent()) {
            panel.part(part);
        }
    }

    private double keys(double top) {
        double at = top;
        for (PressureWords.Sign sign : words.key()) {
            at = sign.draw(sheet, at);
        }
        return at;
    }
}
