package rigside.screen;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.BiFunction;
import java.util.function.IntFunction;
import java.util.stream.IntStream;
import rigside.analysis.DonningValue;
import rigside.analysis.MeasureResult;
import rigside.analysis.Part;
import rigside.protocol.Step;
import rigside.session.Donning;
import rigside.session.Place;
import rigside.session.Procedure;
import rigside.session.State;

/**
 * What one block of a picture is drawn from: the view, and the room the block has.
 *
 * @param columns the width it may take
 * @param rows the height there is; a hint, the frame cuts what is too much
 * @param tallyBeside whether the tally stands beside, so that nothing of it is said here
 * @param size the largest size of big text there is room for, see {@link Big}; at 0 plain letters
 *     say what big text would
 */
record Scene(View view, int columns, int rows, boolean tallyBeside, int size) {

    /** Rows from which on letters of the usual size are small. */
    private static final int VERY_TALL = 45;

    /** Longer lines are hard to find back in. */
    private static final int READABLE = 100;

    /** Columns between two blocks side by side. */
    private static final int BETWEEN = 4;

    /** Rows from which on there is room for more than one thing in big letters. */
    private static final int TALL = 26;

    State state() {
        return view.state();
    }

    Glyphs signs() {
        return view.glyphs();
    }

    boolean isTall() {
        return rows >= TALL;
    }

    /** The trigger as the texts name it. */
    String trigger() {
        return "[" + view.style().trigger().label() + "]";
    }

    <S extends Step> S step(Place place, Class<S> kind) {
        return kind.cast(Procedure.step(state(), place));
    }

    /** The same with another width. */
    Scene columns(int width) {
        return new Scene(view, width, rows, tallyBeside, size);
    }

    /** The same with big text no larger than this. */
    Scene sized(int largest) {
        return new Scene(view, columns, rows, tallyBeside, largest);
    }

    /** What is to be read first. */
    List<Line> big(String text) {
        return size == 0 ? strong(text) : Big.of(text, size, columns, signs());
    }

    /** What is to be read second: smaller, where what comes first is very large. */
    List<Line> lesser(String text) {
        return size == 0 ? strong(text) : Big.of(text, lesser(), columns, signs());
    }

    /** The name of what a clock beside it counts: never larger than it takes to be read. */
    List<Line> name(String text) {
        int most = rows >= VERY_TALL ? Big.USUAL + 1 : Big.USUAL;
        return size == 0 ? strong(text) : Big.of(text, Math.min(lesser(), most), columns, signs());
    }

    /** As large as fits into some rows; strong letters where none does. */
    List<Line> within(String text, int most) {
        for (int large = lesser(); large > 0; large--) {
            List<Line> lines = Big.of(text, large, columns, signs());
            if (lines.size() <= most && Big.fitting(text, large, columns) > 0) {
                return lines;
            }
        }
        return strong(text);
    }

    /**
     * A sentence in letters as large as fit into some rows, and in plain ones too: in large letters
     * it is slow to read near by.
     */
    List<Line> twice(String text, int most) {
        List<Line> plain = strong(text);
        List<Line> large = within(text, most - plain.size() - 1);
        return large.equals(plain) ? plain : stack(large, plain);
    }

    /** Digits to be read from two metres beside what goes before them: never larger than a name. */
    List<Line> digits(String digits, String unit) {
        int most = rows >= VERY_TALL ? Big.USUAL + 1 : Big.USUAL;
        return sized(Math.min(lesser(), most)).big(digits, unit, columns);
    }

    /** The size of what is to be read second. */
    int lesser() {
        return size <= 1 ? size : Math.max(1, size - (size <= Big.USUAL + 1 ? 1 : 2));
    }

    /** Big digits with their unit, in part of the width. */
    List<Line> big(String digits, String unit, int width) {
        return big(digits, unit, digits, width);
    }

    /**
     * Digits as large as {@code widest} could be drawn, so that they keep their size while they
     * change.
     */
    List<Line> big(String digits, String unit, String widest, int width) {
        int room = width - Clean.width(unit) - 1;
        int steady = Math.min(Big.fitting(widest, size, room), Big.fitting(digits, size, room));
        return steady == 0
                ? List.of(Line.of(Tone.BIG, (digits + " " + unit).strip()))
                : Big.of(digits, unit, steady, width, signs());
    }

    /** Seconds still to go, as large as half a minute or a minute and more need. */
    List<Line> clock(double seconds, int width) {
        String digits = Figures.left(seconds);
        boolean minutes = digits.contains(":");
        String widest = digits.length() > 4 ? digits : minutes ? "0:00" : "00";
        return big(digits, minutes ? "min:s" : "s", widest, width);
    }

    List<Line> wrapped(String text) {
        return Wrap.lines(text, Math.min(READABLE, columns));
    }

    List<Line> strong(String text) {
        return Wrap.lines(Tone.STRONG, text, Math.min(READABLE, columns));
    }

    /** Blocks below each other with a blank line between; blocks without lines take none. */
    @SafeVarargs
    static List<Line> stack(List<Line>... blocks) {
        List<Line> lines = new ArrayList<>();
        for (List<Line> block : blocks) {
            if (!lines.isEmpty() && !block.isEmpty()) {
                lines.add(Line.BLANK);
            }
            lines.addAll(block);
        }
        return List.copyOf(lines);
    }

    /**
     * The beginning of a block, and where it is lost, how much more there is.
     *
     * @param key the key that leads to all of it
     */
    static List<Line> cut(List<Line> lines, int room, String key) {
        if (lines.size() <= room || room <= 0) {
            return lines.subList(0, Math.min(Math.max(0, room), lines.size()));
        }
        List<Line> seen = new ArrayList<>(lines.subList(0, room - 1));
        int more = lines.size() - room + 1;
        seen.add(Line.of(Tone.QUIET, "  (" + Texts.count(more, "more line") + ": " + key + ")"));
        return List.copyOf(seen);
    }

    /**
     * As much of a block as there are rows for, with one line of it in sight.
     *
     * @param at the line that must be seen, from 0
     * @param room how many rows the block may take
     */
    static List<Line> around(List<Line> lines, int at, int room) {
        return around(lines.size(), lines::get, at, room);
    }

    /**
     * The same of lines that are drawn only if they are seen.
     *
     * @param count how many there are
     * @param line gives one by its position, from 0
     */
    static List<Line> around(int count, IntFunction<Line> line, int at, int room) {
        if (count <= room || room < 3) {
            return IntStream.range(0, count).mapToObj(line).toList();
        }
        int from = Math.max(0, Math.min(at - room / 3, count - room));
        List<Line> seen = new ArrayList<>();
        IntStream.range(from, from + room).mapToObj(line).forEach(seen::add);
        if (from > 0) {
            seen.set(0, Line.of(Tone.QUIET, "  (" + (from + 1) + " more before)"));
        }
        if (from + room < count) {
            int below = count - from - room + 1;
            seen.set(room - 1, Line.of(Tone.QUIET, "  (" + below + " more after)"));
        }
        return List.copyOf(seen);
    }

    /** Things two a row, each drawn in half of the width; a blank line between rows. */
    <T> List<Line> twoARow(List<T> things, BiFunction<Scene, T, List<Line>> drawn) {
        int half = (columns - BETWEEN) / 2;
        Scene column = columns(half);
        List<Line> lines = new ArrayList<>();
        for (int at = 0; at < things.size(); at += 2) {
            lines.addAll(lines.isEmpty() ? List.of() : List.of(Line.BLANK));
            lines.addAll(
                    Line.beside(
                            drawn.apply(column, things.get(at)),
                            half + BETWEEN,
                            at + 1 < things.size()
                                    ? drawn.apply(column, things.get(at + 1))
                                    : List.of(),
                            signs().cut()));
        }
        return List.copyOf(lines);
    }

    /** What a measure lets be seen of the open donning. */
    Optional<DonningValue> open(String measure) {
        Optional<Donning> open = state().course().open();
        return open.isEmpty()
                ? Optional.empty()
                : view.shown().measures().stream()
                        .filter(result -> result.measure().id().equals(measure))
                        .findFirst()
                        .flatMap((MeasureResult result) -> result.value(open.get().number()));
    }

    /** A part's value as shown: "at least" where the counter only bounded it. */
    static String value(Part part) {
        if (part.value().isEmpty()) {
            return "";
        }
        return Figures.value(part.value(), part.bounded());
    }
}
