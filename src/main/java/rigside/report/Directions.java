package rigside.report;

import java.text.Bidi;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;

/**
 * Names written from right to left within sentences written from left to right. Left to itself such
 * a run takes the figures after it along: "NAME: 1.25 times" is shown as "1.25 :NAME times".
 * Unicode Standard Annex 9 (from memory) has runs isolated against that, HTML the element {@code
 * bdi}, SVG a part of a text with the property {@code unicode-bidi}.
 */
final class Directions {
    private static final String BRACKETS = "()[]{}<>\u00AB\u00BB";

    private Directions() {}

    /**
     * Text for the body of an HTML page.
     *
     * @param escaping makes each piece of the text safe
     */
    static String isolated(String text, UnaryOperator<String> escaping) {
        return each(text, escaping, run -> "<bdi>" + escaping.apply(run) + "</bdi>");
    }

    /** The same for a line of words in a drawing, an element {@code text} of SVG. */
    static String isolatedInDrawing(String text, UnaryOperator<String> escaping) {
        String begin = "<tspan unicode-bidi=\"isolate\">";
        return each(text, escaping, run -> begin + escaping.apply(run) + "</tspan>");
    }

    /**
     * For what draws letters from left to right in the order it gets them: as they are seen, each
     * sign with its marks, brackets turned round. Letters that join stay as they are.
     */
    static String asSeen(String text) {
        return each(text, UnaryOperator.identity(), Directions::turned);
    }

    private static String turned(String run) {
        Bidi levels = new Bidi(run, Bidi.DIRECTION_RIGHT_TO_LEFT);
        List<String> signs = new ArrayList<>();
        List<Byte> level = new ArrayList<>();
        for (int at = 0; at < run.length(); at = after(run, at)) {
            String sign = run.substring(at, after(run, at));
            if (isMark(run.codePointAt(at)) && !signs.isEmpty()) {
                signs.set(signs.size() - 1, signs.get(signs.size() - 1) + sign);
            } else {
                boolean leftward = levels.getLevelAt(at) % 2 == 1;
                int bracket = leftward ? BRACKETS.indexOf(sign) : -1;
                // Each bracket stands beside its other half: an even place before an odd one.
                signs.add(bracket < 0 ? sign : BRACKETS.substring(bracket ^ 1, (bracket ^ 1) + 1));
                level.add((byte) levels.getLevelAt(at));
            }
        }
        byte[] order = new byte[level.size()];
        for (int at = 0; at < order.length; at++) {
            order[at] = level.get(at);
        }
        Object[] seen = signs.toArray();
        Bidi.reorderVisually(order, 0, seen, 0, seen.length);
        return Arrays.stream(seen).map(String::valueOf).collect(Collectors.joining());
    }

    /** The text with its runs from right to left changed in one way, and all else in another. */
    private static String each(
            String text, UnaryOperator<String> others, UnaryOperator<String> runs) {
        StringBuilder changed = new StringBuilder();
        int done = 0;
        for (int at = 0; at < text.length(); at = after(text, at)) {
            if (isLeftward(text.codePointAt(at))) {
                int end = endOfRun(text, at);
                changed.append(others.apply(text.substring(done, at)));
                changed.append(runs.apply(text.substring(at, end)));
                done = end;
                at = text.offsetByCodePoints(end, -1);
            }
        }
        return changed.append(others.apply(text.substring(done))).toString();
    }

    /** Behind the last sign from right to left before any from left to right. */
    private static int endOfRun(String text, int from) {
        int end = from;
        for (int at = from; at < text.length(); at = after(text, at)) {
            int point = text.codePointAt(at);
            if (Character.getDirectionality(point) == Character.DIRECTIONALITY_LEFT_TO_RIGHT) {
                break;
            }
            boolean mark = at == end && isMark(point);
            end = mark || isLeftward(point) ? after(text, at) : end;
        }
        return end;
    }

    private static int after(String text, int at) {
        return text.offsetByCodePoints(at, 1);
    }

    private static boolean isMark(int point) {
        return Character.getDirectionality(point) == Character.DIRECTIONALITY_NONSPACING_MARK;
    }

    private static boolean isLeftward(int point) {
        return switch (Character.getDirectionality(point)) {
            case Character.DIRECTIONALITY_RIGHT_TO_LEFT,
                    Character.DIRECTIONALITY_RIGHT_TO_LEFT_ARABIC,
                    Character.DIRECTIONALITY_ARABIC_NUMBER ->
                    true;
            default -> false;
        };
    }
}
