package rigside.rig;

import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import rigside.yaml.Fields;
import rigside.yaml.Value;

/** Reads a rig file that declares instruments. */
final class InstrumentsReader {
    private static final int FORMAT = 1;

    private InstrumentsReader() {}

    static Value<Instruments> read(Fields fields, Path folder) {
        fields.is(RigElements.INSTRUMENTS);
        fields.required("format").whole(FORMAT, FORMAT);
        Value<String> title = fields.required("title").line();
        fields.optional("about").text();
        for (String key : List.of("ambient", "ambient-varies", "gauge", "conditions")) {
            fields.refused(
                    key,
                    "is for a simulated rig, 'feeds' for instruments",
                    "keep one of them; a rig is either");
        }
        Value<List<FeedReader.Placed>> feeds =
                fields.required("feeds")
                        .list(
                                1,
                                "declare at least one instrument",
                                entry -> FeedReader.read(entry, folder));
        feeds.toOptional().ifPresent(InstrumentsReader::clashes);
        return fields.make(
                () ->
                        new Instruments(
                                title.get(),
                                feeds.get().stream().map(FeedReader.Placed::feed).toList()));
    }

    private static void clashes(List<FeedReader.Placed> feeds) {
        Set<String> ids = new HashSet<>();
        Set<Signal> signals = new HashSet<>();
        for (FeedReader.Placed each : feeds) {
            if (!ids.add(each.feed().id())) {
                each.id()
                        .wrong(
                                "the id '" + each.feed().id() + "' is given to more than one feed",
                                "give each its own");
            }
            boolean twice = false;
            for (Signal signal : Signal.values()) {
                twice |= each.feed().sampled().gives(signal) && !signals.add(signal);
            }
            if (twice) {
                each.sampled()
                        .wrong(
                                "a second feed gives the same quantity as one before it",
                                "keep the one that is to be used");
            }
        }
    }
}
