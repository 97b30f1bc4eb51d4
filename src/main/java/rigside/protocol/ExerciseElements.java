package rigside.protocol;

import rigside.yaml.Element;
import rigside.yaml.Key;
import rigside.yaml.Shape;

/** One timed activity. */
final class ExerciseElements {
    static final Element EXERCISE =
            Element.of(
                            "exercise",
                            "One timed activity and what is sampled meanwhile. One counter samples"
                                    + " one air at a time, so its windows must not overlap; leave some"
                                    + " seconds between them for the tube to clear.",
                            Key.required("title", Lines.ANY, "Its name, shown large."),
                            Key.optional("say", new Shape.Text(), "nothing", "What to do and say."),
                            Key.required("for", Lines.TIME, "How long it takes."),
                            Key.optional(
                                    "ambient",
                                    new Shape.OneOrItems(Lines.WINDOW),
                                    "the room is not sampled",
                                    "When the air of the room is sampled, or a list of such times;"
                                            + " the first and the last exercise need one."),
                            Key.optional(
                                    "mask",
                                    Lines.WINDOW,
                                    "the mask is not sampled",
                                    "When the air in the mask is sampled."),
                            Key.optional(
                                    "pressure",
                                    Lines.WINDOW,
                                    "it is not read",
                                    "When the pressure in the mask is read, where the step feeds a"
                                            + " 'pressure-trace'."),
                            Key.optional(
                                    "counted",
                                    new Shape.YesOrNo(),
                                    "yes",
                                    "Whether it enters the donning's fit factor; a grimace usually"
                                            + " does not."))
                    .withCautions(Cautions.EXERCISE);

    private ExerciseElements() {}
}
