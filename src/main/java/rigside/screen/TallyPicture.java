package rigside.screen;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import rigside.analysis.Comparison;
import rigside.analysis.MeasureResult;
import rigside.analysis.Shown;

/** The running tally: what each measure says per condition, and against the band. */
record TallyPicture(Scene scene) {

    static List<Line> of(Scene scene) {
        return new TallyPicture(scene).lines();
    }

    private List<Line> lines() {
        Shown shown = scene.view().shown();
        List<Line> lines = new ArrayList<>();
        lines.addAll(
                Wrap.hanging(
                        Line.of(Tone.STRONG, "Tally  "),
                        Tone.PLAIN,
                        shown.next(),
                        scene.columns()));
        if (!shown.concealed().isEmpty()) {
            lines.addAll(
                    Wrap.hanging(
                            Line.of(Tone.WARN, "Concealed  "),
                            Tone.STRONG,
                            shown.concealed(),
                            scene.columns()));
        }
        if (shown.result()) {
            shown.measures().forEach(measure -> lines.addAll(measure(measure)));
        }
        lines.add(Line.BLANK);
        lines.addAll(Outcomes.of(scene));
        lines.addAll(remarks(shown));
        return List.copyOf(lines);
    }

    private List<Line> measure(MeasureResult result) {
        List<Line> lines = new ArrayList<>();
        lines.add(Line.BLANK);
        lines.addAll(SummaryTable.of(scene, result));
        for (Comparison comparison : result.comparisons()) {
            lines.addAll(Verdicts.of(scene, result, comparison, true));
        }
        return List.copyOf(lines);
    }

    /** What has to be known to read the numbers rightly: each once, whatever it was said of. */
    private List<Line> remarks(Shown shown) {
        Map<String, List<String>> remarks = new LinkedHashMap<>();
        for (MeasureResult result : shown.measures()) {
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
            lines.add(Line.BLANK);
            lines.add(Line.of(Tone.STRONG, "To read it rightly"));
        }
        remarks.forEach(
                (remark, measures) ->
                        lines.addAll(
                                Wrap.hanging(
                                        Line.of(Tone.WARN, " ! "),
                                        Tone.PLAIN,
                                        said(remark, measures, shown.measures().size()),
                                        scene.columns())));
        return lines;
    }

    private static String said(String remark, List<String> measures, int all) {
        return measures.size() == all ? remark : String.join(", ", measures) + ": " + remark;
    }
}
