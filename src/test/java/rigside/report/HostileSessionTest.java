package rigside.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.ZonedDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Attribute;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import rigside.protocol.ProtocolReader;
import rigside.session.Event;
import rigside.session.Place;
import rigside.session.Recorded;
import rigside.session.Slot;
import rigside.session.Source;
import rigside.session.Stage;
import rigside.session.Story;
import rigside.session.Value;
import rigside.yaml.Quoted;

/** Whatever somebody typed, or wrote into a protocol: the report only shows it. */
class HostileSessionTest {
    private static final String PROTOCOL = Story.text("/session/small.yaml");

    /** Where the small protocol has texts that are shown. */
    private static final List<String> TITLES =
            List.of(
                    "title: Small comparison",
                    "question: Does the added part matter\\?",
                    "title: Mask as it is",
                    "title: Mask with the disc",
                    "ask: Wearer code",
                    "title: Fit factor",
                    "- Stop at once when dizzy or unwell.");

    /** Every kind of tag that this program writes. */
    private static final Set<String> TAGS =
            Set.of(
                    "html",
                    "head",
                    "meta",
                    "title",
                    "style",
                    "bdi",
                    "body",
                    "main",
                    "header",
                    "h1",
                    "h2",
                    "h3",
                    "h4",
                    "p",
                    "strong",
                    "nav",
                    "ol",
                    "li",
                    "a",
                    "section",
                    "span",
                    "ul",
                    "div",
                    "table",
                    "caption",
                    "thead",
                    "tbody",
                    "tr",
                    "th",
                    "td",
                    "details",
                    "summary",
                    "pre",
                    "figure",
                    "figcaption",
                    "svg",
                    "desc",
                    "g",
                    "text",
                    "tspan",
                    "line",
                    "rect",
                    "circle",
                    "path",
                    "polyline",
                    "polygon",
                    "ellipse");

    private static final Page PLAIN = SessionReport.of(session("words"));

    static List<String> texts() {
        return HostileTexts.ALL;
    }

    private static boolean isRead(String text) {
        return ProtocolReader.read("file.yaml", text) instanceof rigside.protocol.Read.Good;
    }

    /** The protocol with the text wherever one is shown and the reader takes it. */
    private static String protocol(String text) {
        String all = PROTOCOL;
        for (String title : TITLES) {
            String key = title.substring(0, title.indexOf(' ') + 1);
            String changed = all.replaceFirst(title + "\n", quoted(key + Quoted.text(text) + "\n"));
            all = isRead(changed) ? changed : all;
        }
        return all;
    }

    private static String quoted(String replacement) {
        return Matcher.quoteReplacement(replacement);
    }

    private static Material session(String text) {
        Material played =
                Reported.of(
                        List.of(
                                new Recorded(
                                        1,
                                        ZonedDateTime.parse("2026-01-05T08:00:00Z"),
                                        0,
                                        new Event.SessionOpened(
                                                text,
                                                text,
                                                protocol(text),
                                                7,
                                                text,
                                                text,
                                                false,
                                                1))));
        List<Event> events = new ArrayList<>();
        events.add(new Event.CautionsAcknowledged());
        Place facts = new Place(Stage.BEFORE, 0, 0);
        events.add(
                new Event.EntryCaptured(
                        1, new Slot.Field(facts, "wearer"), new Value.Said(text), Source.TYPED));
        events.add(new Event.NoteWritten(text));
        events.add(new Event.DonningStarted(1, 1, 1, "bare"));
        events.add(new Event.Halted(text));
        events.add(new Event.Continued());
        events.add(new Event.FeedFailed(text, text));
        events.add(new Event.EntryVoided(1, text));
        events.add(new Event.DonningAbandoned(1, text));
        events.add(new Event.RepeatsEnded(text));
        return Reported.with(played, 1, 1, events.toArray(Event[]::new));
    }

    /** Tags with the names of their attributes, but for what hangs on how long a text is. */
    /** Without those that only keep names from right to left to themselves. */
    private static List<String> elements(Document page) {
        List<String> elements = new ArrayList<>();
        for (Element each : page.getAllElements()) {
            boolean isName = each.tagName().equals("bdi") && each.attributes().isEmpty();
            if (isName || each.parents().is("figure") || each.tagName().equals("#root")) {
                continue;
            }
            Set<String> names = new TreeSet<>();
            each.attributes().asList().stream().map(Attribute::getKey).forEach(names::add);
            names.remove("class");
            elements.add(each.tagName() + names);
        }
        return elements;
    }

    @ParameterizedTest(name = "{index}")
    @MethodSource("texts")
    void itIsShownAndDoesNothing(String text) {
        Page page = SessionReport.of(session(text));
        Document html = Jsoup.parse(page.html());
        assertEquals(elements(Jsoup.parse(PLAIN.html())), elements(html));
        html.getAllElements().stream()
                .map(Element::normalName)
                .filter(tag -> !tag.equals("#root"))
                .forEach(tag -> assertTrue(TAGS.contains(tag), tag));
        assertTrue(
                html.select("[onload], [onerror], [onmouseover], [src], [xlink:href]").isEmpty());
        assertEquals(
                MarkdownTest.kinds(MarkdownTest.parsed(PLAIN)),
                MarkdownTest.kinds(MarkdownTest.parsed(page)));
        for (String written : List.of(page.html(), page.markdown(), page.text(80))) {
            assertTrue(
                    written.codePoints()
                            .noneMatch(
                                    point ->
                                            point != '\n'
                                                    && (Character.isISOControl(point)
                                                            || Character.getType(point)
                                                                    == Character.FORMAT)));
        }
    }

    @Test
    void mostOfThemStandInTitlesToo() {
        long taken =
                texts().stream()
                        .filter(text -> session(text).protocol().title().equals(text.strip()))
                        .count();
        assertTrue(taken > texts().size() / 2, () -> taken + " of " + texts().size());
    }
}
