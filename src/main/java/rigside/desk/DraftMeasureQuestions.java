package rigside.desk;

import static rigside.desk.DraftAnswers.BREATHING;
import static rigside.desk.DraftAnswers.NUMBER;
import static rigside.desk.DraftAnswers.PRESSURE;
import static rigside.desk.DraftAnswers.SEAL;

import java.util.ArrayList;
import java.util.List;
import rigside.desk.DraftQuestion.Option;

/** What is asked about each thing measured: how it is read, and what would matter. */
final class DraftMeasureQuestions {
    /** Typed where nobody knows how far values spread. */
    static final String UNKNOWN = "unknown";

    private static final String MATTERS =
            "The smallest change that would make you act differently. Choose it now: chosen after"
                    + " the readings it could be fitted to them.";

    private DraftMeasureQuestions() {}

    static List<DraftQuestion> of(DraftAnswers given) {
        List<DraftQuestion> all = new ArrayList<>();
        if (given.measures(SEAL)) {
            all.addAll(seal());
        }
        if (given.measures(BREATHING)) {
            all.addAll(breathing());
        }
        if (given.measures(PRESSURE)) {
            all.addAll(pressure());
        }
        if (given.exercises()) {
            all.add(exercises());
        }
        if (given.measures(NUMBER)) {
            all.addAll(number(given));
        }
        return all;
    }

    private static List<DraftQuestion> seal() {
        return List.of(
                DraftQuestion.one(
                        "filters",
                        "What do the particles in the mask come through?",
                        List.of(
                                new Option("seal-only", "past the seal only: very good filters"),
                                new Option(
                                        "seal-and-filter",
                                        "past the seal, and through the filter")),
                        "Filters that hold 99.9 % or more of the particles counted leave only the"
                                + " seal. Otherwise a fit factor mixes both, and the results say"
                                + " so."),
                DraftQuestion.open(
                        "detection-limit",
                        "Lowest concentration the counter can tell from nothing?",
                        "It stands in the counter's manual, for example 0.02 /cm3. At or below it a"
                                + " fit factor is only known as 'at least'. Leave it empty if you"
                                + " do not know it."),
                DraftQuestion.usually(
                        "seal-meaningful",
                        "Which change of the fit factor would matter?",
                        "3 times",
                        MATTERS,
                        "With 3 to 10 rounds, donnings that spread by a factor of 1.5 and no real"
                                + " change, 2 times is settled in about 73 of 100 sessions, 3 times"
                                + " in 99 (simulated)."),
                matters(SEAL, "fit factor"),
                DraftQuestion.usually(
                        "seal-spread",
                        "How far do fit factors of one condition spread from donning to donning?",
                        "1.5 times",
                        "1.5 to 1.8 times for a practised wearer with an ordinary half mask: our"
                                + " planning figure, no single published number. '"
                                + UNKNOWN
                                + "' leaves it out; nobody can say then whether the plan will"
                                + " settle."));
    }

    private static List<DraftQuestion> breathing() {
        return List.of(
                DraftQuestion.usually(
                        "target",
                        "Which suction is held while you breathe in?",
                        "100 Pa",
                        "Low enough to hold, and low enough that the breath takes long: a key press"
                                + " is uncertain by about 0.1 s. 0.4 inH2O or 10 mmH2O is nearly"
                                + " the same."),
                DraftQuestion.usually(
                        "trials",
                        "How many timed inhalations in each donning?",
                        "5",
                        "3 to 5 are common practice, no source. With a rest of a minute after each,"
                                + " more make tired and dizzy."),
                DraftQuestion.usually(
                        "breathing-meaningful",
                        "Which change of the inhalation time would matter?",
                        "15 %",
                        MATTERS,
                        "Times are proportional to the resistance. With 3 to 10 rounds, a spread of"
                                + " 6 % and no real change, 10 % is settled in about 67 of 100"
                                + " sessions, 15 % in 98 (simulated)."),
                matters(BREATHING, "inhalation time"),
                DraftQuestion.usually(
                        "breathing-spread",
                        "How far do inhalation times of one condition spread from donning to"
                                + " donning?",
                        "6 %",
                        "3 to 9 %: our estimate, nothing published. '"
                                + UNKNOWN
                                + "' leaves it out."));
    }

    private static List<DraftQuestion> pressure() {
        return List.of(
                DraftQuestion.usually(
                        "pressure-meaningful",
                        "Which change of the peak pressure would matter?",
                        "15 %",
                        MATTERS,
                        "A percentage, since pressures are compared as ratios. 15 % is a choice,"
                                + " not a published figure."),
                matters(PRESSURE, "peak pressure"),
                DraftQuestion.usually(
                        "pressure-spread",
                        "How far do peak pressures of one condition spread from donning to"
                                + " donning?",
                        "10 %",
                        "10 % is a guess of ours with no source: effort adapts without one's"
                                + " knowing. '"
                                + UNKNOWN
                                + "' leaves it out."));
    }

    private static DraftQuestion exercises() {
        return DraftQuestion.one(
                "exercises",
                "How many exercises in each donning?",
                List.of(
                        new Option("short", "the shorter list, 4 exercises of a minute or fewer"),
                        new Option("long", "the longer list, up to 7 exercises of a minute")),
                "More exercises find leaks that few miss, and cost bench time in each donning, so"
                        + " fewer donnings. The lists are our own choice of ordinary exercises.");
    }

    private static List<DraftQuestion> number(DraftAnswers given) {
        String unit = given.of("number-unit");
        String after = unit.equals("none") || unit.isEmpty() ? "" : " " + unit;
        boolean ratio = !given.of("number-compare").equals("difference");
        return List.of(
                DraftQuestion.typed(
                        "number-name",
                        "What is the number called?",
                        "Number",
                        "For example: Weight of the mask after the donning."),
                DraftQuestion.usually(
                        "number-unit",
                        "In which unit is it typed?",
                        "none",
                        "For example Pa, mm, g, s, degC, %, L/min; 'none' for a plain number."),
                DraftQuestion.usually(
                        "number-resolution",
                        "What is the smallest step its reading can show?",
                        "1" + after,
                        "With its unit. Values that differ by no more than this settle nothing."),
                DraftQuestion.one(
                        "number-compare",
                        "How is it compared?",
                        List.of(
                                new Option("ratio", "as a ratio: so many per cent more"),
                                new Option(
                                        "difference", "as a difference: so many of its unit more")),
                        "A ratio suits what cannot be 0 or below and grows by shares; a temperature"
                                + " or a score is compared as a difference."),
                DraftQuestion.typed(
                        "number-meaningful",
                        "Which change of it would matter?",
                        ratio ? "10 %" : "5" + after,
                        MATTERS,
                        ratio
                                ? "For example 10 %, or 2 times."
                                : "With its unit, such as 5" + after + "."),
                matters(NUMBER, "number"),
                DraftQuestion.usually(
                        "number-spread",
                        "How far does it spread from donning to donning, one condition?",
                        UNKNOWN,
                        "Its standard deviation, "
                                + (ratio ? "such as 5 %" : "such as 2" + after)
                                + ", from a few donnings of your own. With '"
                                + UNKNOWN
                                + "' nobody can say whether the plan will settle."));
    }

    private static DraftQuestion matters(String measure, String words) {
        return DraftQuestion.one(
                measure + "-matters",
                "Which way does a change of the " + words + " matter?",
                List.of(
                        new Option("either", "either way"),
                        new Option("increase", "only an increase"),
                        new Option("decrease", "only a decrease")),
                "If you would act on a change either way, say so; a wrong claim one way is rarer"
                        + " where only that way counts.");
    }
}
