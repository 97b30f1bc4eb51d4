package rigside.command;

import java.util.Optional;
import java.util.OptionalDouble;
import picocli.CommandLine;
import picocli.CommandLine.Option;
import rigside.analysis.Meaningful;
import rigside.protocol.Measure.Compared;
import rigside.protocol.Plan;

/** The options that say what is fixed before the first donning, or before a table is looked at. */
final class PlanFixed {

    @Option(
            names = "--fewest",
            paramLabel = "N",
            description = "rounds (values per condition) before the first look, 2 or more")
    private Optional<Integer> fewest = Optional.empty();

    @Option(
            names = "--most",
            paramLabel = "N",
            description =
                    "rounds (values per condition) after which the plan is used up, 50 or fewer")
    private Optional<Integer> most = Optional.empty();

    @Option(
            names = "--meaningful",
            paramLabel = "SIZE",
            description =
                    "what would matter: '10%%', '2 times' or '0.8 to 1.25' of a ratio, '25' or"
                            + " '-10 to 25' of a difference")
    private Optional<String> meaningful = Optional.empty();

    @Option(
            names = "--confidence",
            paramLabel = "SHARE",
            description = "over all looks, 0.95 or 95%% (0.95 when nothing else says it)")
    private Optional<String> confidence = Optional.empty();

    @Option(
            names = "--exponent",
            paramLabel = "POWER",
            description =
                    "how the error is spent: small powers early, large ones late (2 when nothing"
                            + " else says it)")
    private Optional<Double> exponent = Optional.empty();

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

    /**
     * The plan the options say by themselves.
     *
     * @param needed what is said of a missing one, see {@link PlanOptions#needed}
     */
    Plan plan(CommandLine command, String needed) {
        int first = PlanOptions.needed(command, "--fewest", fewest, needed);
        int last = PlanOptions.needed(command, "--most", most, needed);
        OptionRules.rounds(command, first, last);
        Plan typical =
                Plan.bare(
                        first,
                        last,
                        0.95,
                        Plan.DEFAULT_EXPONENT,
                        design.map(word -> OptionRules.design(command, word))
                                .orElse(Plan.Design.ROUNDS));
        return over(command, typical);
    }

    /** A protocol's plan with what the options say instead. */
    Plan over(CommandLine command, Plan own) {
        int first = fewest.orElse(own.fewest());
        int last = most.orElse(own.most());
        OptionRules.rounds(command, first, last);
        return own.with(
                first,
                last,
                confidence
                        .map(text -> OptionRules.confidence(command, text))
                        .orElse(own.confidence()),
                exponent.map(power -> OptionRules.exponent(command, power)).orElse(own.exponent()));
    }

    /**
     * The comparison the options say by themselves.
     *
     * @param needed what is said of a missing one, see {@link PlanOptions#needed}
     */
    Compared compared(CommandLine command, String needed) {
        Compared.Scale scale =
                compare.map(
                                word ->
                                        OptionRules.oneOf(
                                                command, "--compare", word, Compared.Scale.class))
                        .orElse(Compared.Scale.RATIO);
        String size = PlanOptions.needed(command, "--meaningful", meaningful, needed);
        Meaningful band = OptionRules.meaningful(command, size, scale);
        return over(
                command,
                new Compared(
                        scale,
                        band.low(),
                        band.high(),
                        size,
                        Compared.Matters.EITHER,
                        true,
                        OptionalDouble.empty()));
    }

    /** A protocol's comparison with what the options say instead. */
    Compared over(CommandLine command, Compared own) {
        Optional<Meaningful> band =
                meaningful.map(size -> OptionRules.meaningful(command, size, own.scale()));
        return new Compared(
                own.scale(),
                band.map(Meaningful::low).orElse(own.bandLow()),
                band.map(Meaningful::high).orElse(own.bandHigh()),
                meaningful.map(Meaningful::words).orElse(own.meaningful()),
                matters.map(
                                word ->
                                        OptionRules.oneOf(
                                                command, "--matters", word, Compared.Matters.class))
                        .orElse(own.matters()),
                own.decides(),
                own.expectedSpread());
    }

    /** Refuses what a protocol fixes and no option replaces. */
    void refuseBesideAProtocol(CommandLine command) {
        PlanOptions.refuse(command, "--compare", compare);
        PlanOptions.refuse(command, "--design", design);
    }
}
