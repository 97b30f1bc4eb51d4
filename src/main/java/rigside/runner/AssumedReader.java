package rigside.runner;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.BiFunction;
import rigside.protocol.Condition;
import rigside.protocol.Measure;
import rigside.protocol.Protocol;
import rigside.protocol.SizeText;
import rigside.yaml.Document;
import rigside.yaml.Words;

/** Reads what a rehearsal is to assume: {@code breathing=15%}, {@code with-disc.seal=2 times}. */
public final class AssumedReader {
    private static final String CHANGE = "change";
    private static final String SPREAD = "spread";

    private final Protocol protocol;
    private final List<String> problems = new ArrayList<>();

    private AssumedReader(Protocol protocol) {
        this.protocol = protocol;
    }

    /**
     * What was read.
     *
     * @param assumed to be used only without problems
     * @param problems what is wrong, each with a second line that says what to do
     */
    public record Read(Assumed assumed, List<String> problems) {
        public Read {
            problems = List.copyOf(problems);
        }
    }

    /**
     * Reads texts.
     *
     * @param changes against the reference
     * @param spreads of values
     */
    public static Read read(Protocol protocol, List<String> changes, List<String> spreads) {
        AssumedReader reader = new AssumedReader(protocol);
        Assumed assumed =
                new Assumed(
                        reader.all(CHANGE, changes, SizeText::change),
                        reader.all(SPREAD, spreads, SizeText::spread));
        return new Read(assumed, reader.problems);
    }

    private List<Assumed.Size> all(
            String kind, List<String> texts, BiFunction<String, Measure, Document<Double>> size) {
        return texts.stream().flatMap(text -> one(kind, text, size).stream()).toList();
    }

    private Optional<Assumed.Size> one(
            String kind, String text, BiFunction<String, Measure, Document<Double>> size) {
        List<String> known = known(kind);
        if (known.isEmpty()) {
            return wrong("nothing of this protocol takes a " + kind, "leave out '--" + kind + "'");
        }
        int equals = text.indexOf('=');
        if (equals < 0) {
            return wrong(
                    kind + " " + Words.quoted(text) + " has no '='",
                    "write a measure and a size, such as " + Words.quoted(known.get(0) + "=15%"));
        }
        String name = text.substring(0, equals).strip();
        int dot = name.indexOf('.');
        Optional<String> condition =
                dot < 0 ? Optional.empty() : Optional.of(name.substring(0, dot).strip());
        Optional<Measure> measure = measure(name.substring(dot + 1).strip(), known);
        if (!isCondition(kind, condition) || measure.isEmpty()) {
            return Optional.empty();
        }
        Document<Double> read = size.apply(text.substring(equals + 1), measure.get());
        read.problems().forEach(each -> wrong(name + ": " + each.what(), each.help()));
        return read.value().map(found -> new Assumed.Size(condition, measure.get().id(), found));
    }

    private boolean isCondition(String kind, Optional<String> id) {
        if (id.isEmpty()) {
            return true;
        }
        List<String> known = protocol.conditions().stream().map(Condition::id).toList();
        if (!known.contains(id.get())) {
            wrong("no condition has the id " + Words.quoted(id.get()), suggestion(id.get(), known));
            return false;
        }
        if (kind.equals(CHANGE) && id.get().equals(protocol.reference().id())) {
            wrong(
                    Words.quoted(id.get()) + " is the reference: changes are against it",
                    "name another condition, or none for all others");
            return false;
        }
        return true;
    }

    /** Changes are against the reference; values spread whether they are compared or not. */
    private List<String> known(String kind) {
        return protocol.measures().stream()
                .filter(each -> AssumedWearer.isInvented(protocol, each))
                .filter(each -> kind.equals(SPREAD) || each.compared().isPresent())
                .map(Measure::id)
                .toList();
    }

    private Optional<Measure> measure(String id, List<String> known) {
        Optional<Measure> measure = protocol.measure(id);
        if (measure.isEmpty()) {
            return wrong("no measure has the id " + Words.quoted(id), suggestion(id, known));
        }
        if (!AssumedWearer.isInvented(protocol, measure.get())) {
            return wrong(
                    "the measure "
                            + Words.quoted(id)
                            + " is calculated, and no single field brings about what is compared:"
                            + " nothing is invented for it",
                    "leave it out");
        }
        return known.contains(id)
                ? measure
                : wrong(
                        "the measure " + Words.quoted(id) + " is recorded, not compared",
                        suggestion("", known));
    }

    private static String suggestion(String word, List<String> known) {
        return Words.suggestion(word, known);
    }

    private <T> Optional<T> wrong(String what, String help) {
        problems.add(what + (help.isEmpty() ? "" : "\n    " + help));
        return Optional.empty();
    }
}
