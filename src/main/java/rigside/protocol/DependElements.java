package rigside.protocol;

import rigside.yaml.Element;
import rigside.yaml.Key;
import rigside.yaml.Shape;

/** When a step is done, and how often. */
final class DependElements {
    static final Key ONLY_FOR =
            Key.optional(
                    "only-for",
                    new Shape.Items(Lines.idOf("condition"), 1),
                    "for all conditions",
                    "The conditions the step is for; only under 'donning'.");

    private static final Shape LIMIT =
            new Shape.Line("a number with its unit, a plain one for a scale", "", "250 Pa");

    static final Element EARLIER_ANSWER =
            Element.of(
                            "earlier-answer",
                            "An earlier answer a step depends on: a fact, a field or a check that"
                                    + " bears an id, asked in the same donning or before the first."
                                    + " Of several answers the last before the step counts; where"
                                    + " it was left out, the step is not done.",
                            Key.required(
                                    "answer",
                                    Lines.idOf("fact, field or check"),
                                    "What was asked."),
                            Key.optional(
                                    "is",
                                    Lines.ANY,
                                    "",
                                    "The answer it has to be: yes or no for a check, one of the"
                                            + " choices for a field with 'choices'."),
                            Key.optional(
                                    "above",
                                    LIMIT,
                                    "",
                                    "The number it has to be above, in any unit of its kind."),
                            Key.optional("below", LIMIT, "", "The number it has to be below."))
                    .withOneOf(OnlyIfText.WAYS);

    static final Key ONLY_IF =
            Key.optional(
                    "only-if",
                    new Shape.Group(EARLIER_ANSWER),
                    "whatever was answered",
                    "The earlier answer the step depends on.");

    /** A step that stands for those of a group. */
    static final Element USE =
            Element.of(
                    "group",
                    "All steps of a group, in its place. With 'only-if' and 'times' what was"
                            + " answered before the first of them decides for all; to stop as soon"
                            + " as an answer is right, use the group several times, each with an"
                            + " 'only-if' of its own.",
                    Key.required(
                            "step",
                            new Shape.Itself("group"),
                            "Says that the steps of a group stand here."),
                    Key.required("group", Lines.idOf("group"), "The group whose steps are done."),
                    Key.optional(
                            "times",
                            new Shape.Whole(1, GroupReader.MOST_TIMES),
                            "1",
                            "How often, one after the other; the title of each step then tells"
                                    + " which time it is."),
                    ONLY_FOR,
                    ONLY_IF);

    private DependElements() {}
}
