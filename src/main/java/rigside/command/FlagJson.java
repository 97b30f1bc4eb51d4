package rigside.command;

import java.util.Locale;
import java.util.stream.Collectors;
import rigside.analysis.Comparison;
import rigside.analysis.Flag;

/** Flags as JSON. */
final class FlagJson {

    private FlagJson() {}

    /**
     * @param measure its id; empty for a table
     */
    static String of(Flag flag, String measure) {
        return "{"
                + (measure.isEmpty() ? "" : "\"measure\":" + AnalysisJson.text(measure) + ",")
                + "\"kind\":"
                + AnalysisJson.text(flag.kind().name().toLowerCase(Locale.ROOT).replace('_', '-'))
                + ",\"reason\":"
                + AnalysisJson.text(flag.reason())
                + ",\"donnings\":["
                + flag.donnings().stream().map(String::valueOf).collect(Collectors.joining(","))
                + "],\"what_if\":["
                + flag.whatIf().stream().map(FlagJson::whatIf).collect(Collectors.joining(","))
                + "]}";
    }

    private static String whatIf(Flag.WhatIf whatIf) {
        Comparison then = whatIf.then();
        return "{\"condition\":"
                + AnalysisJson.text(then.condition())
                + ",\"without\":"
                + AnalysisJson.text(whatIf.without())
                + ",\"n\":"
                + then.n()
                + ",\"estimate\":"
                + AnalysisJson.number(then.estimate())
                + ",\"interval\":"
                + then.interval().map(AnalysisJson::limits).orElse("null")
                + ",\"verdict\":"
                + AnalysisJson.text(then.verdict().word())
                + ",\"note\":"
                + AnalysisJson.text(then.next())
                + "}";
    }
}
