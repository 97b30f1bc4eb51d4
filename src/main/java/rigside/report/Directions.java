package rigside.report;

import java.util.function.UnaryOperator;

/**
 * Names written from right to left within sentences written from left to right. Left to itself such
 * a run takes the figures after it along: "NAME: 1.25 times" is shown as "1.25 :NAME times".
 * Unicode Standard Annex 9 (from memory) has runs isolated against that, HTML the element {@code
 * bdi}, SVG a part of a text with the property {@code unicode-bidi}.
 */
final class Directions {
    private Directions() {}

    /**
     * Text for the body of an HTML page.
     *
     * @param escaping makes each piece of the text safe
     */
    static String isolated(String text, UnaryOperator<String> escaping) {
        return isolated(text, escaping, "<bdi>", "</bdi>");
    }

    /** The same for a line of words in a drawing, an element {@code text} of SVG. */
    static String isolatedInDrawing(String text, UnaryOperator<String> escaping) {
        return isolated(text, escaping, "<tspan unicode-bidi=\"isolate\">", "</tspan>");
    }

    private static String isolated(
            String text, UnaryOperator<String> escaping, String begin, String finish) {
        StringBuilder marked = new StringBuilder();
        int done = 0;
        for (int at = 0; at < text.length(); at = after(text, at)) {
            if (isLeftward(text.codePointAt(at))) {
                int end = endOfRun(text, at);
                marked.append(escaping.apply(text.substring(done, at)));
                marked.append(begin).append(escaping.apply(text.substring(at, end)));
                marked.append(finish);
                done = end;
                at = text.offsetByCodePoints(end, -1);
            }
        }
        return marked.append(escaping.apply(text.substring(done))).toString();
    }

    /** Behind the last sign from right to left before any from left to right. */
    private static int endOfRun(String text, int from) {
        int end = from;
        for (int at = from; at < text.length(); at = after(text, at)) {
            int point = text.codePointAt(at);
            if (Character.getDirectionality(point) == Character.DIRECTIONALITY_LEFT_TO_RIGHT) {
                break;
            }
            boolean mark =
                    at == end
                            && Character.getDirectionality(point)
                                    == Character.DIRECTIONALITY_NONSPACING_MARK;
            end = mark || isLeftward(point) ? after(text, at) : end;
        }
        return end;
    }

    private static int after(String text, int at) {
        return text.offsetByCodePoints(at, 1);
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
