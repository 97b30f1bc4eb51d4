package rigside.protocol;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import rigside.yaml.Element;
import rigside.yaml.Key;
import rigside.yaml.Shape;

/** The elements of the procedure, one for each kind of step. */
final class StepElements {
    private static final Set<String> OF_DONNINGS = Set.of("only-for", "only-after");
    static final String OUTSIDE = "-outside";

    static final Element FORM =
            AnyStep.element(
                    "form",
                    "Things to type: a reading of a balance, the room's temperature. A number typed"
                            + " in a donning can be a measure of kind 'typed-number'.",
                    AnyStep.SAY,
                    fields("What is asked, in order."));

    static final Element OBSERVATIONS =
            AnyStep.element(
                    "observations",
                    "What was felt and seen, on short scales and in words: comfort, view, air at"
                            + " the eyes, slipping. The report sets the answers side by side.",
                    AnyStep.SAY,
                    fields(
                            "What is asked, in order; scales and choices are compared most"
                                    + " easily."));

    static final Element NOTE =
            AnyStep.element(
                    "note",
                    "Words to read before going on.",
                    Key.required("say", new Shape.Text(), "The words."));

    /** Every kind of step that can stand in a group, in the order they are told. */
    private static final List<Element> SINGLE =
            List.of(
                    CheckElements.CHECKLIST,
                    FORM,
                    TimedElements.COUNTDOWN,
                    TimedElements.EXERCISES,
                    TimedElements.TRIALS,
                    OBSERVATIONS,
                    NOTE,
                    GateElements.GATES);

    /** Every kind of step, in the order they are told. */
    static final List<Element> KINDS =
            Stream.concat(SINGLE.stream(), Stream.of(DependElements.USE)).toList();

    /** Steps that bear a name. */
    static final Element GROUP =
            Element.of(
                    "group-of-steps",
                    "Steps that are done more than once, written once: a step 'group' stands where"
                            + " they are done. A group holds no groups, and each one is used.",
                    Key.required("group", Lines.ID, "The short word it is used by."),
                    Key.required(
                            "steps",
                            new Shape.Items(
                                    new Shape.OneOf(
                                            "step", "step", SINGLE, List.of(DependElements.USE)),
                                    1),
                            "The steps, in order. Where the group is used before or after the"
                                    + " donnings, only such as may stand there."));

    private StepElements() {}

    /** The steps that may stand in a part of the procedure. */
    static Shape in(Part part) {
        if (part == Part.DONNING) {
            return new Shape.OneOf("step", "step", KINDS, List.of());
        }
        Set<Element> misplaced =
                part == Part.AFTER
                        ? Set.of(TimedElements.EXERCISES, TimedElements.TRIALS, GateElements.GATES)
                        : Set.of(TimedElements.EXERCISES, TimedElements.TRIALS);
        List<Element> allowed = new ArrayList<>(KINDS);
        allowed.removeAll(misplaced);
        return new Shape.OneOf(
                "step",
                "step",
                allowed.stream().map(StepElements::outside).toList(),
                misplaced.stream().map(StepElements::outside).toList());
    }

    /** The element a kind of step is in a part of the procedure. */
    static Element of(String kind, Where where) {
        Element element =
                KINDS.stream().filter(each -> each.name().equals(kind)).findFirst().orElseThrow();
        return where.inGroup() || where.isInDonning() ? element : outside(element);
    }

    /** A step that stands before or after the donnings, where no condition is worn. */
    private static Element outside(Element step) {
        return step.without(step.name() + OUTSIDE, OF_DONNINGS);
    }

    private static Key fields(String meaning) {
        return Key.required(
                "fields", new Shape.Items(new Shape.Group(FieldElements.FIELD), 1), meaning);
    }
}
