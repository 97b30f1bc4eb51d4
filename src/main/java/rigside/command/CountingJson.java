package rigside.command;

import java.util.OptionalDouble;
import java.util.stream.Collectors;
import rigside.analysis.DonningValue;
import rigside.analysis.MeasureResult;
import rigside.analysis.Shown;
import rigside.measure.Counted;

/**
 * What counting particles alone leaves open of each donning's fit factor, with 95 % confidence, as
 * JSON. A limit that does not exist, since nothing was counted in the mask, is null.
 */
final class CountingJson {
    private CountingJson() {}

    /** In the order of measures and donnings; empty where no volume is known. */
    static String of(Shown shown) {
        return shown.measures().stream()
                .flatMap(
                        measure ->
                                measure.values().stream()
                                        .filter(value -> value.counting().isPresent())
                                        .map(value -> donning(measure, value)))
                .collect(Collectors.joining(",", "[", "]"));
    }

    private static String donning(MeasureResult measure, DonningValue value) {
        Counted.Limits limits = value.counting().orElseThrow();
        return "{\"measure\":"
                + AnalysisJson.text(measure.measure().id())
                + ",\"donning\":"
                + value.donning()
                + ",\"condition\":"
                + AnalysisJson.text(value.condition())
                + ",\"value\":"
                + AnalysisJson.number(value.value())
                + ",\"at_least\":"
                + value.bounded()
                + ",\"counts\":"
                + value.counts()
                + ",\"limits\":["
                + AnalysisJson.number(OptionalDouble.of(limits.low()))
                + ","
                + AnalysisJson.number(limits.high())
                + "]}";
    }
}
