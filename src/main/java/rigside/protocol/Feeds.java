package rigside.protocol;

import java.util.List;
import java.util.stream.Collectors;
import rigside.yaml.Entry;
import rigside.yaml.Value;

/** A step's reference to a measure its readings go to. */
final class Feeds {
    private Feeds() {}

    /**
     * The id of a measure of one of some kinds.
     *
     * @param does the step and its verb, for messages: {@code trials feed}
     */
    static Value<String> measure(Entry entry, List<MeasureKind> kinds, String does, Known known) {
        return known.measures
                .refer(entry.line())
                .must(
                        word ->
                                !known.kinds.containsKey(word)
                                        || kinds.contains(known.kinds.get(word)),
                        word ->
                                does
                                        + " measures of kind "
                                        + words(kinds)
                                        + ", but '"
                                        + word
                                        + "' is of kind "
                                        + known.kinds.get(word).word(),
                        "name a measure of that kind, or change its 'kind'");
    }

    private static String words(List<MeasureKind> kinds) {
        return kinds.stream().map(MeasureKind::word).collect(Collectors.joining(" or "));
    }
}
