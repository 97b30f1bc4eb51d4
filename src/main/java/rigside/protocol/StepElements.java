package rigside.protocol;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import rigside.measure.Dimension;
import rigside.measure.Unit;
import rigside.protocol.Step.Checklist.IfNot;
import rigside.protocol.Step.Exercises.Entering;
import rigside.protocol.Step.Starting;
import rigside.protocol.StepReader.After;
import rigside.yaml.Element;
import rigside.yaml.Key;
import rigside.yaml.Shape;

/** The elements of the procedure, one for each kind of step. */
final class StepElements {
    private static final Set<String> OF_DONNINGS = Set.of("only-for", "only-after");
    private static final String OUTSIDE = "-outside";

    private static final Key SAY =
            Key.optional("say", new Shape.Text(), "nothing", "What the tester is told to do.");
    private static final Key ONLY_AFTER =
            Key.optional(
                    "only-after",
                    Shape.Word.of(After.class, StepElements::meaning),
                    "whatever came before",
                    "When the step is done, where the mask stays on within a round ('mask:"
                            + " stays-on' in the plan); only under 'donning'.");
    private static final Key STARTS =
            Key.optional(
                    "starts",
                    Shape.Word.of(Starting.class, StepElements::meaning),
                    Shape.Word.word(Starting.BY_KEY),
                    "What sets it going.");

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
                            Shape.Word.of(IfNot.class, StepElements::meaning),
                            Shape.Word.word(IfNot.REPEAT),
                            "Where a no leads."));

    static final Element CHECKLIST =
            step(
                    "checklist",
                    "Things to confirm one by one: the bench before the session, putting the mask"
                            + " on the same way every time, the user seal check.",
                    SAY,
                    Key.required(
                            "items",
                            new Shape.Items(new Shape.Group(CHECK), 1),
                            "What has to be so, in order."));

    static final Element FORM =
            step(
                    "form",
                    "Things to type: a reading of a balance, the room's temperature. A number typed"
                            + " in a donning can be a measure of kind 'typed-number'.",
                    SAY,
                    fields("What is asked, in order."));

    static final Element COUNTDOWN =
            step(
                    "countdown",
                    "A wait of a fixed length: the purge after putting the mask on, which clears"
                        + " the particles caught inside, a rest, a time for the counter to settle.",
                    SAY,
                    STARTS,
                    Key.required("for", Lines.TIME, "How long it takes."));

    static final Element EXERCISES =
            step(
                            "exercises",
                            "Timed activities, one after the other, while the air of the room and"
                                + " in the mask is sampled, or the pressure in the mask is read."
                                + " Only under 'donning'.",
                            SAY,
                            STARTS,
                            Key.required(
                                    "feeds",
                                    new Shape.OneOrItems(Lines.idOf("measure")),
                                    "The measure its readings go to, of kind 'fit-factor' or"
                                            + " 'pressure-trace', or a list of one of each."),
                            Key.optional(
                                    "unit",
                                    Lines.unit(Dimension.CONCENTRATION),
                                    Unit.PER_CUBIC_CENTIMETRE.symbol(),
                                    "The unit concentrations are typed in."),
                            Key.optional(
                                    "pressure-unit",
                                    Lines.unit(Dimension.PRESSURE),
                                    Unit.PASCAL.symbol(),
                                    "The unit pressures are typed in."),
                            Key.optional(
                                    "entering",
                                    Shape.Word.of(Entering.class, StepElements::meaning),
                                    Shape.Word.word(Entering.AFTER_EACH),
                                    "When the readings are typed."),
                            Key.optional(
                                    "ambient-may-move",
                                    Lines.share("a percentage above 0 %, at most 200 %", "20 %"),
                                    QuantityText.plain(ExercisesReader.AMBIENT_MAY_MOVE * 100)
                                            + " %",
                                    "By how much the air of the room may change from one sample to"
                                            + " the next before it is flagged."),
                            Key.required(
                                    "exercises",
                                    new Shape.Items(new Shape.Group(ExerciseElements.EXERCISE), 1),
                                    "What is done, in order."))
                    .withCautions(Cautions.EXERCISE);

    static final Element TRIALS =
            step(
                            "trials",
                            "Timed inhalations: after a count the wearer breathes in once at a held"
                                    + " suction until the lungs are full, and the time is taken;"
                                    + " after a rest again. Only under 'donning'.",
                            SAY,
                            STARTS,
                            Key.required(
                                    "feeds",
                                    Lines.idOf("measure"),
                                    "The measure of kind 'timed-inhalation' the times go to."),
                            Key.required(
                                    "trials",
                                    new Shape.Whole(1, TrialsReader.MOST_TRIALS),
                                    "How many valid ones a donning needs; 3 to 5 are usual."),
                            Key.required(
                                    "target",
                                    Lines.above0(Dimension.PRESSURE),
                                    "The suction to hold, as a positive pressure: low enough to"
                                            + " hold, and low enough that a breath takes long."),
                            Key.optional(
                                    "tolerance",
                                    Lines.share("a percentage above 0 %, below 100 %", "20 %"),
                                    "no pull is judged by its pressure",
                                    "How far from the target still counts as held."),
                            Key.optional(
                                            "held-for",
                                            Lines.share(
                                                    "a percentage above 0 %, at most 100 %",
                                                    "50 %"),
                                            QuantityText.plain(TrialsReader.DEFAULT_HELD * 100)
                                                    + " %",
                                            "Where an instrument follows the pressure: a pull that"
                                                + " was within the tolerance for a smaller share of"
                                                + " its time is offered for striking out.")
                                    .with("tolerance"),
                            Key.optional(
                                    "lead-in",
                                    Lines.TIME,
                                    QuantityText.plain(TrialsReader.DEFAULT_LEAD_IN) + " s",
                                    "The count before each, for breathing out fully."),
                            Key.required(
                                    "rest",
                                    Lines.TIME,
                                    "The rest between two; 60 s lets breathing come to rest."),
                            Key.required(
                                    "shortest",
                                    Lines.TIME,
                                    "A shorter time is offered for striking out."),
                            Key.required(
                                    "longest",
                                    Lines.TIME,
                                    "A longer time is offered for striking out; above"
                                            + " 'shortest'."))
                    .withCautions(Cautions.BREATHS);

    static final Element OBSERVATIONS =
            step(
                    "observations",
                    "What was felt and seen, on short scales and in words: comfort, view, air at"
                            + " the eyes, slipping. The report sets the answers side by side.",
                    SAY,
                    fields(
                            "What is asked, in order; scales and choices are compared most"
                                    + " easily."));

    static final Element NOTE =
            step(
                    "note",
                    "Words to read before going on.",
                    Key.required("say", new Shape.Text(), "The words."));

    static final Element GATES =
            step(
                    "gates",
                    "What the particle counter has to read before a test is worth its time. A gate"
                            + " that is not met says so, and is read again, or passed over with a"
                            + " reason that is kept. Not under 'after'.",
                    SAY,
                    Key.optional(
                            "unit",
                            Lines.unit(Dimension.CONCENTRATION),
                            Unit.PER_CUBIC_CENTIMETRE.symbol(),
                            "The unit concentrations are typed in."),
                    Key.required(
                            "gates",
                            new Shape.Items(GateElements.ANY, 1),
                            "What is read, in order."));

    /** Every kind of step that can stand in a group, in the order they are told. */
    private static final List<Element> SINGLE =
            List.of(CHECKLIST, FORM, COUNTDOWN, EXERCISES, TRIALS, OBSERVATIONS, NOTE, GATES);

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
                part == Part.AFTER ? Set.of(EXERCISES, TRIALS, GATES) : Set.of(EXERCISES, TRIALS);
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

    private static Element step(String kind, String about, Key... own) {
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

    private static Key fields(String meaning) {
        return Key.required(
                "fields", new Shape.Items(new Shape.Group(FieldElements.FIELD), 1), meaning);
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

    private static String meaning(Entering entering) {
        return switch (entering) {
            case AFTER_EACH -> "after each exercise";
            case AT_END -> "all at the end of the step";
        };
    }

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
