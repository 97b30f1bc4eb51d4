package rigside.protocol;

import java.util.List;
import rigside.protocol.Step.Starting;
import rigside.protocol.StepReader.After;
import rigside.yaml.Element;
import rigside.yaml.Key;
import rigside.yaml.Shape;

/** What a file can say of steps of several kinds. */
final class AnyStep {
    static final Key SAY =
            Key.optional("say", new Shape.Text(), "nothing", "What the tester is told to do.");

    static final Key STARTS =
            Key.optional(
                    "starts",
                    Shape.Word.of(Starting.class, AnyStep::meaning),
                    Shape.Word.word(Starting.BY_KEY),
                    "What sets it going.");

    private static final Key ONLY_AFTER =
            Key.optional(
                    "only-after",
                    Shape.Word.of(After.class, AnyStep::meaning),
                    "whatever came before",
                    "When the step is done, where the mask stays on within a round ('mask:"
                            + " stays-on' in the plan); only under 'donning'.");

    private AnyStep() {}

    /** A kind of step with the keys that all have and its own. */
    static Element element(String kind, String about, Key... own) {
        return Element.of(kind, about, own)
                .after(
                        List.of(
                                Key.required(
                                        "step",
                                        new Shape.Itself(kind),
                                        "Says that it is a step of this kind."),
                                Key.required("title", Lines.ANY, "The line shown above it."),
                                DependElements.ONLY_FOR,
                                ONLY_AFTER,
                                DependElements.ONLY_IF));
    }

    private static String meaning(After after) {
        return switch (after) {
            case PUTTING_ON ->
                    "the mask was just put on, and did not stay on from the condition before";
        };
    }

    private static String meaning(Starting starting) {
        return switch (starting) {
            case BY_KEY -> "a key";
            case BY_ITSELF -> "it begins as soon as it comes up, without a key";
        };
    }
}
