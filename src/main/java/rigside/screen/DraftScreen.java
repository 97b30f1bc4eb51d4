package rigside.screen;

import com.googlecode.lanterna.TerminalSize;
import com.googlecode.lanterna.graphics.TextGraphics;
import java.util.ArrayList;
import java.util.List;
import rigside.screen.DraftView.Mode;

/** The picture of a draft. */
public final class DraftScreen {
    /** From this width on the answers so far stand beside the question. */
    private static final int WIDE = 120;

    /** Longer lines are hard to find back in. */
    private static final int READABLE = 100;

    private final DraftView view;
    private final int columns;
    private final int rows;

    private DraftScreen(DraftView view, TerminalSize size) {
        this.view = view;
        this.columns = size.getColumns();
        this.rows = size.getRows();
    }

    /** Draws the whole picture, as large as {@code graphics}. */
    public static void draw(TextGraphics graphics, DraftView view) {
        new Painter(graphics, view.style()).paint(of(view, graphics.getSize()).lines());
    }

    /** How far what is read goes, and how much of it there is room for. */
    public static View.Seen seen(DraftView view, TerminalSize size) {
        return of(view, size).seen();
    }

    private static Picture of(DraftView view, TerminalSize size) {
        return TooSmall.is(size)
                ? new Picture(TooSmall.lines(size), TooSmall.SEEN)
                : new DraftScreen(view, size).picture();
    }

    private Picture picture() {
        if (view.mode() == Mode.RESULT) {
            List<Line> body = Scene.stack(ask(readable()), why(readable()));
            return Picture.scrolled(rows, top(), indented(body), bottom(), view.chosen());
        }
        if (columns < WIDE || view.answered().isEmpty()) {
            return Picture.fixed(rows, top(), indented(question(readable())), bottom(), signs());
        }
        int left = columns * 3 / 5;
        List<Line> body =
                Line.beside(
                        indented(question(Math.min(READABLE, left - 4))),
                        left,
                        answered(columns - left - 2),
                        signs().cut());
        return Picture.fixed(rows, top(), body, bottom(), signs());
    }

    private int readable() {
        return Math.min(READABLE, columns - 4);
    }

    private List<Line> question(int width) {
        return Scene.stack(ask(width), answer(width), why(width));
    }

    private List<Line> ask(int width) {
        return Wrap.lines(Tone.STRONG, view.ask(), width);
    }

    private List<Line> why(int width) {
        List<String> parted = new ArrayList<>();
        for (String each : view.why()) {
            if (view.mode() != Mode.RESULT && !parted.isEmpty()) {
                parted.add("");
            }
            parted.add(each);
        }
        return Paragraphs.of(parted, width);
    }

    private List<Line> answer(int width) {
        if (view.mode() == Mode.LINE) {
            return List.of(Footer.typed(Line.of(Tone.STRONG, "> "), view.typed(), width));
        }
        List<Line> lines = new ArrayList<>();
        for (int at = 0; at < view.options().size(); at++) {
            DraftView.Option option = view.options().get(at);
            boolean here = at == view.chosen();
            String box = view.mode() == Mode.SEVERAL ? option.ticked() ? "[x] " : "[ ] " : "";
            Line line =
                    Line.of(here ? signs().here() + " " : "  ")
                            .plus(box + option.label())
                            .cut(width, signs().cut());
            lines.add(here ? line.in(Tone.INVERSE) : line);
        }
        return List.copyOf(lines);
    }

    /** The last answers that there is room for. */
    private List<Line> answered(int width) {
        int room = Picture.room(rows, top(), bottom()) - 1;
        List<String> all = view.answered();
        List<String> last = all.subList(Math.max(0, all.size() - Math.max(0, room)), all.size());
        List<Line> lines = new ArrayList<>();
        if (!last.isEmpty()) {
            lines.add(Line.of(Tone.STRONG, "So far"));
        }
        last.forEach(each -> lines.add(Line.of(Tone.QUIET, each).cut(width, signs().cut())));
        return List.copyOf(lines);
    }

    private List<Line> top() {
        return List.of(
                Header.strip("Drafting a protocol", view.notice() + " ", columns, signs()),
                Line.of(
                        Tone.QUIET,
                        " Nothing is written until you save it. Not a certified fit test."),
                Line.BLANK);
    }

    private List<Line> bottom() {
        List<Line> lines = new ArrayList<>();
        lines.add(Line.of(Tone.QUIET, signs().light().repeat(columns)));
        lines.addAll(
                view.message().isEmpty()
                        ? List.of(Line.BLANK)
                        : Wrap.hanging(
                                Line.of(Tone.WARN, " > "),
                                Tone.STRONG,
                                view.message(),
                                columns - 1));
        List<KeyLine.Named> keys =
                DraftKeys.of(view).stream()
                        .filter(key -> !key.label().isEmpty())
                        .map(key -> new KeyLine.Named(key.label(), key.help()))
                        .toList();
        KeyLine.lines(keys, columns - 2).forEach(line -> lines.add(line.indented(1)));
        return List.copyOf(lines);
    }

    private static List<Line> indented(List<Line> lines) {
        return lines.stream().map(line -> line.indented(2)).toList();
    }

    private Glyphs signs() {
        return Glyphs.of(view.style());
    }
}
