package rigside.protocol;

import java.util.ArrayList;
import java.util.List;
import rigside.measure.Calculation;
import rigside.measure.Dimension;
import rigside.measure.FreeBreathing.Zero;
import rigside.protocol.Measure.Compared.Matters;
import rigside.protocol.Measure.Compared.Scale;
import rigside.protocol.Measure.Level;
import rigside.yaml.Element;
import rigside.yaml.Key;
import rigside.yaml.Shape;

/** The numbers taken from each donning, one element for each kind. */
final class MeasureElements {
    static final Element REQUIRED_LEVEL =
            Element.of(
                    "required",
                    "A fit factor to reach. It is never built in: levels and rules differ between"
                            + " countries and kinds of mask. Reaching it here is no certified fit"
                            + " test.",
                    Key.required(
                            "level",
                            new Shape.Numeric(1, false, MeasureReader.HIGHEST_LEVEL),
                            "The fit factor to reach."),
                    Key.required(
                            "rule",
                            Shape.Word.of(Level.Rule.class, MeasureElements::meaning),
                            "Which values have to reach it."));

    private static final Key RESOLUTION_OF_COUNTER =
            Key.optional(
                    "resolution",
                    Lines.above0(Dimension.CONCENTRATION),
                    "the last digit typed",
                    "The smallest step the counter's concentrations can show; spreads below it are"
                            + " rounding.");

    static final Element FIT_FACTOR =
            measure(
                    MeasureKind.FIT_FACTOR,
                    "How well the mask seals: the particle concentration of the room over that"
                            + " inside the mask, over the exercises of a step 'exercises' that feeds"
                            + " it. A higher value is a better seal.",
                    List.of(
                            Key.optional(
                                    "detection-limit",
                                    Lines.above0(Dimension.CONCENTRATION),
                                    "none",
                                    "The lowest concentration the counter resolves; a reading at or"
                                            + " below it gives 'at least' this fit factor, never"
                                            + " more."),
                            RESOLUTION_OF_COUNTER,
                            Key.optional(
                                    "sample-flow",
                                    Lines.above0(Dimension.FLOW),
                                    "nothing is known of the particles counted",
                                    "What the counter draws through its counting cell; with it the"
                                            + " uncertainty from counting few particles is told."),
                            Key.optional(
                                    "required",
                                    new Shape.Group(REQUIRED_LEVEL),
                                    "none",
                                    "A level that each donning is held against.")),
                    compared("such as '20'", Dimension.NUMBER));

    static final Element TIMED_INHALATION =
            measure(
                            MeasureKind.TIMED_INHALATION,
                            "How hard it is to breathe in: the time one full breath takes at a held"
                                    + " suction, over the trials of a step 'trials' that feeds it."
                                    + " Twice the time is twice the resistance. A leak makes"
                                    + " breathing look easier, so measure the seal too.",
                            List.of(
                                    unit(MeasureKind.TIMED_INHALATION),
                                    resolution(MeasureKind.TIMED_INHALATION),
                                    Key.optional(
                                            "vital-capacity",
                                            Lines.idOf("fact"),
                                            "only ratios are reported",
                                            "The fact, a volume, that holds the wearer's vital"
                                                    + " capacity; with it flows and resistances are"
                                                    + " estimated.")),
                            compared("such as '0.5 s'", Dimension.TIME))
                    .withCautions(Cautions.BREATHS);

    static final Element PRESSURE_TRACE =
            measure(
                            MeasureKind.PRESSURE_TRACE,
                            "The pressure inside the mask while breathing as in the exercises: the"
                                    + " median of the peaks of breathing in, over the exercises of a"
                                    + " step 'exercises' that feeds it. It is typed off a gauge, or"
                                    + " followed by an instrument.",
                            List.of(
                                    unit(MeasureKind.PRESSURE_TRACE),
                                    resolution(MeasureKind.PRESSURE_TRACE),
                                    Key.optional(
                                            "zero",
                                            Shape.Word.of(Zero.class, MeasureElements::meaning),
                                            Shape.Word.word(Zero.GAUGE),
                                            "What counts as pressure 0 where an instrument follows"
                                                    + " the breaths.")),
                            compared("such as '25 Pa'", Dimension.PRESSURE))
                    .withCautions(Cautions.EXERCISE);

    static final Element TYPED_NUMBER =
            measure(
                    MeasureKind.TYPED_NUMBER,
                    "Any other number of a donning: what a balance, a thermometer or a stop watch"
                            + " shows, or comfort on a scale; typed into a field of a step 'form' or"
                            + " 'observations' under 'donning'.",
                    List.of(
                            Key.required(
                                    "field",
                                    Lines.idOf("field"),
                                    "The field, a number of the same kind of unit or a scale, that is"
                                            + " asked once in a donning and always filled in."),
                            Key.required(
                                    "unit",
                                    Lines.unit(Dimension.values()),
                                    "The unit it is shown in; 'none' for a plain number or a scale."),
                            Key.required(
                                    "resolution",
                                    Lines.aboveAny(),
                                    "The smallest step the reading can show, 1 for a scale; spreads"
                                            + " below it are rounding.")),
                    compared("an amount in the measure's kind of unit", Dimension.values()));

    static final Element CALCULATED =
            measure(
                    MeasureKind.CALCULATED,
                    "A number calculated from what is typed: the mean of readings taken several"
                            + " times in a group with 'times', a pressure drop over a flow. If one"
                            + " of its numbers is missing in a donning, so is the value.",
                    List.of(
                            Key.required(
                                    "function",
                                    Shape.Word.of(Calculation.class, MeasureElements::meaning),
                                    "How it is calculated."),
                            Key.required(
                                    "of",
                                    new Shape.OneOrItems(Lines.idOf("fact or field")),
                                    "What it is calculated from, in order: fields with a 'unit' or"
                                            + " a 'scale'. All answers of a donning enter."),
                            Key.required(
                                    "unit",
                                    Lines.unit(Dimension.values()),
                                    "The unit it is shown in; 'none' for a plain number. It must"
                                            + " fit what is calculated."),
                            Key.required(
                                    "resolution",
                                    Lines.aboveAny(),
                                    "The smallest step the value can show, from those of its"
                                            + " numbers: for a mean their own step. Spreads below"
                                            + " it are rounding.")),
                    compared("an amount in the measure's kind of unit", Dimension.values()));

    static final Shape ANY =
            new Shape.OneOf(
                    "measure",
                    "kind",
                    List.of(FIT_FACTOR, TIMED_INHALATION, PRESSURE_TRACE, TYPED_NUMBER, CALCULATED),
                    List.of());

    private MeasureElements() {}

    static Element of(MeasureKind kind) {
        return switch (kind) {
            case FIT_FACTOR -> FIT_FACTOR;
            case TIMED_INHALATION -> TIMED_INHALATION;
            case PRESSURE_TRACE -> PRESSURE_TRACE;
            case TYPED_NUMBER -> TYPED_NUMBER;
            case CALCULATED -> CALCULATED;
        };
    }

    private static Element measure(
            MeasureKind kind, String about, List<Key> own, List<Key> compared) {
        List<Key> keys = new ArrayList<>();
        keys.add(Key.required("id", Lines.ID, "The short word steps refer to it by."));
        keys.add(
                Key.required(
                        "title",
                        Lines.ANY,
                        "The words shown. Sentences put 'the' before them, so name a thing: 'Rise of"
                                + " the temperature', not 'How warm it gets'."));
        keys.add(
                Key.required(
                        "kind",
                        new Shape.Itself(kind.word()),
                        "Says that it is a measure of this kind."));
        keys.addAll(own);
        keys.addAll(compared);
        return new Element(kind.word(), about, keys, List.of(), List.of());
    }

    private static Key unit(MeasureKind kind) {
        return Key.optional(
                "unit", Lines.unit(kind.dimension), kind.unit.symbol(), "The unit it is shown in.");
    }

    private static Key resolution(MeasureKind kind) {
        return Key.optional(
                "resolution",
                Lines.above0(kind.dimension),
                QuantityText.plain(kind.resolution) + " " + kind.unit.symbol(),
                "The smallest step the reading can show; spreads below it are rounding.");
    }

    /** How a measure is compared; without these keys it is only recorded. */
    private static List<Key> compared(String differences, Dimension... dimensions) {
        return List.of(
                Key.optional(
                                "compare",
                                Shape.Word.of(Scale.class, MeasureElements::meaning),
                                "it is recorded, not compared",
                                "What is taken of a condition's value and the reference's.")
                        .with("meaningful"),
                Key.optional(
                                "meaningful",
                                Lines.meaningful(differences, dimensions),
                                "it is recorded, not compared",
                                "The smallest change that would matter to you; decide it before the"
                                        + " first donning.")
                        .with("compare"),
                Key.optional(
                                "matters",
                                Shape.Word.of(Matters.class, MeasureElements::meaning),
                                Shape.Word.word(Matters.EITHER),
                                "The direction in which a change matters.")
                        .with("compare"),
                Key.optional(
                                "decides",
                                new Shape.YesOrNo(),
                                "yes",
                                "Whether the session goes on until this measure has settled; at"
                                        + " least one measure decides.")
                        .with("compare"),
                Key.optional(
                                "expected-spread",
                                Lines.spread(differences, dimensions),
                                "not known; nothing is forecast before the second round",
                                "By how much you expect values of one condition to spread from"
                                        + " donning to donning (a standard deviation).")
                        .with("compare"));
    }

    private static String meaning(Calculation calculation) {
        return switch (calculation) {
            case MEAN -> "the mean of all values";
            case MEDIAN -> "the middle value";
            case GEOMETRIC_MEAN -> "the mean of ratios: for values above 0 that differ by factors";
            case SMALLEST -> "the smallest value";
            case LARGEST -> "the largest value";
            case RANGE -> "the largest less the smallest";
            case SUM -> "all values together";
            case DIFFERENCE -> "the first less the second; each is asked once";
            case RATIO -> "the first divided by the second; each is asked once";
            case PRODUCT -> "all values multiplied; each is asked once";
        };
    }

    private static String meaning(Level.Rule rule) {
        return switch (rule) {
            case OVERALL -> "the overall value of the donning";
            case EVERY_EXERCISE -> "the value of every exercise";
        };
    }

    private static String meaning(Zero zero) {
        return switch (zero) {
            case GAUGE -> "the gauge's own zero";
            case BREATHS ->
                    "the mean over whole breaths: right only where breathing out meets the same"
                            + " resistance as breathing in, so not with an exhalation valve";
        };
    }

    private static String meaning(Scale scale) {
        return switch (scale) {
            case RATIO -> "one divided by the other: for fit factors, times and resistances";
            case DIFFERENCE -> "one minus the other: for pressures, masses, temperatures";
        };
    }

    private static String meaning(Matters matters) {
        return switch (matters) {
            case EITHER -> "a change either way";
            case INCREASE -> "only if the value rises";
            case DECREASE -> "only if the value falls";
        };
    }
}
