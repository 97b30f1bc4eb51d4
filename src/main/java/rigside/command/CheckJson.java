package rigside.command;

import java.util.stream.Collectors;
import rigside.analysis.InstrumentCheck;

/** What came of an instrument check, as JSON. */
final class CheckJson {

    private CheckJson() {}

    /** A key to follow others. */
    static String of(InstrumentCheck check) {
        return ",\"instrument_check\":{\"met\":"
                + check.isMet()
                + ",\"gates\":["
                + check.gates().stream().map(CheckJson::gate).collect(Collectors.joining(","))
                + "],\"failed_checks\":["
                + check.failedChecks().stream()
                        .map(AnalysisJson::text)
                        .collect(Collectors.joining(","))
                + "]}";
    }

    private static String gate(InstrumentCheck.Of gate) {
        return "{\"gate\":"
                + AnalysisJson.text(gate.title())
                + ",\"needs\":"
                + AnalysisJson.text(gate.needs())
                + ",\"read\":"
                + gate.read().map(AnalysisJson::text).orElse("null")
                + ",\"standing\":"
                + AnalysisJson.text(gate.standing().word())
                + "}";
    }
}
