package rigside.protocol;

import rigside.measure.Dimension;
import rigside.measure.Unit;
import rigside.protocol.Step.Exercises.Entering;
import rigside.yaml.Element;
import rigside.yaml.Key;
import rigside.yaml.Shape;

/** Steps that take their time: waits, exercises, timed inhalations. */
final class TimedElements {
    static final Element COUNTDOWN =
            AnyStep.element(
                    "countdown",
                    "A wait of a fixed length: the purge after putting the mask on, which clears"
                            + " the particles caught inside, a rest, a time for the counter to settle.",
                    AnyStep.SAY,
                    AnyStep.STARTS,
                    Key.required("for", Lines.TIME, "How long it takes."));

    static final Element EXERCISES =
            AnyStep.element(
                            "exercises",
                            "Timed activities, one after the other, while the air of the room and"
                                    + " in the mask is sampled, or the pressure in the mask is read."
                                    + " Only under 'donning'.",
                            AnyStep.SAY,
                            AnyStep.STARTS,
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
                                    Shape.Word.of(Entering.class, TimedElements::meaning),
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
            AnyStep.element(
                            "trials",
                            "Timed inhalations: after a count the wearer breathes in once at a held"
                                    + " suction until the lungs are full, and the time is taken;"
                                    + " after a rest again. Only under 'donning'.",
                            AnyStep.SAY,
                            AnyStep.STARTS,
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

    private TimedElements() {}

    private static String meaning(Entering entering) {
        return switch (entering) {
            case AFTER_EACH -> "after each exercise";
            case AT_END -> "all at the end of the step";
        };
    }
}
