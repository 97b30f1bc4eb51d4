package rigside.command;

import java.util.List;
import java.util.function.Function;
import java.util.stream.Collectors;
import rigside.analysis.Comparison;
import rigside.analysis.Relooked;
import rigside.journal.Fingerprint;
import rigside.journal.Reading;

/** What a record was found to be, as JSON. */
final class VerifiedJson {
    private VerifiedJson() {}

    static String of(Verified verified) {
        Reading reading = verified.reading();
        return "{\"sound\":"
                + verified.isSound()
                + ",\"events\":"
                + reading.events().size()
                + ",\"hashed_from_line\":"
                + reading.hashed().map(Fingerprint::from).map(String::valueOf).orElse("null")
                + ",\"fingerprint\":"
                + verified.fingerprint()
                        .map(Fingerprint::hex)
                        .map(AnalysisJson::text)
                        .orElse("null")
                + ",\"closed\":"
                + reading.state().course().closed()
                + ",\"torn\":"
                + reading.torn().map(torn -> AnalysisJson.text(torn.toString())).orElse("null")
                + ",\"damage\":"
                + list(reading.damage(), damage -> AnalysisJson.text(damage.toString()))
                + ",\"protocol_refused_today\":"
                + verified.refusedNow().map(AnalysisJson::text).orElse("null")
                + ",\"looks\":"
                + list(verified.looks(), VerifiedJson::look)
                + ",\"now\":"
                + list(
                        verified.shown().stream()
                                .flatMap(shown -> shown.measures().stream())
                                .flatMap(measure -> measure.comparisons().stream())
                                .toList(),
                        VerifiedJson::comparison)
                + ",\"raw_readings\":"
                + list(
                        verified.raw(),
                        raw ->
                                "{\"feed\":"
                                        + AnalysisJson.text(raw.feed())
                                        + ",\"there\":"
                                        + raw.there()
                                        + "}")
                + "}\n";
    }

    private static String look(Relooked look) {
        return "{\"line\":"
                + look.event()
                + ",\"round\":"
                + look.round()
                + ",\"version\":"
                + AnalysisJson.text(look.version())
                + ",\"differs\":"
                + list(look.differs(), AnalysisJson::text)
                + "}";
    }

    private static String comparison(Comparison comparison) {
        return "{\"measure\":"
                + AnalysisJson.text(comparison.measure())
                + ",\"condition\":"
                + AnalysisJson.text(comparison.condition())
                + ",\"verdict\":"
                + AnalysisJson.text(comparison.verdict().word())
                + "}";
    }

    private static <T> String list(List<T> items, Function<T, String> json) {
        return items.stream().map(json).collect(Collectors.joining(",", "[", "]"));
    }
}
