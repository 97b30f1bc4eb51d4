package rigside.screen;

import java.util.ArrayList;
import java.util.List;
import rigside.measure.Numbers;
import rigside.measure.Quantity;
import rigside.measure.Unit;
import rigside.protocol.Step;

/**
 * The pressure of a pull against the band it has to be held in, to be read at one glance from two
 * metres: a word in big letters that stands on the left, in the middle or on the right, over a bar
 * that ends before, in or beyond the band. Nothing here tells how long the pull lasts.
 *
 * @param scene the room and the view
 * @param step the trials
 * @param suctionPa what the gauge reads, above 0 while breathing in
 */
record GaugePicture(Scene scene, Step.Trials step, double suctionPa) {

    /**
     * The band where the protocol declares no tolerance: a convention, and nothing is judged by it.
     */
    private static final double USUAL_TOLERANCE = 0.2;

    /** The bar reaches so many tolerances to either side: the band is the middle two fifths. */
    private static final double REACH = 2.5;

    /** Less than this share of the target is no pull: as a trace's pull begins and ends. */
    private static final double NOTHING = 0.05;

    /** The word may take so much of the width, so that its place can be told. */
    private static final double WORD_SHARE = 0.62;

    private static final String WIDEST = "TOO WEAK";

    /** One row of the bar for so many rows of the window. */
    private static final int ROWS_A_BAR_ROW = 6;

    private static final int FEWEST_BAR_ROWS = 3;

    /** Where the pressure is. */
    enum Sign {
        TOO_WEAK("TOO WEAK", Tone.BIG, 0),
        RIGHT("RIGHT", Tone.GOOD, 0.5),
        TOO_HARD("TOO HARD", Tone.WARN, 1);

        private final String word;
        private final Tone tone;

        /** Where the word stands: 0 on the left, 1 on the right. */
        private final double place;

        Sign(String word, Tone tone, double place) {
            this.word = word;
            this.tone = tone;
            this.place = place;
        }
    }

    Sign sign() {
        double off = suctionPa / step.target().si() - 1;
        return off < -tolerance() ? Sign.TOO_WEAK : off > tolerance() ? Sign.TOO_HARD : Sign.RIGHT;
    }

    /** The word over the bar. */
    List<Line> large() {
        return Scene.stack(word(), bar(Math.max(FEWEST_BAR_ROWS, scene.rows() / ROWS_A_BAR_ROW)));
    }

    /** The bar alone, low, and the word in plain letters in its line of names. */
    List<Line> small() {
        return bar(1);
    }

    private List<Line> word() {
        int columns = scene.columns();
        int size = Big.fitting(WIDEST, scene.size(), (int) (WORD_SHARE * columns));
        String word = sign().word;
        List<Line> lines =
                size == 0
                        ? List.of(Line.of(Tone.STRONG, word))
                        : Big.of(word, size, columns, scene.signs());
        int width = lines.stream().mapToInt(Line::width).max().orElse(0);
        int place = (int) Math.round(sign().place * (columns - width));
        return lines.stream().map(line -> line.in(sign().tone).indented(place)).toList();
    }

    private List<Line> bar(int rows) {
        List<Line> lines = new ArrayList<>(List.of(names()));
        for (int copy = 0; copy < rows; copy++) {
            lines.add(copy == rows / 2 ? row(belowTheBar()) : row(""));
        }
        lines.add(scale());
        return List.copyOf(lines);
    }

    private Line names() {
        StringBuilder names = new StringBuilder(" ".repeat(scene.columns()));
        centred(names, "too weak", 0, low());
        centred(names, "right", low() + 1, high());
        centred(names, "too hard", high() + 1, scene.columns());
        mark(names);
        return Line.of(Tone.STRONG, names.toString());
    }

    private Line row(String below) {
        int end = end();
        StringBuilder row =
                new StringBuilder(scene.signs().block().repeat(end))
                        .append(" ".repeat(scene.columns() - end));
        put(row, below, 0);
        mark(row);
        return Line.of(sign().tone, row.toString());
    }

    /** How many columns are filled: never at an edge where that would contradict the word. */
    private int end() {
        int end = place(suctionPa);
        return switch (sign()) {
            case TOO_WEAK -> Math.min(end, low());
            case RIGHT -> Math.max(low() + 2, Math.min(end, high()));
            case TOO_HARD -> Math.min(scene.columns(), Math.max(end, high() + 2));
        };
    }

    /** The pressures at the ends of the bar and of the band. */
    private Line scale() {
        Unit unit = step.target().unit();
        StringBuilder scale = new StringBuilder(" ".repeat(scene.columns()));
        put(scale, text(lowest()), 0);
        centred(scale, text(target() * (1 - tolerance())), low() - 5, low() + 6);
        centred(scale, text(target()), (low() + high()) / 2 - 5, (low() + high()) / 2 + 6);
        centred(scale, text(target() * (1 + tolerance())), high() - 5, high() + 6);
        String most = text(target() * (1 + REACH * tolerance())) + " " + unit.symbol();
        put(scale, most, scene.columns() - most.length());
        return Line.of(Tone.QUIET, scale.toString());
    }

    private String text(double pascals) {
        return Numbers.plain(Numbers.rounded(step.target().unit().fromSi(pascals), 3));
    }

    private void mark(StringBuilder line) {
        put(line, scene.signs().upright(), low());
        put(line, scene.signs().upright(), high());
    }

    private static void centred(StringBuilder line, String text, int from, int to) {
        put(line, text, from + Math.max(0, (to - from - text.length()) / 2));
    }

    private static void put(StringBuilder line, String text, int at) {
        int from = Math.max(0, Math.min(at, line.length() - text.length()));
        line.replace(from, from + text.length(), text);
    }

    private int low() {
        return place(target() * (1 - tolerance()));
    }

    private int high() {
        return Math.min(scene.columns() - 1, place(target() * (1 + tolerance())));
    }

    /** Of all columns, how many lie before a pressure. */
    private int place(double pascals) {
        double share = (pascals - lowest()) / (target() * (1 + REACH * tolerance()) - lowest());
        return (int) Math.round(Math.max(0, Math.min(1, share)) * scene.columns());
    }

    private double lowest() {
        return Math.max(0, target() * (1 - REACH * tolerance()));
    }

    private double target() {
        return step.target().si();
    }

    private double tolerance() {
        return step.tolerance().orElse(USUAL_TOLERANCE);
    }

    /** What the gauge reads, in words: which way the breath goes is not left to a sign. */
    String reading() {
        Quantity reading = new Quantity(Math.abs(suctionPa), Unit.PASCAL).in(step.target().unit());
        String size =
                Numbers.plain(Math.round(reading.value() * 10) / 10.0)
                        + " "
                        + reading.unit().symbol();
        return (suctionPa > 0 ? "suction " : suctionPa < 0 ? "blowing " : "") + size;
    }

    /** Where the bar is empty: whether that is nearly enough, none, or the wrong way. */
    private String belowTheBar() {
        double nothing = NOTHING * target();
        if (suctionPa < -nothing) {
            return scene.signs().before() + " blowing";
        }
        if (suctionPa < nothing) {
            return scene.signs().before() + " none";
        }
        return suctionPa < lowest() ? scene.signs().before() + " below " + text(lowest()) : "";
    }
}
