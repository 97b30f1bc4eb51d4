package rigside.protocol;

import java.util.List;
import rigside.measure.Ambient;
import rigside.measure.Dimension;
import rigside.measure.Unit;
import rigside.yaml.Element;
import rigside.yaml.Key;
import rigside.yaml.Shape;

/** What the particle counter has to read before a test. */
final class GateElements {
    static final Element ZERO =
            Element.of(
                    "zero",
                    "A gate of filtered air, through the mask's sample tube: the counter must"
                            + " count next to nothing. It shows a leaking tube or a dirty counter"
                            + " before they spoil a session.",
                    Key.required("gate", new Shape.Itself("zero"), "Says that it is this gate."),
                    Key.optional(
                            "at-most",
                            Lines.notBelow0(Dimension.CONCENTRATION),
                            "nothing; with a 'sample-flow', one particle",
                            "What filtered air may show."),
                    length(Ambient.ZERO_CHECK_SECONDS),
                    help(GatesReader.ZERO_HELP));

    static final Element AMBIENT =
            Element.of(
                    "ambient",
                    "A gate of the air of the room: it must hold enough particles.",
                    Key.required("gate", new Shape.Itself("ambient"), "Says that it is this gate."),
                    Key.required(
                            "at-least",
                            Lines.above0(Dimension.CONCENTRATION),
                            "What the room has to hold; at the fit factor you care about some ten"
                                    + " particles should be counted in the mask."),
                    length(GatesReader.AMBIENT_SECONDS),
                    help(GatesReader.AMBIENT_HELP));

    static final Shape ANY = new Shape.OneOf("gate", "gate", List.of(ZERO, AMBIENT), List.of());

    static final Element GATES =
            AnyStep.element(
                    "gates",
                    "What the particle counter has to read before a test is worth its time. A gate"
                            + " that is not met says so, and is read again, or passed over with a"
                            + " reason that is kept. Not under 'after'.",
                    AnyStep.SAY,
                    Key.optional(
                            "unit",
                            Lines.unit(Dimension.CONCENTRATION),
                            Unit.PER_CUBIC_CENTIMETRE.symbol(),
                            "The unit concentrations are typed in."),
                    Key.required("gates", new Shape.Items(ANY, 1), "What is read, in order."));

    private GateElements() {}

    static Element of(Gate.Kind kind) {
        return switch (kind) {
            case ZERO -> ZERO;
            case AMBIENT -> AMBIENT;
        };
    }

    private static Key length(double seconds) {
        return Key.optional(
                "for", Lines.TIME, QuantityText.plain(seconds) + " s", "How long it is read.");
    }

    private static Key help(String otherwise) {
        return Key.optional(
                "do", new Shape.Text(), otherwise, "What to do when it is not met, shown then.");
    }
}
