package rigside.screen;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Stream;
import rigside.analysis.MeasureResult;

/** What has to be known to read the numbers rightly: each once, whatever it was said of. */
final class Remarks {
    private Remarks() {}

    /** Of the verdicts, and what they promise. */
    static List<Line> ofVerdicts(Scene scene) {
        return of(
                scene,
                "To read it rightly",
                result ->
                        Stream.concat(
                                result.comparisons().stream()
                                        .flatMap(each -> each.remarks().stream()),
                                Stream.of(result.promise()).filter(each -> !each.isEmpty())));
    }

    /** Of the values themselves: levels, flow, resistance, leaks. */
    static List<Line> ofValues(Scene scene) {
        return of(scene, "Of the values", result -> result.remarks().stream());
    }

    private static List<Line> of(
            Scene scene, String heading, Function<MeasureResult, Stream<String>> said) {
        List<MeasureResult> measures = scene.view().shown().measures();
        Map<String, List<String>> remarks = new LinkedHashMap<>();
        for (MeasureResult result : measures) {
            said.apply(result)
                    .distinct()
                    .forEach(
                            remark ->
                                    remarks.computeIfAbsent(remark, key -> new ArrayList<>())
                                            .add(result.measure().title()));
        }
        List<Line> lines = new ArrayList<>();
        if (!remarks.isEmpty()) {
            lines.add(Line.of(Tone.STRONG, heading));
        }
        remarks.forEach(
                (remark, titles) ->
                        lines.addAll(
                                Wrap.hanging(
                                        Line.of(Tone.WARN, " ! "),
                                        Tone.PLAIN,
                                        said(remark, titles, measures.size()),
                                        scene.columns())));
        return List.copyOf(lines);
    }

    private static String said(String remark, List<String> titles, int all) {
        return titles.size() == all ? remark : String.join(", ", titles) + ": " + remark;
    }
}
