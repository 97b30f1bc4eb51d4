package rigside.yaml;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * A group of keys as told to those who write files. Its reader says which element it reads ({@link
 * Fields#is}), and the two cannot differ: {@link Fields#make} compares them.
 *
 * @param name one word no other element has
 * @param about what it is for, in one or more sentences
 * @param keys in the order they are told
 * @param exactlyOneOf names of keys that exclude each other and of which one has to be there, a
 *     list for each choice; may be empty
 * @param cautions what whoever uses it must heed; may be empty
 */
public record Element(
        String name,
        String about,
        List<Key> keys,
        List<List<String>> exactlyOneOf,
        List<String> cautions) {
    public Element {
        keys = List.copyOf(keys);
        exactlyOneOf = exactlyOneOf.stream().map(List::copyOf).toList();
        cautions = List.copyOf(cautions);
        Set<String> names = new HashSet<>();
        for (Key key : keys) {
            if (!names.add(key.name())) {
                throw new IllegalArgumentException(name + " has the key " + key.name() + " twice");
            }
        }
    }

    public static Element of(String name, String about, Key... keys) {
        return new Element(name, about, List.of(keys), List.of(), List.of());
    }

    public Optional<Key> key(String word) {
        return keys.stream().filter(key -> key.name().equals(word)).findFirst();
    }

    /** This element and all there can be in it, each once, outer ones first. */
    public List<Element> withAllInIt() {
        Set<Element> found = new LinkedHashSet<>();
        collect(found);
        return List.copyOf(found);
    }

    private void collect(Set<Element> found) {
        if (found.add(this)) {
            keys.stream()
                    .flatMap(key -> key.shape().elements().stream())
                    .forEach(element -> element.collect(found));
        }
    }

    /** The same, with keys before its own. */
    public Element after(List<Key> first) {
        List<Key> all = new ArrayList<>(first);
        all.addAll(keys);
        return new Element(name, about, all, exactlyOneOf, cautions);
    }

    /** The same, of these keys exactly one has to be there. */
    public Element withOneOf(List<String> names) {
        List<List<String>> all = new ArrayList<>(exactlyOneOf);
        all.add(names);
        return new Element(name, about, keys, all, cautions);
    }

    /** The same, with what is to be heeded. */
    public Element withCautions(String... words) {
        return new Element(name, about, keys, exactlyOneOf, List.of(words));
    }

    /** The same under another name, without some keys. */
    public Element without(String otherName, Set<String> names) {
        return new Element(
                otherName,
                about,
                keys.stream().filter(key -> !names.contains(key.name())).toList(),
                exactlyOneOf,
                cautions);
    }
}
