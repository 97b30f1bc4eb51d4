package rigside.command;

import java.util.Optional;
import java.util.OptionalDouble;
import picocli.CommandLine;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import rigside.analysis.Meaningful;
import rigside.analysis.PlanTerms;
import rigside.measure.Unit;
import rigside.protocol.Measure;
import rigside.protocol.Measure.Compared;
import rigside.protocol.Plan;
import rigside.protocol.Protocol;

/**
 * The options of {@code plan} that say what is fixed and what is believed. Beside a protocol they
 * replace what it says.
 */
final class PlanOptions {

    @Option(
            names = "--fewest",
            paramLabel = "N",
            description = "rounds (values per condition) before the first look, 2 or more")
    private Optional<Integer> fewest = Optional.empty();

    @Option(
            names = "--most",
            paramLabel = "N",
            description = "rounds (values per condition) after which the plan is used up")
    private Optional<Integer> most = Optional.empty();

    @Option(
            names = "--meaningful",
            paramLabel = "SIZE",
            description =
                    "what would matter: '10%%', '2 times' or '0.8 to 1.25' of a ratio, '25' or"
                            + " '-10 to 25' of a difference")
    private Optional<String> meaningful = Optional.empty();

    @Option(
            names = "--spread",
            paramLabel = "SD",
            description =
                    "standard deviation of what one round gives: of its log ratio (0.10 is about 10"
                            + " %%), of its difference in the unit of --meaningful; where values"
                            + " are independent, of one value's logarithm or of one value. The"
                            + " expected-spread of a protocol is that of one value, sqrt 2 smaller")
    private Optional<Double> spread = Optional.empty();

    @Option(
            names = "--confidence",
            paramLabel = "SHARE",
            description = "over all looks, 0.95 or 95%% (0.95 when nothing else says it)")
    private Optional<String> confidence = Optional.empty();

    @Option(
            names = "--matters",
            paramLabel = "either|increase|decrease",
            description = "the direction in which a change matters (either)")
    private Optional<String> matters = Optional.empty();

    @Option(
            names = "--compare",
            paramLabel = "ratio|difference",
            description = "how two values are compared (ratio); a protocol says it itself")
    private Optional<String> compare = Optional.empty();

    @Option(
            names = "--design",
            paramLabel = "rounds|independent",
            description =
                    "whether values are compared within their round (default) or each by itself; a"
                            + " protocol says it itself")
    private Optional<String> design = Optional.empty();

    @Option(
            names = "--trials",
            paramLabel = "N",
            description = "trials a donning's value is the mean of; a protocol says it itself")
    private Optional<Integer> trials = Optional.empty();

    @Option(
            names = "--trial-spread",
            paramLabel = "SD",
            description =
                    "standard deviation of one trial within its donning, on the same scale (its"
                            + " logarithm, for ratios): then the best number of trials is named too")
    private Optional<Double> trialSpread = Optional.empty();

    @Option(
            names = "--donning-takes",
            paramLabel = "MINUTES",
            description = "minutes of one donning without its trials; a protocol says it itself")
    private Optional<Double> donningMinutes = Optional.empty();

    @Option(
            names = "--trial-takes",
            paramLabel = "MINUTES",
            description = "minutes of one trial with its rest; a protocol says it itself")
    private Optional<Double> trialMinutes = Optional.empty();

    /** Twice the longest plan a protocol may have. */
    private static final int MOST = 100;

    private static final int MOST_TRIALS = 50;

    private enum Design {
        ROUNDS,
        INDEPENDENT
    }

    /**
     * Without a protocol.
     *
     * @throws ParameterException if an option is missing or cannot be used
     */
    PlanTerms terms(CommandLine command) {
        Compared.Scale scale =
                compare.map(
                                word ->
                                        TableOptions.oneOf(
                                                command, "--compare", word, Compared.Scale.class))
                        .orElse(Compared.Scale.RATIO);
        String size = needed(command, "--meaningful", meaningful);
        double roundSpread = positive(command, "--spread", needed(command, "--spread", spread));
        Plan plan =
                new Plan(
                        fewest(command, needed(command, "--fewest", fewest), mostOr(2)),
                        needed(command, "--most", most),
                        confidenceOr(command, 0.95),
                        Plan.DEFAULT_EXPONENT,
                        design(command),
                        Plan.Order.AS_LISTED,
                        Plan.Until.SHOWN,
                        Plan.Until.SHOWN,
                        false,
                        OptionalDouble.empty(),
                        OptionalDouble.empty());
        Compared compared =
                compared(
                        command,
                        new Compared(
                                scale,
                                -1,
                                1,
                                size,
                                Compared.Matters.EITHER,
                                true,
                                OptionalDouble.empty()));
        Measure measure =
                new Measure(
                        "value",
                        "Value",
                        new Measure.TypedNumber("value"),
                        Unit.ONE,
                        0,
                        Optional.of(compared));
        return made(
                command,
                () ->
                        PlanTerms.of(
                                measure,
                                plan,
                                roundSpread,
                                costs(command),
                                trialSpread(command)
                                        .map(sd -> new PlanTerms.Trials(sd, trials(command)))));
    }

    /**
     * Of a protocol's measure, with what the options say instead.
     *
     * @throws ParameterException if an option cannot be used, or no spread is known
     */
    PlanTerms terms(CommandLine command, Protocol protocol, Measure measure) {
        refuse(command, "--compare", compare);
        refuse(command, "--design", design);
        refuse(command, "--trials", trials);
        refuse(command, "--donning-takes", donningMinutes);
        refuse(command, "--trial-takes", trialMinutes);
        Plan own = protocol.plan();
        Plan plan =
                new Plan(
                        fewest(command, fewest.orElse(own.fewest()), mostOr(own.most())),
                        mostOr(own.most()),
                        confidenceOr(command, own.confidence()),
                        own.exponent(),
                        own.design(),
                        own.order(),
                        own.trialClock(),
                        own.result(),
                        own.sharedOverMeasures(),
                        own.donningSeconds(),
                        own.trialSeconds());
        Measure asked =
                new Measure(
                        measure.id(),
                        measure.title(),
                        measure.kind(),
                        measure.unit(),
                        measure.resolution(),
                        measure.compared().map(each -> compared(command, each)));
        Protocol changed =
                new Protocol(
                        protocol.title(),
                        protocol.question(),
                        protocol.about(),
                        protocol.cautions(),
                        protocol.facts(),
                        protocol.conditions(),
                        protocol.measures(),
                        plan,
                        protocol.before(),
                        protocol.donning(),
                        protocol.after());
        OptionalDouble roundSpread =
                spread.isPresent()
                        ? OptionalDouble.of(positive(command, "--spread", spread.get()))
                        : OptionalDouble.empty();
        OptionalDouble within =
                trialSpread(command).map(OptionalDouble::of).orElse(OptionalDouble.empty());
        return made(command, () -> PlanTerms.of(changed, asked, roundSpread, within).orElse(null));
    }

    private interface Making {
        PlanTerms terms();
    }

    private PlanTerms made(CommandLine command, Making making) {
        try {
            PlanTerms terms = making.terms();
            if (terms == null) {
                throw new ParameterException(
                        command,
                        "the protocol names no expected-spread of this measure; say what you expect"
                                + " with --spread");
            }
            return terms;
        } catch (IllegalArgumentException trialsTooLarge) {
            throw new ParameterException(
                    command,
                    "--trial-spread is "
                            + trialSpread.map(String::valueOf).orElse("not given")
                            + ": trials would spread more than whole donnings; one of the two"
                            + " spreads is wrong",
                    trialsTooLarge);
        }
    }

    private Compared compared(CommandLine command, Compared own) {
        Optional<Meaningful> band =
                meaningful.map(
                        size ->
                                Meaningful.parse(size, own.scale())
                                        .orElseThrow(
                                                () ->
                                                        TableOptions.notMeaningful(
                                                                command, size, own.scale())));
        return new Compared(
                own.scale(),
                band.map(Meaningful::low).orElse(own.bandLow()),
                band.map(Meaningful::high).orElse(own.bandHigh()),
                meaningful.map(Meaningful::words).orElse(own.meaningful()),
                matters.map(
                                word ->
                                        TableOptions.oneOf(
                                                command, "--matters", word, Compared.Matters.class))
                        .orElse(own.matters()),
                own.decides(),
                own.expectedSpread());
    }

    private Optional<PlanTerms.Costs> costs(CommandLine command) {
        if (donningMinutes.isEmpty() && trialMinutes.isEmpty()) {
            return Optional.empty();
        }
        double donning =
                donningMinutes.isEmpty()
                        ? 0
                        : positive(command, "--donning-takes", donningMinutes.get());
        double trial =
                trialMinutes.isEmpty() ? 0 : positive(command, "--trial-takes", trialMinutes.get());
        // Two conditions, in seconds.
        return Optional.of(new PlanTerms.Costs(120 * donning, 120 * trial, trials(command)));
    }

    private int trials(CommandLine command) {
        int count = trials.orElse(1);
        if (count < 1 || count > MOST_TRIALS) {
            throw new ParameterException(
                    command, "--trials is " + count + ", must be 1 to " + MOST_TRIALS);
        }
        return count;
    }

    private Optional<Double> trialSpread(CommandLine command) {
        return trialSpread.map(sd -> positive(command, "--trial-spread", sd));
    }

    private Plan.Design design(CommandLine command) {
        Design word =
                design.map(each -> TableOptions.oneOf(command, "--design", each, Design.class))
                        .orElse(Design.ROUNDS);
        return word == Design.ROUNDS ? Plan.Design.ROUNDS : Plan.Design.INDEPENDENT_DONNINGS;
    }

    private double confidenceOr(CommandLine command, double own) {
        return confidence.map(word -> TableOptions.confidence(command, word)).orElse(own);
    }

    private int mostOr(int own) {
        return most.orElse(own);
    }

    private static int fewest(CommandLine command, int fewest, int most) {
        if (fewest < 2 || most < fewest || most > MOST) {
            throw new ParameterException(
                    command,
                    "--fewest "
                            + fewest
                            + " and --most "
                            + most
                            + ": fewest must be 2 or more, most at least that and at most "
                            + MOST);
        }
        return fewest;
    }

    private static double positive(CommandLine command, String option, double number) {
        // NaN fails.
        if (!(number > 0 && number < 1e9)) {
            throw new ParameterException(command, option + " is " + number + ", must be above 0");
        }
        return number;
    }

    private static <T> T needed(CommandLine command, String option, Optional<T> given) {
        return given.orElseThrow(
                () ->
                        new ParameterException(
                                command,
                                "without a protocol "
                                        + option
                                        + " is needed, as in: plan --fewest 3 --most 10"
                                        + " --meaningful 10% --spread 0.10"));
    }

    private static void refuse(CommandLine command, String option, Optional<?> given) {
        if (given.isPresent()) {
            throw new ParameterException(
                    command, option + " is said by the protocol itself; leave it out");
        }
    }
}
