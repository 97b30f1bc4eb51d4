package rigside.protocol;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import rigside.yaml.Element;
import rigside.yaml.Key;
import rigside.yaml.Shape;

/** A protocol file as a whole, and all there is in it. */
public final class ProtocolElements {
    private static final String UNLESS = "unless nothing is worn, as in an instrument check";

    /** The file. */
    public static final Element FILE =
            Element.of(
                            "protocol",
                            "The whole file: what is compared, what is measured, which difference"
                                    + " would matter, how many rounds you can afford, and every step of"
                                    + " a donning, which is putting the mask on once and all that is"
                                    + " done until it comes off.",
                            Key.required(
                                    "format",
                                    new Shape.Whole(ProtocolReader.FORMAT, ProtocolReader.FORMAT),
                                    "The format of the file, "
                                            + ProtocolReader.FORMAT
                                            + "; a newer one needs a newer program."),
                            Key.required("title", Lines.ANY, "One line that names the comparison."),
                            Key.required(
                                    "question", new Shape.Text(), "The question asked, in words."),
                            Key.optional(
                                    "about",
                                    new Shape.Text(),
                                    "nothing",
                                    "Purpose, source and remarks."),
                            Key.required(
                                    "cautions",
                                    new Shape.Items(new Shape.Text(), 1),
                                    "What the tester must know; shown and acknowledged before the"
                                            + " first donning."),
                            Key.optional(
                                    "facts",
                                    new Shape.Items(new Shape.Group(FieldElements.FIELD), 1),
                                    "none",
                                    "What is recorded once a session, before everything else:"
                                            + " wearer, mask, room, instruments."),
                            Key.sometimes(
                                            "conditions",
                                            new Shape.Items(
                                                    new Shape.Group(ConditionElements.CONDITION),
                                                    1),
                                            UNLESS,
                                            "What is compared; the first is the reference. One"
                                                    + " alone is repeated to see how far its values"
                                                    + " spread: its measures are then not compared, and"
                                                    + " the plan says only 'most' rounds.")
                                    .with("measures", "plan", "donning"),
                            Key.sometimes(
                                            "measures",
                                            new Shape.Items(MeasureElements.ANY, 1),
                                            UNLESS,
                                            "The numbers taken from each donning; where there are"
                                                    + " two conditions or more, at least one is"
                                                    + " compared.")
                                    .with("conditions", "plan", "donning"),
                            Key.sometimes(
                                            "plan",
                                            new Shape.Group(PlanElements.PLAN),
                                            UNLESS,
                                            "How often, in which order, what is concealed.")
                                    .with("conditions", "measures", "donning"),
                            Key.optional(
                                    "groups",
                                    new Shape.Items(new Shape.Group(StepElements.GROUP), 1),
                                    "none",
                                    "Steps that are done more than once, under a name."),
                            Key.optional(
                                    "before",
                                    new Shape.Items(StepElements.in(Part.BEFORE), 1),
                                    "none",
                                    "Steps before the first donning. Where nothing is worn they are"
                                            + " all there is: an instrument check."),
                            Key.sometimes(
                                            "donning",
                                            new Shape.Items(StepElements.in(Part.DONNING), 1),
                                            UNLESS,
                                            "The steps of one donning, from putting the mask on to"
                                                    + " taking it off, in order.")
                                    .with("conditions", "measures", "plan"),
                            Key.optional(
                                    "after",
                                    new Shape.Items(StepElements.in(Part.AFTER), 1),
                                    "none",
                                    "Steps after the last donning."))
                    .withCautions(
                            Cautions.UNWELL,
                            "Keep the cautions of the protocol you start from, and add what your"
                                    + " own part needs.",
                            "What is found is a comparison by and for one wearer: no certified fit"
                                    + " test, and no proof of protection.");

    private ProtocolElements() {}

    /**
     * Every element of a protocol file, outer ones first. Steps are those of a donning; before and
     * after it the same ones stand, without what only a donning has.
     */
    public static List<Element> all() {
        List<Element> all = new ArrayList<>();
        all.add(FILE);
        FILE.without("", Set.of("before", "after")).withAllInIt().stream()
                .skip(1)
                .forEach(all::add);
        return all;
    }

    /** Whether what may stand in a place is an element, or a step like it outside of donnings. */
    public static boolean isSameKind(Element placed, Element element) {
        return placed.equals(element)
                || placed.name().equals(element.name() + StepElements.OUTSIDE);
    }
}
