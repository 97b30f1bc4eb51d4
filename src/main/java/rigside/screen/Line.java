package rigside.screen;

import java.util.ArrayList;
import java.util.List;

/**
 * One line of a picture.
 *
 * @param spans its pieces from the left
 */
record Line(List<Span> spans) {
    static final Line BLANK = new Line(List.of());

    Line {
        spans = List.copyOf(spans);
    }

    /**
     * A piece in one tone.
     *
     * @param text made clean, so that nothing else ever reaches a terminal
     */
    record Span(String text, Tone tone) {
        Span {
            text = Clean.text(text);
        }
    }

    static Line of(String text) {
        return of(Tone.PLAIN, text);
    }

    static Line of(Tone tone, String text) {
        return new Line(List.of(new Span(text, tone)));
    }

    Line plus(Tone tone, String text) {
        return plus(of(tone, text));
    }

    Line plus(String text) {
        return plus(Tone.PLAIN, text);
    }

    Line plus(Line more) {
        List<Span> all = new ArrayList<>(spans);
        all.addAll(more.spans);
        return new Line(all);
    }

    /** Its width in columns. */
    int width() {
        return spans.stream().mapToInt(span -> Clean.width(span.text())).sum();
    }

    /** The line with spaces before it. */
    Line indented(int columns) {
        return columns <= 0 ? this : Line.of(" ".repeat(columns)).plus(this);
    }

    /** The line made at least {@code columns} wide, with spaces after it. */
    Line padded(int columns, Tone tone) {
        int missing = columns - width();
        return missing <= 0 ? this : plus(tone, " ".repeat(missing));
    }

    /** The line in one tone. */
    Line in(Tone tone) {
        return new Line(spans.stream().map(span -> new Span(span.text(), tone)).toList());
    }

    /** As much of the line as fits; where something is lost, {@code sign} stands at the end. */
    Line cut(int columns, String sign) {
        if (width() <= columns) {
            return this;
        }
        int room = columns - Clean.width(sign);
        List<Span> kept = new ArrayList<>();
        for (Span span : spans) {
            String part = Wrap.head(span.text(), room);
            kept.add(new Span(part, span.tone()));
            room -= Clean.width(part);
            if (part.length() < span.text().length()) {
                kept.add(new Span(sign, span.tone()));
                break;
            }
        }
        return new Line(kept);
    }

    /** One block below the other. */
    static List<Line> stacked(List<Line> first, List<Line> second) {
        List<Line> lines = new ArrayList<>(first);
        lines.addAll(second);
        return List.copyOf(lines);
    }

    /** Two blocks side by side; the right one begins at {@code column}. */
    static List<Line> beside(List<Line> left, int column, List<Line> right, String sign) {
        List<Line> lines = new ArrayList<>();
        for (int at = 0; at < Math.max(left.size(), right.size()); at++) {
            Line first = at < left.size() ? left.get(at) : BLANK;
            Line second = at < right.size() ? right.get(at) : BLANK;
            lines.add(
                    second.spans().isEmpty()
                            ? first
                            : first.cut(column - 1, sign).padded(column, Tone.PLAIN).plus(second));
        }
        return List.copyOf(lines);
    }
}
