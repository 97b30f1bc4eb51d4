package rigside.guide;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import rigside.measure.Dimension;
import rigside.measure.Unit;
import rigside.protocol.ProtocolElements;
import rigside.rig.RigElements;
import rigside.yaml.Element;

/** All pages: a few to read first, then one for each element of protocol files and rig files. */
public final class Pages {
    private static final String INDENT = "    ";

    /** The column at which summaries stand in the list. */
    private static final int LISTED_AT = 20;

    private Pages() {}

    /** Every page, in the order they are best read. */
    public static List<Page> all() {
        List<Page> pages = new ArrayList<>(topics());
        List<Element> elements = elements();
        elements.forEach(element -> pages.add(ElementPage.of(element, elements)));
        return pages;
    }

    /** Every element of protocol files, then every one of rig files. */
    public static List<Element> elements() {
        List<Element> all = new ArrayList<>(ProtocolElements.all());
        all.addAll(RigElements.all());
        return List.copyOf(all);
    }

    /** The pages that are about no single element. */
    static List<Page> topics() {
        return List.of(
                topic("first-protocol", "how to write a first protocol; begin here"),
                topic("units", "how numbers and their units are written"),
                topic("comparing", "which change would matter, and what a plan can settle"));
    }

    public static Optional<Page> named(String name) {
        return all().stream().filter(page -> page.name().equals(name)).findFirst();
    }

    /** Every page, each with its summary. */
    public static String list() {
        Set<String> ofRigs =
                RigElements.all().stream().map(Element::name).collect(Collectors.toSet());
        Map<Boolean, String> lists =
                all().stream()
                        .collect(
                                Collectors.partitioningBy(
                                        page -> ofRigs.contains(page.name()),
                                        Collectors.mapping(Pages::listed, Collectors.joining())));
        return lists.get(false) + "\nAbout rig files:\n\n" + lists.get(true);
    }

    private static String listed(Page page) {
        String summary = Wrapped.text(page.summary(), LISTED_AT);
        return String.format("  %-18s", page.name()) + summary.substring(LISTED_AT);
    }

    /** Every page and every key that something is told of. */
    public static Set<String> words() {
        Set<String> words = new LinkedHashSet<>();
        all().forEach(page -> words.add(page.name()));
        elements().forEach(element -> element.keys().forEach(key -> words.add(key.name())));
        return words;
    }

    /** What is to be told of a key, wherever it may stand; empty if there is none of this name. */
    public static String ofKey(String name) {
        return elements().stream()
                .flatMap(
                        element ->
                                element.key(name).stream()
                                        .map(
                                                key ->
                                                        "In '"
                                                                + element.name()
                                                                + "':\n\n"
                                                                + ElementPage.key(key)))
                .collect(Collectors.joining("\n"));
    }

    private static Page topic(String name, String summary) {
        String text =
                Texts.read(name + ".txt")
                        .replace("{{file}}\n", Examples.file(ProtocolElements.FILE).indent(4))
                        .replace("{{units}}\n", units());
        return new Page(name, summary, ElementPage.heading(name) + text);
    }

    private static String units() {
        return Stream.of(Dimension.values())
                .map(
                        dimension ->
                                String.format(
                                        "%s%-26s%s\n",
                                        INDENT,
                                        dimension.words(),
                                        String.join(", ", Unit.symbols(dimension))
                                                + (dimension == Dimension.NUMBER
                                                        ? ", or no unit"
                                                        : "")))
                .collect(Collectors.joining());
    }
}
