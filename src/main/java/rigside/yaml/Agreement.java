package rigside.yaml;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/** Whether a group of keys was read as its element declares: a difference is a program's fault. */
final class Agreement {
    private final Map<String, Readings> asked = new LinkedHashMap<>();
    private final Set<String> required = new HashSet<>();
    private final Set<String> refused = new HashSet<>();
    private final Set<Set<String>> oneOf = new HashSet<>();
    private Optional<Element> element = Optional.empty();
    private boolean made;

    void is(Element declared) {
        element = Optional.of(declared);
    }

    Readings asked(String key) {
        return asked.computeIfAbsent(key, word -> new Readings());
    }

    void required(String key) {
        required.add(key);
    }

    void refused(String key) {
        refused.add(key);
    }

    void oneOf(List<String> keys) {
        oneOf.add(Set.copyOf(keys));
    }

    /** Whether these keys may stand where a value of some shape is declared. */
    boolean holdsWith(Shape shape) {
        if (element.isEmpty()) {
            // Which element it is could not be read; a reader that forgot to say it comes to make.
            return !made && (shape instanceof Shape.Group || shape instanceof Shape.OneOf);
        }
        if (shape instanceof Shape.OneOf family) {
            List<Element> known = new ArrayList<>(family.elements());
            known.addAll(family.misplaced());
            Map<String, String> words =
                    known.stream().collect(Collectors.toMap(family::word, Element::about));
            return known.contains(element.get()) && asked(family.key()).fit(new Shape.Word(words));
        }
        return shape instanceof Shape.Group group && group.element().equals(element.get());
    }

    /**
     * Compares what was asked for with what is declared.
     *
     * @throws IllegalStateException if they differ
     */
    void mustHold() {
        made = true;
        element.ifPresent(this::mustHold);
    }

    private void mustHold(Element declared) {
        for (Key key : declared.keys()) {
            String where = "'" + key.name() + "' of " + declared.name();
            boolean isAsked = asked.containsKey(key.name()) || isOneOf(key.name());
            boolean isRead = isAsked && !refused.contains(key.name());
            must(isAsked || refused.contains(key.name()), where + " is declared but never read");
            must(
                    key.need() != Key.Need.REQUIRED || required.contains(key.name()),
                    where + " is declared as required but may be left out");
            must(
                    key.need() != Key.Need.OPTIONAL || !required.contains(key.name()),
                    where + " is required but declared as one that may be left out");
            if (isRead && asked.containsKey(key.name())) {
                asked(key.name()).mustFit(key.shape(), where);
            }
        }
        for (String key : asked.keySet()) {
            must(
                    refused.contains(key) || declared.key(key).isPresent(),
                    "'" + key + "' of " + declared.name() + " is read but not declared");
        }
        must(
                oneOf.equals(
                        declared.exactlyOneOf().stream()
                                .map(Set::copyOf)
                                .collect(Collectors.toSet())),
                declared.name() + " declares other keys that exclude each other than are read");
    }

    private boolean isOneOf(String key) {
        return oneOf.stream().anyMatch(keys -> keys.contains(key));
    }

    private static void must(boolean hold, String otherwise) {
        if (!hold) {
            throw new IllegalStateException(otherwise);
        }
    }
}
