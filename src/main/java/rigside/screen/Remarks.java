package rigside.screen;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import rigside.analysis.MeasureResult;

/** What has to be known to read the numbers rightly: each once, whatever it was said of. */
final class Remarks {
    private Remarks() {}

    static List<Line> of(Scene scene) {
        List<MeasureResult> measures = scene.view().shown().measures();
        Map<String, List<String>> remarks = new LinkedHashMap<>();
        for (MeasureResult result : measures) {
            Stream.of(
                            result.remarks().stream(),
                            result.comparisons().stream().flatMap(each -> each.remarks().stream()),
                            Stream.of(result.promise()).filter(promise -> !promise.isEmpty()))
                    .flatMap(each -> each)
                    .distinct()
                    .forEach(
                            remark ->
                                    remarks.computeIfAbsent(remark, key -> new ArrayList<>())
                                            .add(result.measure().title()));
        }
        List<Line> lines = new ArrayList<>();
        if (!remarks.isEmpty()) {
            lines.add(Line.of(Tone.STRONG, "To read it rightly"));
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
