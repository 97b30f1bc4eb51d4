package rigside.yaml;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Supplier;

/**
 * A group of keys being read. Ask for every key there can be, then call {@link #make}: it notes the
 * keys that are missing and those nobody asked for, and builds the thing when all was well.
 */
public final class Fields {
    private final Spot spot;
    private final Tree.Mapping mapping;
    private final int problemsBefore;
    private final Set<String> asked = new LinkedHashSet<>();
    private final Set<String> refused = new LinkedHashSet<>();
    private final List<String> missing = new ArrayList<>();
    private final List<String> alternatives = new ArrayList<>();
    private final Agreement agreement = new Agreement();

    Fields(Spot spot, Tree.Mapping mapping) {
        this.spot = spot;
        this.mapping = mapping;
        this.problemsBefore = spot.problems().count();
    }

    /** Says which element these keys are, so that {@link #make} can compare the two. */
    public void is(Element element) {
        agreement.is(element);
    }

    /** Whether these keys may be read where a value of some shape is declared. */
    boolean isDeclaredAs(Shape shape) {
        return agreement.holdsWith(shape);
    }

    /** The entry behind a key that has to be there. */
    public Entry required(String key) {
        agreement.required(key);
        Entry entry = optional(key);
        if (!entry.isGiven()) {
            missing.add(key);
        }
        return entry;
    }

    /** The entry behind a key that may be left out. */
    public Entry optional(String key) {
        asked.add(key);
        Readings readings = agreement.asked(key);
        return mapping.entries().entrySet().stream()
                .filter(entry -> entry.getKey().text().equals(key))
                .findFirst()
                .map(
                        found ->
                                Entry.of(
                                        spot.at(found.getValue(), "'" + key + "'"),
                                        found.getValue(),
                                        readings))
                .orElseGet(
                        () ->
                                Entry.missing(
                                        new Spot(
                                                spot.problems(),
                                                spot.line(),
                                                spot.column(),
                                                "'" + key + "'"),
                                        readings));
    }

    /**
     * Says that a key, known elsewhere, has no place here; a problem if it is given.
     *
     * @param why what is wrong, to follow the key: {@code is for fit factors only}
     */
    public void refused(String key, String why, String help) {
        mapping.entries().keySet().stream()
                .filter(given -> given.text().equals(key))
                .forEach(given -> spot.at(given, key).note("'" + key + "' " + why, help));
        asked.add(key);
        agreement.refused(key);
        refused.add(key);
    }

    /**
     * The entry behind a key that decides which other keys there are. Its absence is noted at once,
     * and when it is absent or wrong the other keys are better left alone.
     *
     * @param example what could stand there, for the message
     */
    public Entry deciding(String key, String example) {
        agreement.required(key);
        Entry entry = optional(key);
        if (!entry.isGiven()) {
            misspelt(key)
                    .ifPresentOrElse(
                            given -> noteStranger(given, List.of(key)),
                            () -> noteMissing(key, example));
        }
        return entry;
    }

    /** Whether a key is given, or one that is nearly it, without asking for it. */
    public boolean speaksOf(String key) {
        return misspelt(key).isPresent();
    }

    /** Whether a key is not given, and one that is nearly it is. */
    public boolean isMisspelt(String key) {
        return !optional(key).isGiven() && misspelt(key).isPresent();
    }

    private Optional<Tree.Scalar> misspelt(String key) {
        return mapping.entries().keySet().stream()
                .filter(given -> Words.nearest(given.text(), List.of(key)).isPresent())
                .findFirst();
    }

    /** The one key given of several that exclude each other; empty, and noted, otherwise. */
    public Optional<String> oneKeyOf(List<String> keys) {
        asked.addAll(keys);
        agreement.oneOf(keys);
        List<Tree.Scalar> given =
                mapping.entries().keySet().stream()
                        .filter(key -> keys.contains(key.text()))
                        .toList();
        if (given.size() > 1) {
            spot.at(given.get(1), "")
                    .note(
                            "'"
                                    + given.get(0).text()
                                    + "' and '"
                                    + given.get(1).text()
                                    + "' exclude each other",
                            "keep one of them");
        }
        if (given.isEmpty()) {
            alternatives.addAll(keys);
        }
        return given.size() == 1 ? Optional.of(given.get(0).text()) : Optional.empty();
    }

    /**
     * What is built from these keys, once all were asked for; absent if anything in it is wrong.
     *
     * @throws IllegalStateException if they were read otherwise than their element declares
     */
    public <T> Value<T> make(Supplier<T> maker) {
        agreement.mustHold();
        noteStrangers();
        missing.forEach(key -> noteMissing(key, "..."));
        if (!alternatives.isEmpty()) {
            spot.note(
                    "missing key" + inside() + ", one of " + String.join(", ", alternatives),
                    "add a line with one of them");
        }
        return spot.problems().count() == problemsBefore && !spot.problems().isBarred()
                ? Value.of(spot, maker.get())
                : Value.absent(spot);
    }

    /** A content that is not read but known, at the place of these keys. */
    public <T> Value<T> value(T content) {
        return Value.of(spot, content);
    }

    /** Notes a problem with these keys as a whole, see {@link Value#wrong}. */
    public <R> Value<R> wrong(String what, String help) {
        return Value.<R>absent(spot).wrong(what, help);
    }

    /** Keys nobody asked for; one that is nearly a missing key is that key misspelt. */
    private void noteStrangers() {
        Set<String> known = new LinkedHashSet<>(asked);
        known.removeAll(refused);
        for (Tree.Scalar key : mapping.entries().keySet()) {
            if (asked.contains(key.text())) {
                continue;
            }
            if (spot.problems().isFull()) {
                break;
            }
            noteStranger(key, known);
            Words.nearest(key.text(), missing).ifPresent(missing::remove);
            Words.nearest(key.text(), alternatives).ifPresent(near -> alternatives.clear());
        }
    }

    private void noteStranger(Tree.Scalar key, Collection<String> known) {
        int colon = key.text().indexOf(':');
        if (colon > 0 && known.contains(key.text().substring(0, colon))) {
            String word = key.text().substring(0, colon);
            spot.at(key, key.text())
                    .note(
                            "the key '" + word + "' has no space after its colon",
                            "write '" + word + ": ' and then its value");
            missing.remove(word);
            return;
        }
        spot.problems()
                .noteStranger(
                        key.text(),
                        spot.problems()
                                .problem(
                                        key.line(),
                                        key.column(),
                                        "unknown key " + Words.quoted(key.text()) + inside(),
                                        Words.suggestion(key.text(), known)));
    }

    private void noteMissing(String key, String example) {
        spot.problems()
                .noteLack(
                        key,
                        spot.label(),
                        spot.problems()
                                .problem(
                                        spot.line(),
                                        spot.column(),
                                        "missing key '" + key + "'" + inside(),
                                        "add a line '" + key + ": " + example + "'"));
    }

    private String inside() {
        return " in " + spot.label();
    }
}
