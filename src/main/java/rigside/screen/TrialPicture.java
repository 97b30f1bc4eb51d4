package rigside.screen;

import java.util.List;
import java.util.Optional;
import rigside.analysis.TraceWords;
import rigside.measure.Numbers;
import rigside.measure.Quantity;
import rigside.protocol.Step;
import rigside.session.Entry;
import rigside.session.Place;
import rigside.session.Slot;
import rigside.session.Value;

/**
 * A timed inhalation from the first look at the target to the rest after it.
 *
 * @param scene the room and the view
 * @param place where the trials stand
 * @param step the trials
 * @param trial which of them, from 0
 */
record TrialPicture(Scene scene, Place place, Step.Trials step, int trial) {

    /** Columns between the target and what stands beside it. */
    private static final int GAP = 6;

    /** The widest word beside the target. */
    private static final String WIDEST = "HELD?";

    private static final String SILENT = "GAUGE SILENT";

    static TrialPicture of(Scene scene, Place place, int trial) {
        return new TrialPicture(scene, place, scene.step(place, Step.Trials.class), trial);
    }

    List<Line> ready() {
        return Scene.stack(
                targetAnd(List.of(title("get ready")), right((trial + 1) + "/" + step.count(), "")),
                scene.wrapped(step.say()),
                scene.strong(
                        scene.trigger()
                                + " starts a lead-in of "
                                + Figures.length(step.leadInSeconds())
                                + ". Breathe out fully while it counts."),
                atRest(),
                soFar());
    }

    List<Line> leadIn(long startedAt) {
        double left = step.leadInSeconds() - scene.view().secondsSince(startedAt);
        boolean counting = left > 0;
        List<Line> above =
                targetAnd(
                        List.of(title(counting ? "breathe out" : "breathe in and hold it there")),
                        right(counting ? Figures.left(left) : "GO", ""));
        String text = "Press " + scene.trigger() + " the moment you begin to pull.";
        return gauge().map(gauge -> instructed(above, text, gauge.small()))
                .orElseGet(() -> unfollowed(above, text));
    }

    List<Line> pulling(long startedAt) {
        return gauge().map(gauge -> gauged(gauge, startedAt)).orElseGet(() -> ungauged(startedAt));
    }

    /** All room is for the gauge; the clock, where it may be seen, stands in the heading. */
    private List<Line> gauged(GaugePicture gauge, long startedAt) {
        Line heading = title("pull, and hold it there");
        String clock = Figures.tenths(scene.view().secondsSince(startedAt)) + " s";
        Line title =
                scene.view().shown().trialClock()
                        ? heading.plus("   ").plus(Tone.STRONG, clock)
                        : heading;
        return instructed(
                Scene.stack(List.of(title), gauge.large()),
                "Press " + scene.trigger() + " the moment your lungs are full.",
                List.of());
    }

    private Optional<GaugePicture> gauge() {
        return scene.view()
                .gauge()
                .filter(gauge -> gauge.suctionPa().isPresent())
                .map(gauge -> new GaugePicture(scene, step, gauge.suctionPa().getAsDouble()));
    }

    /** What has to be known of a gauge that is attached and says nothing. */
    private List<Line> silent() {
        boolean silent =
                scene.view().gauge().filter(gauge -> gauge.suctionPa().isEmpty()).isPresent();
        return silent
                ? Wrap.hanging(
                        Line.of(Tone.WARN, SILENT + "  "),
                        Tone.PLAIN,
                        "Hold by your own gauge; the trigger times the pull.",
                        scene.columns())
                : List.of();
    }

    /** Before a trial: is the gauge there, and does it follow the breath? */
    private List<Line> atRest() {
        return gauge().map(gauge -> List.of(Line.of("Gauge now: " + gauge.reading() + ".")))
                .orElse(silent());
    }

    private List<Line> ungauged(long startedAt) {
        List<Line> clock =
                scene.view().shown().trialClock()
                        ? right(Figures.tenths(scene.view().secondsSince(startedAt)), "s")
                        : right("HOLD", "");
        return unfollowed(
                targetAnd(List.of(title("pull, and hold it there")), clock),
                "Press " + scene.trigger() + " the moment your lungs are full.");
    }

    /** The time on the form, asked for. */
    List<Line> typed(List<Line> input) {
        return Scene.stack(
                List.of(title("as the form says")),
                scene.strong("Time of trial " + (trial + 1)),
                input,
                scene.wrapped(
                        Numbers.plain(step.shortest())
                                + " to "
                                + Numbers.plain(step.longest())
                                + " s is plausible. Every pull on the form is typed, spoilt ones"
                                + " too: they are struck out after it."));
    }

    List<Line> tracing() {
        return Scene.stack(
                targetAnd(List.of(title("the pull has ended")), right("DONE", "")),
                scene.wrapped("Breathe as you like. The pressure trace is being read."));
    }

    /**
     * The question that a trace would have answered.
     *
     * @param untraced why it did not, if an instrument is there
     */
    List<Line> holdAsked(Optional<String> untraced) {
        if (scene.state().isFromPaper()) {
            return Scene.stack(
                    List.of(title("as the form says")),
                    scene.strong(
                            "Was the pull held at "
                                    + step.target()
                                    + within()
                                    + " until the lungs were full?"),
                    scene.wrapped(
                            "[y] it was held. [n] it was not: the time is kept, but struck out, and"
                                    + " the time of the trial done in its place is asked for."));
        }
        return instructed(
                targetAnd(List.of(title("the pull has ended")), right("HELD?", "")),
                "Was the pull held at " + step.target() + within() + " until your lungs were full?",
                Line.stacked(
                        untraced.map(why -> scene.wrapped("You are asked because " + why + "."))
                                .orElse(List.of()),
                        scene.wrapped(
                                "[y] it was held. [n] it was not: the time is kept, but struck out,"
                                        + " and the trial is done again. Answer before the time is"
                                        + " shown.")));
    }

    /** What to do, in letters as large as there is room for between the rest. */
    private List<Line> instructed(List<Line> above, String text, List<Line> below) {
        int room = scene.rows() - above.size() - below.size() - 2;
        return Scene.stack(above, scene.twice(text, room), below);
    }

    /** The same where a gauge may be silent: then that is what large letters have to say. */
    private List<Line> unfollowed(List<Line> above, String text) {
        List<Line> silent = silent();
        return silent.isEmpty()
                ? instructed(above, text, List.of())
                : Scene.stack(
                        above,
                        scene.strong(text),
                        scene.isTall()
                                ? scene.name(SILENT).stream()
                                        .map(line -> line.in(Tone.WARN))
                                        .toList()
                                : List.of(),
                        silent);
    }

    List<Line> resting(long since) {
        double left = step.restSeconds() - scene.view().secondsSince(since);
        int column = scene.columns() / 2 + 2;
        List<Line> rest =
                Scene.stack(
                        List.of(Line.of("rest; next is ").plus(Tone.STRONG, count())),
                        scene.clock(left, column - 4));
        return Scene.stack(
                Line.beside(rest, column, lastTime(since, scene.columns() - column), signs().cut()),
                scene.wrapped(
                        "Breathe as you like. Next target: "
                                + step.target()
                                + within()
                                + ". It goes on by itself when the rest is over."),
                soFar());
    }

    /** The target in big digits on the left, something else beside it. */
    private List<Line> targetAnd(List<Line> heading, List<Line> right) {
        return Scene.stack(heading, Line.beside(target(), column(), right, signs().cut()));
    }

    private Line title(String what) {
        return Line.of(Tone.STRONG, count())
                .plus("   hold " + step.target() + within() + "   ")
                .plus(Tone.STRONG, what);
    }

    private String count() {
        return "trial " + (trial + 1) + " of " + step.count();
    }

    private String within() {
        return step.tolerance().isPresent()
                ? " within " + Numbers.plain(100 * step.tolerance().getAsDouble()) + " %"
                : "";
    }

    private List<Line> right(String text, String unit) {
        return sized().big(text, unit, WIDEST, scene.columns() - column());
    }

    private List<Line> target() {
        Quantity target = step.target();
        return sized().big(
                        Numbers.plain(target.value()), target.unit().symbol(), scene.columns() / 2);
    }

    /** One size for all of a trial: the target and the widest word beside it. */
    private Scene sized() {
        String target = Numbers.plain(step.target().value());
        int room = scene.columns() - GAP - step.target().unit().symbol().length() - 1;
        int size = scene.size();
        while (size > 1 && Big.width(target, size) + Big.width(WIDEST, size) > room) {
            size--;
        }
        return scene.sized(size);
    }

    /** Where the right block begins: beside the target, and never moving during a trial. */
    private int column() {
        return Math.max(30, target().stream().mapToInt(Line::width).max().orElse(0) + GAP);
    }

    private Glyphs signs() {
        return scene.signs();
    }

    /** The time just taken, or why it is not shown. */
    private List<Line> lastTime(long since, int room) {
        if (isBrokenOff(since)) {
            return Wrap.lines("the last pull was broken off: it has no time", room);
        }
        Optional<Entry> last =
                scene.state().captured().entries().stream()
                        .filter(entry -> isTrialHere(entry.slot()))
                        .reduce((earlier, later) -> later);
        if (last.isEmpty()) {
            return List.of();
        }
        int number = ((Slot.Trial) last.get().slot()).trial() + 1;
        Line heading =
                Line.of(
                        "trial "
                                + number
                                + (last.get().stands() ? " is captured" : " is struck out"));
        return Scene.stack(
                Line.stacked(List.of(heading), steadiness(last.get(), room)),
                scene.view().shown().trialClock()
                        ? scene.big(Figures.tenths(seconds(last.get())), "s", room)
                        : Wrap.lines(Tone.QUIET, scene.view().shown().concealed(), room));
    }

    /** A pull that came to nothing needs its rest too; no time is younger than its end. */
    private boolean isBrokenOff(long since) {
        return scene.state().captured().entries().stream()
                .noneMatch(entry -> entry.slot() instanceof Slot.Trial && entry.at() >= since);
    }

    /** How steadily it was pulled is no secret, and helps with the next. */
    private List<Line> steadiness(Entry entry, int room) {
        return entry.pull()
                .map(
                        pull ->
                                Wrap.lines(
                                        TraceWords.steadiness(
                                                scene.state(),
                                                entry,
                                                pull,
                                                scene.view().shown().trialClock()),
                                        room))
                .orElse(List.of());
    }

    /** The times of this donning's trials that stand, where they may be seen. */
    private List<Line> soFar() {
        List<String> times =
                scene.state().captured().entries().stream()
                        .filter(entry -> entry.stands() && isTrialHere(entry.slot()))
                        .map(entry -> Figures.tenths(seconds(entry)))
                        .toList();
        return times.isEmpty() || !scene.view().shown().trialClock()
                ? List.of()
                : List.of(Line.of("so far: ").plus(Tone.STRONG, String.join("   ", times) + " s"));
    }

    private boolean isTrialHere(Slot slot) {
        return slot instanceof Slot.Trial && slot.place().equals(place);
    }

    private static double seconds(Entry entry) {
        return entry.value() instanceof Value.Measured measured ? measured.quantity().si() : 0;
    }
}
