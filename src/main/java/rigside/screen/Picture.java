package rigside.screen;

import java.util.ArrayList;
import java.util.List;

/**
 * A whole picture: strip, body, bottom lines.
 *
 * @param lines all rows from the top
 * @param seen how far the body's selection or scrolling goes, and how much of it is seen
 */
record Picture(List<Line> lines, View.Seen seen) {
    Picture {
        lines = List.copyOf(lines);
    }

    /** How many rows are left for the body. */
    static int room(int rows, List<Line> top, List<Line> bottom) {
        return Math.max(0, rows - top.size() - bottom.size());
    }

    /** A body that does not scroll; what has no room is cut off, and a sign says so. */
    static Picture fixed(
            int rows, List<Line> top, List<Line> body, List<Line> bottom, Glyphs signs) {
        int room = room(rows, top, bottom);
        List<Line> shown = new ArrayList<>(body.subList(0, Math.min(room, body.size())));
        if (body.size() > room && room > 0) {
            shown.set(room - 1, Line.of(Tone.QUIET, signs.cut() + " more, in a taller window"));
        }
        return stacked(rows, top, shown, bottom, View.Seen.ALL);
    }

    /** A body of which a window is seen, with signs where there is more. */
    static Picture scrolled(
            int rows, List<Line> top, List<Line> body, List<Line> bottom, int first) {
        int room = room(rows, top, bottom);
        int limit = Math.max(0, body.size() - room);
        int from = Math.min(Math.max(0, first), limit);
        List<Line> shown = new ArrayList<>(body.subList(from, Math.min(from + room, body.size())));
        if (from > 0 && !shown.isEmpty()) {
            shown.set(0, Line.of(Tone.QUIET, "  (" + from + " more above: Up)"));
        }
        if (from < limit && !shown.isEmpty()) {
            int below = body.size() - from - room + 1;
            shown.set(shown.size() - 1, Line.of(Tone.QUIET, "  (" + below + " more below: Down)"));
        }
        return stacked(rows, top, shown, bottom, new View.Seen(limit, room, first >= limit));
    }

    /** A list of which the chosen line is always seen. */
    static Picture list(int rows, List<Line> top, List<Line> body, List<Line> bottom, int chosen) {
        int room = room(rows, top, bottom);
        List<Line> shown = Scene.around(body, chosen, room);
        int last = Math.max(0, body.size() - 1);
        return stacked(rows, top, shown, bottom, new View.Seen(last, room, chosen >= last));
    }

    private static Picture stacked(
            int rows, List<Line> top, List<Line> body, List<Line> bottom, View.Seen seen) {
        List<Line> lines = new ArrayList<>(top);
        lines.addAll(body);
        while (lines.size() < rows - bottom.size()) {
            lines.add(Line.BLANK);
        }
        lines.addAll(bottom);
        return new Picture(lines, seen);
    }
}
