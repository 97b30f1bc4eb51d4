package rigside.report;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;

/**
 * Drawings as SVG: within a page, where its style gives the inks, or as a file of its own. Text
 * stays text.
 */
final class Svg implements Mark.Cases<String> {
    /** Found on most machines, or stood in for by what is alike. */
    static final List<String> FONTS =
            List.of("Arial", "Helvetica", "Liberation Sans", "Nimbus Sans", "DejaVu Sans");

    /** Around the drawing in a file of its own. */
    static final double MARGIN = 12;

    private static final String NAMESPACE = "http://www.w3.org/2000/svg";

    /** What an attribute {@code fill} or {@code stroke} becomes for an ink. */
    private interface Inks {
        String of(String attribute, Ink ink);
    }

    private final Inks inks;

    private Svg(Inks inks) {
        this.inks = inks;
    }

    /** A file of its own, on white. */
    static String file(Figure figure) {
        String fonts = FONTS.stream().map(Svg::quoted).collect(Collectors.joining(", "));
        return file(figure, fonts + ", sans-serif");
    }

    private static String quoted(String font) {
        return font.contains(" ") ? "'" + font + "'" : font;
    }

    /**
     * The same in other letters.
     *
     * @param fonts names of families in the order of preference, as CSS lists them
     */
    static String file(Figure figure, String fonts) {
        Drawing drawing = figure.wide();
        double width = drawing.width() + 2 * MARGIN;
        double height = drawing.height() + 2 * MARGIN;
        Svg svg = new Svg((attribute, ink) -> attribute + "=\"" + ink.light() + "\"");
        return "<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n"
                + "<svg xmlns=\""
                + NAMESPACE
                + "\" width=\""
                + number(width)
                + "\" height=\""
                + number(height)
                + "\" font-family=\""
                + fonts
                + "\""
                + svg.rest(
                        figure,
                        drawing,
                        "file",
                        MARGIN,
                        new Mark.Box(-MARGIN, -MARGIN, width, height, Ink.PAPER).match(svg));
    }

    /** An element of an HTML page. */
    static String inline(Figure figure, Drawing drawing, String kind) {
        Svg svg =
                new Svg(
                        (attribute, ink) ->
                                "class=\"" + attribute.charAt(0) + "-" + ink.word() + "\"");
        return "<svg class=\"" + kind + "\"" + svg.rest(figure, drawing, kind, 0, "");
    }

    private String rest(Figure figure, Drawing drawing, String kind, double margin, String sheet) {
        String title = figure.name() + "-" + kind + "-title";
        String words = figure.name() + "-" + kind + "-words";
        return " viewBox=\""
                + pair(-margin, -margin)
                + " "
                + pair(drawing.width() + 2 * margin, drawing.height() + 2 * margin)
                + "\" role=\"img\" aria-labelledby=\""
                + title
                + " "
                + words
                + "\">\n<title id=\""
                + title
                + "\">"
                + Html.escaped(figure.title())
                + "</title>\n<desc id=\""
                + words
                + "\">"
                + Html.escaped(figure.description())
                + "</desc>\n"
                + sheet
                + drawing.marks().stream()
                        .map(mark -> mark.match(this))
                        .collect(Collectors.joining())
                + "</svg>\n";
    }

    @Override
    public String line(Mark.Line mark) {
        String dashes = mark.stroke() == Mark.Stroke.DASHED ? " stroke-dasharray=\"4 3\"" : "";
        return "<path d=\"M"
                + pair(mark.x1(), mark.y1())
                + "L"
                + pair(mark.x2(), mark.y2())
                + "\" "
                + stroke(mark.ink(), mark.width())
                + dashes
                + "/>\n";
    }

    @Override
    public String curve(Mark.Curve mark) {
        String points =
                mark.points().stream()
                        .map(point -> pair(point.x(), point.y()))
                        .collect(Collectors.joining(" "));
        return "<polyline points=\""
                + points
                + "\" "
                + stroke(mark.ink(), mark.width())
                + " fill=\"none\" stroke-linejoin=\"round\"/>\n";
    }

    private String stroke(Ink ink, double width) {
        return inks.of("stroke", ink) + " stroke-width=\"" + number(width) + "\"";
    }

    @Override
    public String box(Mark.Box mark) {
        return "<rect x=\""
                + number(mark.x())
                + "\" y=\""
                + number(mark.y())
                + "\" width=\""
                + number(mark.width())
                + "\" height=\""
                + number(mark.height())
                + "\" "
                + inks.of("fill", mark.ink())
                + "/>\n";
    }

    @Override
    public String sign(Mark.Sign mark) {
        double r = mark.size();
        return switch (mark.shape()) {
            case RING -> ring(mark, Math.min(1.4, r * 0.4));
            case DISC -> circle(mark, r, mark.ink());
            case SQUARE -> shape(mark, "M-1-1H1V1H-1Z", r * 0.9);
            case DIAMOND -> shape(mark, "M0-1L1 0L0 1L-1 0Z", r * 1.25);
            case UP -> shape(mark, "M0-1L1 1H-1Z", r);
            case DOWN -> shape(mark, "M0 1L1-1H-1Z", r);
            case RIGHT -> shape(mark, "M1 0L-1 1V-1Z", r);
            case CROSS -> cross(mark, r);
        };
    }

    private String circle(Mark.Sign mark, double radius, Ink ink) {
        return "<circle "
                + centre(mark)
                + " r=\""
                + number(radius)
                + "\" "
                + inks.of("fill", ink)
                + "/>\n";
    }

    private String ring(Mark.Sign mark, double thick) {
        double radius = mark.size() - thick / 2;
        return circle(mark, radius, Ink.PAPER)
                + "<circle "
                + centre(mark)
                + " r=\""
                + number(radius)
                + "\" fill=\"none\" "
                + stroke(mark.ink(), thick)
                + "/>\n";
    }

    private static String centre(Mark.Sign mark) {
        return "cx=\"" + number(mark.x()) + "\" cy=\"" + number(mark.y()) + "\"";
    }

    private String shape(Mark.Sign mark, String path, double scale) {
        return "<path transform=\"translate("
                + number(mark.x())
                + " "
                + number(mark.y())
                + ") scale("
                + number(scale)
                + ")\" d=\""
                + path
                + "\" "
                + inks.of("fill", mark.ink())
                + "/>\n";
    }

    private String cross(Mark.Sign mark, double r) {
        return "<path d=\"M"
                + pair(mark.x() - r, mark.y() - r)
                + "L"
                + pair(mark.x() + r, mark.y() + r)
                + "M"
                + pair(mark.x() - r, mark.y() + r)
                + "L"
                + pair(mark.x() + r, mark.y() - r)
                + "\" "
                + stroke(mark.ink(), 1.4)
                + "/>\n";
    }

    @Override
    public String words(Mark.Words mark) {
        String anchor =
                mark.anchor() == Mark.Anchor.START
                        ? ""
                        : " text-anchor=\"" + mark.anchor().name().toLowerCase(Locale.ROOT) + "\"";
        String weight = mark.weight() == Mark.Weight.BOLD ? " font-weight=\"bold\"" : "";
        return "<text x=\""
                + number(mark.x())
                + "\" y=\""
                + number(mark.y())
                + "\" font-size=\""
                + number(mark.size())
                + "\""
                + anchor
                + weight
                + " "
                + inks.of("fill", mark.ink())
                + ">"
                + Directions.isolatedInDrawing(Legible.of(mark.text()), Html::marked)
                + "</text>\n";
    }

    private static String pair(double x, double y) {
        return number(x) + " " + number(y);
    }

    /** Two places are finer than any screen or printer shows. */
    private static String number(double value) {
        BigDecimal rounded = BigDecimal.valueOf(value).setScale(2, RoundingMode.HALF_EVEN);
        return rounded.signum() == 0 ? "0" : rounded.stripTrailingZeros().toPlainString();
    }
}
