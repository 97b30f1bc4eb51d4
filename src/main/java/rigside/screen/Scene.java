package rigside.screen;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
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
 * @param small whether there is no room for big text: what it says goes first, in plain letters
 */
record Scene(View view, int columns, int rows, boolean tallyBeside, boolean small) {

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
        return new Scene(view, width, rows, tallyBeside, small);
    }

    /** The same with plain letters instead of big ones. */
    Scene shrunk() {
        return new Scene(view, columns, rows, tallyBeside, true);
    }

    List<Line> big(String text) {
        return small ? Wrap.lines(Tone.BIG, text, columns) : Big.of(text, columns, signs());
    }

    /** Big digits with their unit, in part of the width. */
    List<Line> big(String digits, String unit, int width) {
        return small
                ? List.of(Line.of(Tone.BIG, (digits + " " + unit).strip()))
                : Big.of(digits, unit, width, signs());
    }

    List<Line> wrapped(String text) {
        return Wrap.lines(text, columns);
    }

    List<Line> strong(String text) {
        return Wrap.lines(Tone.STRONG, text, columns);
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
     * As much of a block as there are rows for, with one line of it in sight.
     *
     * @param at the line that must be seen, from 0
     * @param room how many rows the block may take
     */
    static List<Line> around(List<Line> lines, int at, int room) {
        if (lines.size() <= room || room < 3) {
            return lines;
        }
        int from = Math.max(0, Math.min(at - room / 3, lines.size() - room));
        List<Line> seen = new ArrayList<>(lines.subList(from, from + room));
        if (from > 0) {
            seen.set(0, Line.of(Tone.QUIET, "  (" + (from + 1) + " more before)"));
        }
        if (from + room < lines.size()) {
            int below = lines.size() - from - room + 1;
            seen.set(room - 1, Line.of(Tone.QUIET, "  (" + below + " more after)"));
        }
        return List.copyOf(seen);
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
        return (part.bounded() ? ">= " : "") + Figures.three(part.value());
    }
}
