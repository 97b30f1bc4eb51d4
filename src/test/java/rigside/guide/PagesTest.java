package rigside.guide;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import rigside.analysis.ProtocolAdvice;
import rigside.protocol.ProtocolElements;
import rigside.protocol.ProtocolReader;
import rigside.protocol.Read;
import rigside.rig.RigElements;
import rigside.rig.RigFile;
import rigside.yaml.Element;
import rigside.yaml.Key;

class PagesTest {
    /** Longer than any line of a terminal of 80 columns, which examples stay within too. */
    private static final int WIDEST = 80;

    static List<Element> elements() {
        return Pages.elements();
    }

    static List<Element> ofProtocols() {
        return ProtocolElements.all();
    }

    static List<Element> ofRigs() {
        return RigElements.all();
    }

    static List<Page> pages() {
        return Pages.all();
    }

    @Test
    void everyPageHasANameOfItsOwn() {
        Set<String> names = new HashSet<>();
        Pages.all().forEach(page -> assertTrue(names.add(page.name()), page.name()));
        assertTrue(names.size() > 25, () -> "only " + names.size() + " pages");
    }

    @Test
    void aPageTellsEveryPartOfTheProcedureItsStepMayStandIn() {
        assertTrue(stands("checklist").contains("'before' of 'protocol', 'donning' of 'protocol'"));
        assertTrue(stands("checklist").contains("'after' of 'protocol'"));
        assertFalse(stands("gates").contains("'after' of 'protocol'"));
        assertFalse(stands("trials").contains("'before' of 'protocol'"));
    }

    private static String stands(String name) {
        return Pages.named(name).orElseThrow().text().replaceAll("\\s+", " ");
    }

    @Test
    void theListCutsNoSentenceAndFitsATerminal() {
        String list = Pages.list();
        assertFalse(list.contains("..."), list);
        list.lines().forEach(line -> assertTrue(line.length() < WIDEST, line));
        String words = list.replaceAll("\\s+", " ");
        Pages.all().forEach(page -> assertTrue(words.contains(page.summary()), page::name));
    }

    @ParameterizedTest
    @MethodSource("ofRigs")
    void theExampleOfEveryElementOfRigsIsAWholeFile(Element element) {
        assertEquals(
                List.of(),
                RigFile.read(element.name(), Examples.file(element), Path.of("")).problems());
    }

    @ParameterizedTest
    @MethodSource("ofProtocols")
    void theExampleOfEveryElementIsAWholeFileWithNothingToMend(Element element) {
        Read read = ProtocolReader.read(element.name(), Examples.file(element));
        assertEquals("", read instanceof Read.Bad bad ? bad.problems().toString() : "");
        // Two specimens a condition would hide the element; the advice is right, and left.
        assertEquals(
                List.of(),
                ProtocolAdvice.of(((Read.Good) read).protocol()).stream()
                        .filter(advice -> !advice.startsWith("each condition is one specimen"))
                        .toList());
    }

    @ParameterizedTest
    @MethodSource("elements")
    void theExampleOfEveryElementHoldsAllItsRequiredKeys(Element element) {
        String example = Examples.file(element);
        element.keys().stream()
                .filter(key -> key.need() == Key.Need.REQUIRED)
                .forEach(
                        key ->
                                assertTrue(
                                        example.contains(key.name() + ": ")
                                                || example.contains(key.name() + ":\n"),
                                        key::name));
    }

    @ParameterizedTest
    @MethodSource("elements")
    void everyPageTellsEveryKeyOfItsElement(Element element) {
        String page = Pages.named(element.name()).orElseThrow().text();
        for (Key key : element.keys()) {
            assertTrue(page.contains(ElementPage.key(key)), key::name);
            assertTrue(Pages.ofKey(key.name()).contains("In '" + element.name() + "'"), key::name);
        }
    }

    @ParameterizedTest
    @MethodSource("elements")
    void everySentenceIsOne(Element element) {
        assertTrue(element.about().endsWith("."), element::about);
        for (Key key : element.keys()) {
            assertTrue(key.meaning().endsWith("."), key::meaning);
            assertFalse(key.otherwise().endsWith("."), key::otherwise);
        }
    }

    /** Full breaths and exercises are what can hurt. */
    @Test
    void whereBreathingIsAskedForThePageTellsToStopWhenUnwell() {
        for (String name :
                List.of("trials", "timed-inhalation", "exercises", "exercise", "protocol")) {
            String page = Pages.named(name).orElseThrow().text();
            assertTrue(page.contains("Stop at once and breathe freely at any dizziness"), name);
        }
        assertTrue(
                Pages.named("first-protocol")
                        .orElseThrow()
                        .text()
                        .contains("Nothing found here is a certified fit test"));
    }

    @ParameterizedTest
    @MethodSource("pages")
    void everyPageFitsATerminal(Page page) {
        page.text().lines().forEach(line -> assertTrue(line.length() <= WIDEST, line));
        assertFalse(page.text().contains("{{"), "a part that was not put in");
        assertTrue(page.text().chars().allMatch(c -> c == '\n' || (c >= ' ' && c < 127)));
    }

    /** Pages name others in quotes after "see" or "the page". */
    @ParameterizedTest
    @MethodSource("pages")
    void noPageRefersToOneThatIsNotThere(Page page) {
        Matcher named = Pattern.compile("(?:[Ss]ee|the page)\\s+'([a-z-]+)'").matcher(page.text());
        while (named.find()) {
            String name = named.group(1);
            assertTrue(
                    Pages.named(name).isPresent() || Set.of("lists", "the", "comes").contains(name),
                    name);
        }
    }
}
