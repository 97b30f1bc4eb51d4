package rigside.command;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import rigside.analysis.SpreadWords;
import rigside.archive.SpreadOnRecord;
import rigside.archive.SpreadOnRecordWords;
import rigside.protocol.Measure;

/** Which expected spreads a plan goes by, as lines and as JSON. */
final class SpreadsTakenText {
    private final SpreadsTaken taken;

    private SpreadsTakenText(SpreadsTaken taken) {
        this.taken = taken;
    }

    /** A line for each measure, and what has to be known of them. */
    static List<String> lines(SpreadsTaken taken) {
        List<String> lines = new ArrayList<>();
        lines.add(
                taken.cautious()
                        ? "expected spreads on record, with caution:"
                        : "expected spreads on record, as seen:");
        SpreadsTakenText text = new SpreadsTakenText(taken);
        taken.measures().forEach(each -> lines.add("- " + text.line(each)));
        text.remarks().forEach(each -> lines.add("- " + each));
        return List.copyOf(lines);
    }

    private String line(SpreadsTaken.OfMeasure each) {
        String id = each.measure().id() + ": ";
        String file =
                ofFile(each).map(words -> "the file has " + words).orElse("the file has none");
        Optional<SpreadOnRecord.Found> found = taken.found(each);
        if (found.isEmpty()) {
            return id
                    + ofFile(each)
                            .map(words -> words + ", kept from the file; ")
                            .orElse("not known; the file has none, and ")
                    + "no session on record tells it";
        }
        SpreadOnRecord spread = each.onRecord().orElseThrow();
        String seen = SpreadOnRecordWords.planned(spread, taken.design()).orElseThrow();
        return id
                + (taken.cautious()
                        ? spread.scale().spread(found.get().upper()) + " is taken; seen were "
                        : "")
                + seen
                + "; "
                + file;
    }

    private List<String> remarks() {
        Stream<String> ofSpreads =
                told().flatMap(each -> remarks(each).map(words -> said(each, words)));
        Stream<String> unlike =
                told().flatMap(
                                each ->
                                        taken
                                                .found(each)
                                                .flatMap(SpreadOnRecordWords::unlike)
                                                .map(words -> named(each, words))
                                                .stream());
        return Stream.of(ofSpreads, unlike, taken.leftOut().stream())
                .flatMap(each -> each)
                .distinct()
                .toList();
    }

    private Stream<SpreadsTaken.OfMeasure> told() {
        return taken.measures().stream().filter(each -> each.onRecord().isPresent());
    }

    private static Stream<String> remarks(SpreadsTaken.OfMeasure each) {
        return each.onRecord().stream().flatMap(spread -> spread.remarks().stream());
    }

    /** What holds of all is said once, the rest of the measure it holds of. */
    private String said(SpreadsTaken.OfMeasure of, String words) {
        boolean ofAll = told().allMatch(each -> remarks(each).anyMatch(words::equals));
        return ofAll ? words : named(of, words);
    }

    private static String named(SpreadsTaken.OfMeasure of, String words) {
        return of.measure().id() + ": " + words;
    }

    /** Fields to follow others. */
    static String json(SpreadsTaken taken) {
        SpreadsTakenText text = new SpreadsTakenText(taken);
        return "\"expected_spreads\":["
                + taken.measures().stream()
                        .map(each -> text.json(each).toString())
                        .collect(Collectors.joining(","))
                + "],\"remarks\":["
                + text.remarks().stream().map(AnalysisJson::text).collect(Collectors.joining(","))
                + "]";
    }

    private JsonText json(SpreadsTaken.OfMeasure each) {
        Optional<SpreadOnRecord.Found> found = taken.found(each);
        Optional<String> file = ofFile(each);
        return new JsonText()
                .text("measure", each.measure().id())
                .text("from", found.isPresent() ? "record" : file.isPresent() ? "file" : "nowhere")
                .text(
                        "expected_spread",
                        found.map(one -> words(each.measure(), taken.size(one))).or(() -> file))
                .text("of_file", file)
                .object("on_record", found.map(SpreadOnRecordJson::found));
    }

    private static Optional<String> ofFile(SpreadsTaken.OfMeasure each) {
        return each.ofFile().isPresent()
                ? Optional.of(words(each.measure(), each.ofFile().getAsDouble()))
                : Optional.empty();
    }

    private static String words(Measure measure, double size) {
        return SpreadWords.of(
                measure.scale() == Measure.Compared.Scale.RATIO, measure.unit().symbol(), size);
    }
}
