package rigside.report;

import java.util.List;
import java.util.Optional;

/** The panels of one figure on a sheet: by condition, in rows, the key below them. */
final class PressureSheet {
    private static final double GUTTER = 24;

    /** Right of the last panel: half of a number that stands at its edge. */
    private static final double EDGE = 14;

    private static final double HIGH = 104;

    /** What stands below a panel: the seconds. */
    private static final double BELOW = 22;

    /** A pull is one line among few, breaths are many in one panel. */
    private static final double PULL = 1.8;

    private static final double BREATHS = 1;

    private final PressureWords words;
    private final PressureScale scale;
    private final PressureRows rows;
    private final Sheet sheet;

    PressureSheet(PressureWords words, double width) {
        this.words = words;
        this.scale = words.scale();
        this.sheet = new Sheet(width);
        this.rows = PressureRows.of(words.all(), sheet.isWide());
    }

    Drawing drawing() {
        double bottom =
                sheet.paragraph(0, 0, sheet.width(), 3, Mark.Weight.BOLD, Ink.INK, words.heading());
        for (String condition : words.of().conditions()) {
            List<PressureFollowed> own =
                    words.all().stream()
                            .filter(each -> each.donning().condition().equals(condition))
                            .toList();
            if (!own.isEmpty()) {
                bottom = condition(words.of().title(condition), own, bottom + 6);
            }
        }
        return sheet.drawing(new PressureKey(sheet, words).draw(bottom + 6));
    }

    private double condition(String title, List<PressureFollowed> own, double top) {
        double bottom = sheet.paragraph(0, top, sheet.width(), 2, Mark.Weight.BOLD, Ink.INK, title);
        double margin = Panel.margin(suction(0), PressurePanel.TARGET);
        double gutters = GUTTER * (rows.columns() - 1);
        double wide = (sheet.width() - margin - EDGE - gutters) / rows.columns();
        for (List<PressureFollowed> row : rows.rows(own)) {
            bottom = row(row, margin, bottom + 4, wide);
        }
        return bottom;
    }

    private double row(List<PressureFollowed> row, double margin, double top, double wide) {
        double upper = top + lines(row, wide) * Sheet.TEXT * Letters.LEADING + 4;
        for (int at = 0; at < row.size(); at++) {
            double left = margin + at * (wide + GUTTER);
            String label = PressureWords.label(row.get(at));
            sheet.paragraph(left, top, wide, 2, Mark.Weight.NORMAL, Ink.INK, label);
            Axis seconds = scale.seconds();
            Axis x = new Axis(false, seconds.low(), seconds.high(), left, left + wide);
            panel(row.get(at), new PressurePanel(sheet, scale, x, suction(upper)), at == 0);
        }
        return upper + HIGH + BELOW;
    }

    private Axis suction(double top) {
        return new Axis(false, scale.suction().low(), scale.suction().high(), top + HIGH, top);
    }

    private static int lines(List<PressureFollowed> row, double wide) {
        return row.stream()
                .map(PressureWords::label)
                .map(label -> Letters.lines(label, Sheet.TEXT, Mark.Weight.NORMAL, wide, 2))
                .mapToInt(List::size)
                .max()
                .orElse(1);
    }

    private void panel(PressureFollowed each, PressurePanel panel, boolean isFirst) {
        Optional<PressureScale.Band> band = each.trials().map(scale::band);
        panel.ground(band);
        if (isFirst) {
            panel.numbers(band);
        }
        PressureTrace trace = each.trace(words.traces());
        PressureFollowed.Part part = each.part(trace.window());
        panel.curve(trace, part, each.counts(), each.trials().isPresent() ? PULL : BREATHS);
        if (each.trials().isPresent()) {
            panel.press(0);
            panel.press(trace.window().seconds());
        } else {
            each.value(words.of()).ifPresent(panel::captured);
        }
        if (!each.counts()) {
            panel.struck();
        } else if (each.trials().isPresent()) {
            panel.part(part);
        }
    }
}
