package rigside.screen;

/**
 * The signs pictures are made of, each one column wide: those of the oldest terminals' fonts, or
 * plain ASCII.
 */
record Glyphs(
        String block,
        String heavy,
        String light,
        String upright,
        String tick,
        String here,
        String dot,
        String mark,
        String before,
        String beyond,
        String cut,
        String flag) {
    private static final Glyphs LINES =
            new Glyphs("█", "═", "─", "│", "√", "►", "·", "■", "◄", "►", "…", "¶");
    private static final Glyphs ASCII =
            new Glyphs("#", "=", "-", "|", "*", ">", ".", "o", "<", ">", "~", "^");

    static Glyphs of(View.Style style) {
        return style.unicode() ? LINES : ASCII;
    }
}
