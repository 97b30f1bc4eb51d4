package rigside.protocol;

import rigside.yaml.Element;
import rigside.yaml.Key;
import rigside.yaml.Shape;

/** Things to confirm, and where a no leads. */
final class CheckElements {
    static final Element CHECK =
            Element.of(
                    "check",
                    "One thing that has to be so, confirmed with Enter; the key 'n' says that it is"
                            + " not.",
                    Key.required(
                            "check",
                            new Shape.Text(),
                            "What has to be so, worded so that yes is right."),
                    Key.optional(
                            "id",
                            Lines.ID,
                            "no step can depend on it",
                            "The short word by which 'only-if' of a later step refers to the yes or"
                                    + " no."),
                    Key.optional(
                            "if-not",
                            Shape.Word.of(IfNot.class, CheckElements::meaning),
                            Shape.Word.word(IfNot.REPEAT),
                            "Where a no leads."));

    static final Element CHECKLIST =
            AnyStep.element(
                    "checklist",
                    "Things to confirm one by one: the bench before the session, putting the mask"
                            + " on the same way every time, the user seal check.",
                    AnyStep.SAY,
                    Key.required(
                            "items",
                            new Shape.Items(new Shape.Group(CHECK), 1),
                            "What has to be so, in order."));

    private CheckElements() {}

    private static String meaning(IfNot ifNot) {
        return switch (ifNot) {
            case REPEAT -> "the whole checklist again, from its first item";
            case ABANDON ->
                    "the donning is abandoned, with a reason, and done again; only under 'donning'";
            case STOP -> "the session ends";
            case GO_ON ->
                    "the next item: the no is counted as an outcome, and steps with 'only-if' can"
                            + " depend on it";
        };
    }
}
