package rigside.protocol;

import rigside.measure.Dimension;
import rigside.yaml.Element;
import rigside.yaml.Key;
import rigside.yaml.Shape;

/** What is asked and typed: facts of the session, fields of forms and of observations. */
final class FieldElements {
    static final Element SCALE =
            Element.of(
                    "scale",
                    "A short scale of whole numbers for what is felt or seen, with words for its"
                            + " two ends.",
                    Key.required(
                            "from",
                            new Shape.Whole(0, FieldReader.SCALE_END),
                            "The lowest number, usually 0."),
                    Key.required(
                            "to",
                            new Shape.Whole(0, FieldReader.SCALE_END),
                            "The highest number, usually 10; above 'from'."),
                    Key.required("low", Lines.ANY, "What the lowest number means."),
                    Key.required("high", Lines.ANY, "What the highest number means."));

    static final Element FIELD =
            Element.of(
                            "field",
                            "One thing that is asked and typed. It stands in three places: under"
                                    + " 'facts' it is asked once a session, in a step 'form' or"
                                    + " 'observations' each time the step comes up. How it is"
                                    + " answered is said by exactly one of the keys 'unit' (a"
                                    + " number), 'choices' (one of a few words), 'scale' (a number"
                                    + " on a short scale) and 'words' (free text).",
                            Key.required(
                                    "id",
                                    Lines.ID,
                                    "The short word the answer is stored under; no other fact or"
                                            + " field of the file may have it."),
                            Key.required("ask", Lines.ANY, "The question as the tester sees it."),
                            Key.optional(
                                    "unit",
                                    Lines.unit(Dimension.values()),
                                    "",
                                    "The answer is a number, typed in this unit; 'none' for a plain"
                                            + " number."),
                            Key.optional(
                                            "from",
                                            Shape.Numeric.ANY,
                                            "no limit",
                                            "The lowest plausible number, in that unit; a lower one"
                                                    + " is asked about before it is taken.")
                                    .with("unit"),
                            Key.optional(
                                            "to",
                                            Shape.Numeric.ANY,
                                            "no limit",
                                            "The highest plausible number, in that unit.")
                                    .with("unit"),
                            Key.optional(
                                    "choices",
                                    new Shape.Items(Lines.ANY, 2),
                                    "",
                                    "The answer is one of these words, each different."),
                            Key.optional(
                                    "scale",
                                    new Shape.Group(SCALE),
                                    "",
                                    "The answer is a whole number on this scale."),
                            Key.optional(
                                    "words",
                                    new Shape.Whole(1, FieldReader.MOST_WORDS),
                                    "",
                                    "The answer is free text of at most so many characters."),
                            Key.optional(
                                    "may-be-empty",
                                    new Shape.YesOrNo(),
                                    "no",
                                    "Whether the question may be left without an answer."),
                            Key.optional(
                                    "about",
                                    Shape.Word.of(Subject.class, Subject::meaning),
                                    "",
                                    "Whom or what the answer is about. A copy of a session made to"
                                            + " be shared leaves out what is about the wearer, and"
                                            + " what nobody said the subject of; sessions are"
                                            + " found and compared by wearer code, mask and"
                                            + " room."))
                    .withOneOf(FieldReader.ANSWERS);

    private FieldElements() {}
}
