package rigside.screen;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rigside.measure.Numbers;
import rigside.measure.Quantity;
import rigside.protocol.Gate;
import rigside.protocol.Step;
import rigside.session.Activity;
import rigside.session.Captured;
import rigside.session.Entry;
import rigside.session.Place;
import rigside.session.Slot;
import rigside.session.Value;

/**
 * What has to hold before a test starts: read, and where it does not hold what to do.
 *
 * @param scene the room and the view
 * @param place where the gates stand
 * @param step the gates
 * @param at which of them, from 0
 */
record GatePicture(Scene scene, Place place, Step.Gates step, int at) {

    private static final int GAP = 4;

    static GatePicture of(Scene scene, Place place, int at) {
        return new GatePicture(scene, place, scene.step(place, Step.Gates.class), at);
    }

    List<Line> reading(Activity.Gating activity) {
        return activity.startedAt().isEmpty()
                ? toStart()
                : running(
                        gate().seconds()
                                - scene.view().secondsSince(activity.startedAt().getAsLong()));
    }

    private List<Line> toStart() {
        List<Line> above = Scene.stack(title(), scene.wrapped(step.say()));
        List<Line> below =
                Scene.stack(
                        needs(),
                        scene.strong(
                                "[Enter] starts reading. It takes "
                                        + Figures.length(gate().seconds())
                                        + "."),
                        list());
        return Scene.stack(above, told(how(), above, below), below);
    }

    private List<Line> running(double left) {
        List<Line> clock = scene.clock(left, scene.columns() / 2);
        int column = Math.max(24, clock.stream().mapToInt(Line::width).max().orElse(0) + GAP);
        Scene beside = scene.columns(scene.columns() - column);
        List<Line> read = new LiveLines(beside, step.unit()).reading();
        List<Line> words =
                beside.isTall()
                        ? Scene.stack(needs(), read)
                        : Line.stacked(beside.wrapped(how()), needs());
        List<Line> above =
                Scene.stack(title(), Line.beside(clock, column, words, scene.signs().cut()));
        List<Line> below = Scene.stack(LiveLines.amiss(scene), scene.isTall() ? list() : read);
        return Scene.stack(above, scene.isTall() ? told(how(), above, below) : List.of(), below);
    }

    /** What is to be done, as large as the rest leaves room for where there is any. */
    private List<Line> told(String text, List<Line> above, List<Line> below) {
        return scene.isTall()
                ? scene.twice(text, scene.rows() - above.size() - below.size() - 2)
                : scene.wrapped(text);
    }

    /** Beside the typed line. */
    List<Line> asked() {
        return Line.stacked(
                needs(),
                scene.wrapped(
                        "the mean over "
                                + (isTyped() ? "" : "the ")
                                + Figures.length(gate().seconds())
                                + (isTyped() ? ", from the form" : " just read")));
    }

    List<Line> missed(Activity.GateMissed activity) {
        Optional<Quantity> read =
                scene.state()
                        .captured()
                        .entry(activity.entry())
                        .map(Entry::value)
                        .filter(Value.Measured.class::isInstance)
                        .map(value -> ((Value.Measured) value).quantity());
        String shown = read.map(Quantity::toString).orElse("nothing");
        List<Line> above =
                Scene.stack(
                        scene.isTall() ? notYet(read) : scene.lesser("Not yet: " + shown),
                        scene.strong(
                                name() + ": read " + shown + ", needed " + gate().needs() + "."));
        List<Line> below =
                Scene.stack(
                        scene.wrapped(
                                (isTyped()
                                                ? "[Enter] asks for it again."
                                                : "[Enter] reads it again.")
                                        + " [l] goes on all the same; the reason is asked for and"
                                        + " kept."),
                        list());
        return Scene.stack(above, told(help(), above, below), below);
    }

    /** The room of a form typed in later cannot be changed any more. */
    private String help() {
        return isTyped()
                ? "Look at the form: mistyped, or was it read so?"
                : Texts.sentence(gate().help()) + ".";
    }

    /** Words on the left, the number on the right. */
    private List<Line> notYet(Optional<Quantity> read) {
        int half = scene.columns() / 2;
        List<Line> number =
                read.map(
                                each ->
                                        scene.columns(half - GAP)
                                                .digits(
                                                        Numbers.plain(
                                                                Numbers.rounded(each.value(), 3)),
                                                        each.unit().symbol()))
                        .orElse(List.of());
        return Line.beside(
                scene.columns(half - GAP).name("Not yet"), half, number, scene.signs().cut());
    }

    private boolean isTyped() {
        return scene.state().isFromPaper();
    }

    private Gate gate() {
        return step.gates().get(at);
    }

    private List<Line> title() {
        Line count = Line.of("gate ").plus(Tone.STRONG, (at + 1) + " of " + step.gates().size());
        return Line.stacked(List.of(count), scene.lesser(name()));
    }

    private String name() {
        return name(gate().kind());
    }

    private static String name(Gate.Kind kind) {
        return switch (kind) {
            case ZERO -> "Filtered air";
            case AMBIENT -> "Air of the room";
        };
    }

    private String how() {
        return switch (gate().kind()) {
            // Where the filter goes the step may say itself.
            case ZERO ->
                    step.say().isEmpty()
                            ? "Put the zero filter on the sample tube of the mask and let the"
                                    + " counter draw through it."
                            : "Let the counter draw through the zero filter.";
            case AMBIENT -> "Let the counter draw the air of the room, away from your breath.";
        };
    }

    private List<Line> needs() {
        return List.of(Line.of("needed: ").plus(Tone.STRONG, gate().needs()));
    }

    /** All gates, with what those before gave. */
    private List<Line> list() {
        List<Line> lines = new ArrayList<>();
        for (int each = 0; each < step.gates().size(); each++) {
            Gate gate = step.gates().get(each);
            Line sign =
                    isPassed(each)
                            ? Line.of(Tone.WARN, "!")
                            : each < at
                                    ? Line.of(Tone.GOOD, scene.signs().tick())
                                    : each == at
                                            ? Line.of(Tone.STRONG, scene.signs().here())
                                            : Line.of(Tone.QUIET, scene.signs().dot());
            lines.add(sign.plus(" " + name(gate.kind()) + "  ").plus(Tone.QUIET, gave(each)));
        }
        return lines.size() > 1 ? List.copyOf(lines) : List.of();
    }

    private boolean isPassed(int each) {
        return scene.state().captured().isLeftOut(new Slot.Gate(place, each));
    }

    private String gave(int each) {
        Slot slot = new Slot.Gate(place, each);
        Captured captured = scene.state().captured();
        if (isPassed(each)) {
            return "went on all the same";
        }
        return captured.standing(slot)
                .map(entry -> entry.value().toString())
                .orElse(step.gates().get(each).needs());
    }
}
