package rigside.report;

import com.github.weisj.jsvg.SVGDocument;
import com.github.weisj.jsvg.parser.DocumentLimits;
import com.github.weisj.jsvg.parser.LoaderContext;
import com.github.weisj.jsvg.parser.SVGLoader;
import com.github.weisj.jsvg.parser.resources.ResourcePolicy;
import com.github.weisj.jsvg.renderer.NullPlatformSupport;
import com.github.weisj.jsvg.view.ViewBox;
import java.awt.Color;
import java.awt.Font;
import java.awt.Graphics2D;
import java.awt.GraphicsEnvironment;
import java.awt.RenderingHints;
import java.awt.font.FontRenderContext;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import javax.imageio.ImageIO;

/** A figure as a PNG picture: its SVG file drawn on white. */
final class Png {
    private Png() {}

    /** Dots for one unit: more than 1600 across, for 190 mm at over 214 dots an inch. */
    private static final double SCALE = 2;

    /** The usual limits, but as many marks as it takes: the file is our own. */
    private static final DocumentLimits OF_OURS =
            new DocumentLimits(
                    DocumentLimits.DEFAULT_MAX_NESTING_DEPTH,
                    DocumentLimits.DEFAULT_MAX_USE_NESTING_DEPTH,
                    Integer.MAX_VALUE);

    private static final char FIRM_SPACE = '\u00A0';

    private static final String HEADLESS = "java.awt.headless";

    private static final String NO_FONTS =
            "no PNG can be drawn: this machine has no fonts, or a Java without graphics\n"
                    + "install a font (DejaVu or Liberation, with fontconfig), or take the SVG files";

    private static final Map<RenderingHints.Key, Object> FINE =
            Map.of(
                    RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON,
                    RenderingHints.KEY_TEXT_ANTIALIASING, RenderingHints.VALUE_TEXT_ANTIALIAS_ON,
                    RenderingHints.KEY_FRACTIONALMETRICS, RenderingHints.VALUE_FRACTIONALMETRICS_ON,
                    RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);

    /**
     * Java's graphics are told that there is no display: none is needed, and one that does not
     * answer would stop them.
     *
     * @throws IOException if it cannot be drawn; the message says why, and what to do on a line of
     *     its own
     */
    static byte[] of(Figure figure) throws IOException {
        if (System.getProperty(HEADLESS) == null) {
            System.setProperty(HEADLESS, "true");
        }
        try {
            return drawn(figure, font(figure));
        } catch (OutOfMemoryError trouble) {
            throw new IOException(
                    figure.name()
                            + ": too high a picture for the memory there is\ntake its SVG file",
                    trouble);
        }
    }

    /**
     * The first of the fonts asked for that is here and has all letters of the figure; otherwise
     * the one that Java puts together from all there are. Where Java's graphics or all fonts are
     * missing they throw errors of many kinds as they are first used, so they are used here.
     */
    private static String font(Figure figure) throws IOException {
        try {
            List<String> here =
                    List.of(
                            GraphicsEnvironment.getLocalGraphicsEnvironment()
                                    .getAvailableFontFamilyNames(Locale.ROOT));
            String font =
                    Svg.FONTS.stream()
                            .filter(here::contains)
                            .filter(each -> hasLettersOf(figure, each))
                            .findFirst()
                            .orElse(Font.SANS_SERIF);
            double wide =
                    new Font(font, Font.PLAIN, 12)
                            .getStringBounds("words", new FontRenderContext(null, true, true))
                            .getWidth();
            if (!here.isEmpty() && wide > 0) {
                return font;
            }
        } catch (RuntimeException | Error trouble) {
            throw new IOException(NO_FONTS, trouble);
        }
        throw new IOException(NO_FONTS);
    }

    private static boolean hasLettersOf(Figure figure, String font) {
        Font letters = new Font(font, Font.PLAIN, 12);
        return figure.wide().marks().stream()
                .filter(Mark.Words.class::isInstance)
                .map(words -> Legible.of(((Mark.Words) words).text()))
                .allMatch(words -> letters.canDisplayUpTo(words) < 0);
    }

    private static byte[] drawn(Figure figure, String font) throws IOException {
        Drawing drawing = figure.wide();
        int width = (int) Math.ceil((drawing.width() + 2 * Svg.MARGIN) * SCALE);
        int height = (int) Math.ceil((drawing.height() + 2 * Svg.MARGIN) * SCALE);
        BufferedImage image = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
        Graphics2D graphics = image.createGraphics();
        try {
            graphics.setColor(Color.WHITE);
            graphics.fillRect(0, 0, width, height);
            graphics.setRenderingHints(FINE);
            read(Svg.file(asSeen(figure), font))
                    .renderWithPlatform(
                            NullPlatformSupport.INSTANCE, graphics, new ViewBox(width, height));
        } finally {
            graphics.dispose();
        }
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        if (!ImageIO.write(image, "png", bytes)) {
            throw new IllegalStateException("no writer of PNG");
        }
        return bytes.toByteArray();
    }

    /**
     * The library knows of no direction but one, and drops a space that follows the first piece of
     * a line where that is an element of its own: so all spaces are such as cannot be dropped.
     */
    private static Figure asSeen(Figure figure) {
        Drawing wide = figure.wide();
        List<Mark> marks = wide.marks().stream().map(Png::asSeen).toList();
        Drawing seen = new Drawing(wide.width(), wide.height(), marks);
        return new Figure(figure.name(), figure.title(), figure.description(), seen, seen);
    }

    private static Mark asSeen(Mark mark) {
        return mark instanceof Mark.Words words
                ? new Mark.Words(
                        words.x(),
                        words.y(),
                        words.size(),
                        words.anchor(),
                        words.weight(),
                        words.ink(),
                        Directions.asSeen(Legible.of(words.text())).replace(' ', FIRM_SPACE))
                : mark;
    }

    private static SVGDocument read(String svg) {
        LoaderContext nothingElse =
                LoaderContext.builder()
                        .externalResourcePolicy(ResourcePolicy.DENY_ALL)
                        .documentLimits(OF_OURS)
                        .build();
        SVGDocument document =
                new SVGLoader()
                        .load(
                                new ByteArrayInputStream(svg.getBytes(StandardCharsets.UTF_8)),
                                null,
                                nothingElse);
        if (document == null) {
            throw new IllegalStateException("an SVG file of ours cannot be read");
        }
        return document;
    }
}
