package rigside.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.time.ZonedDateTime;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import rigside.measure.Quantity;
import rigside.measure.Unit;
import rigside.session.Entry;
import rigside.session.Event;
import rigside.session.Evolve;
import rigside.session.Recorded;
import rigside.session.Slot;
import rigside.session.Value;

/** Reports of whole sessions. HTML is read by a parser that is not ours (jsoup 1.21.2). */
class SessionReportTest {
    private static final String SEAL = Read.text("/protocols/seal-and-breathing.yaml");

    /** Figures have approved files of their own. */
    private static String withoutFigures(Page page) {
        return page.html()
                .replaceAll("(?s)<figure.*?<figcaption>(.*?)</figcaption>.*?</figure>", "$1");
    }

    private static Page withoutFigures(List<Block> blocks, Page page) {
        List<Block> kept =
                blocks.stream()
                        .filter(block -> !(block instanceof Block.Drawn))
                        .map(
                                block ->
                                        block instanceof Block.Part part
                                                ? Block.Part.of(
                                                        part.title(),
                                                        part.aside(),
                                                        withoutFigures(part.blocks(), page)
                                                                .blocks())
                                                : block)
                        .toList();
        return new Page(page.title(), page.under(), kept, page.isLong());
    }

    private static String markdown(Page page) {
        return withoutFigures(page.blocks(), page).markdown();
    }

    @Test
    void theDemonstrationIsThis() {
        Page page = SessionReport.of(Reported.demonstration());
        Approved.matches("session-demonstration.html", withoutFigures(page));
        Approved.matches("session-demonstration.md", markdown(page));
    }

    @ParameterizedTest
    @CsvSource({
        "/protocols/repeatability.yaml, repeatability",
        "/protocols/instrument-check.yaml, instrument-check",
        "/protocols/strap-adjustment.yaml, settings",
        "/protocols/several-sizes.yaml, several",
        "/protocols-written-by-a-new-user/strap-lengths.yaml, independent"
    })
    void eachPurposeIsThis(String protocol, String name) throws IOException {
        Material session = Reported.rehearsed(Read.text(protocol), 3);
        Page page = SessionReport.withoutTexts(session);
        Approved.matches("session-" + name + ".md", markdown(page));
        isSound(SessionReport.of(session).html());
    }

    @ParameterizedTest
    @ValueSource(ints = {40, 80, 132})
    void noLineOfTextIsWiderThanAsked(int width) throws IOException {
        Material session = Reported.rehearsed(SEAL, 3, "abandoned:2", "struck-out:3");
        for (String line : SessionReport.withoutTexts(session).lines(width)) {
            assertTrue(Legible.width(line) <= width, line);
        }
    }

    @Test
    void aValueThatIsMissingHasItsReasonOnceInItsRow() throws IOException {
        Material session = Reported.rehearsed(SEAL, 10, "left-out:6");
        Document page = Jsoup.parse(SessionReport.of(session).html());
        List<String> made = rows(part(page, "Fit factor"), "Donning by donning");
        String row = made.get(5);
        assertTrue(row.matches("6 \\d Mask .* none [0-9.; ]+ none \\(left out: [^)]+\\)"), row);
    }

    /** How its value is made stands above already, with the measure that is compared. */
    @Test
    void aMeasureOnlyRecordedHasNoEmptyPartOfTheMethod() throws IOException {
        String field = "      - id: effort\n        ask: Effort\n        unit: Pa\n";
        String text =
                Read.text("/analysis/glass.yaml")
                        .replace(
                                "    compare: ratio\n    meaningful: 2 times\n    decides: no\n",
                                "")
                        .replace("    compare: ratio\n    meaningful: 10 %\n", "")
                        .replace(
                                "    decides: no\n",
                                """
                                  - id: strain
                                    title: Strain
                                    kind: typed-number
                                    field: strain
                                    unit: Pa
                                    resolution: 1 Pa
                                """)
                        .replace(field, field + field.replace("ffort", "ffort of the neck"))
                        .replace("id: effort of the neck", "id: strain");
        Document page = Jsoup.parse(SessionReport.of(Reported.rehearsed(text, 3)).html());
        assertEquals(
                List.of("Fit factor", "Inhalation time", "Effort"),
                part(page, "Method").select("section section").stream()
                        .map(each -> each.child(0).text())
                        .toList());
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "/home/jane.doe/rigside/protocols/disc.yaml",
                "C:\\Users\\jane.doe\\disc.yaml",
                "disc.yaml"
            })
    void theFolderOfTheProtocolIsNotGivenAway(String name) throws IOException {
        Material was = Reported.demonstration();
        Event.SessionOpened old = was.opened();
        Event now =
                new Event.SessionOpened(
                        old.programVersion(),
                        name,
                        old.protocolText(),
                        old.seed(),
                        old.rig(),
                        old.rigText(),
                        old.simulated(),
                        old.speed());
        Material of = Reported.with(was, 0, 1, now);
        String page = SessionReport.of(of).html();
        assertTrue(page.contains("<td>disc.yaml</td>"));
        assertFalse(page.contains("jane.doe"));
        DataPackage tables = DataPackageTest.written(Evolve.fold(of.events()), of.events());
        String description =
                new String(tables.files().get("datapackage.json"), StandardCharsets.UTF_8);
        assertTrue(description.contains("\"disc.yaml\""), description);
        for (byte[] written : tables.files().values()) {
            assertFalse(new String(written, StandardCharsets.UTF_8).contains("jane.doe"));
        }
    }

    @Test
    void whatWentWrongHasItsPlace() throws IOException {
        Material session =
                Reported.rehearsed(
                        SEAL,
                        11,
                        "failed-seal-check:5",
                        "abandoned:3",
                        "not-held:2",
                        "left-out:1",
                        "struck-out:8",
                        "done-again:4",
                        "stopped:6",
                        "feed-lost:7");
        int note = Reported.after(session, Event.DonningCompleted.class, 2);
        session =
                Reported.with(
                        session,
                        note,
                        note,
                        new Event.NoteWritten("the room grew warm"),
                        new Event.FeedFailed("gauge", "gauge sends nothing"),
                        new Event.FeedBack("gauge", "gauge reads well again"),
                        new Event.SessionLeft(),
                        new Event.SessionReopened("0.2.0"));
        Document page = Jsoup.parse(SessionReport.of(session).html());
        Element deviations = part(page, "Deviations from the protocol");
        for (String heading :
                List.of(
                        "Struck out",
                        "Failed checks",
                        "Left out",
                        "Notes",
                        "Pauses",
                        "Broken off",
                        "Instruments")) {
            assertTrue(
                    deviations.select("h3").eachText().contains(heading),
                    () -> heading + " is missing in\n" + deviations.text());
        }
        List<String> broken = rows(deviations, "What was broken off, begun afresh");
        assertTrue(
                broken.stream().anyMatch(row -> row.matches(".* donning 3, Mask .+ rehearsed: .+")),
                broken::toString);
        assertTrue(
                broken.stream()
                        .anyMatch(row -> row.matches(".* donning 5, Mask .+ check failed: .+")),
                broken::toString);
        assertTrue(deviations.text().contains("the room grew warm"));
        assertTrue(deviations.text().contains("the session was left"));
        assertTrue(part(page, "Where this comes from").text().contains("0.1.0, then 0.2.0"));
        isSound(SessionReport.of(session).html());
    }

    @Test
    void whatIsStruckOutAfterALookIsToldBothWays() throws IOException {
        Material session = Reported.rehearsed(SEAL, 11);
        Entry trial = firstTrial(session);
        Material struck =
                Reported.then(
                        session, new Event.EntryVoided(trial.number(), "the hose had slipped"));
        Document page = Jsoup.parse(SessionReport.of(struck).html());
        String row = part(page, "Deviations from the protocol").select("tr").last().text();
        assertTrue(row.contains("the hose had slipped"), row);
        assertTrue(row.matches(".* after \\d+ complete rounds .*"), row);
        assertTrue(row.contains("Inhalation time: "), row);
        assertTrue(row.contains(" either way") || row.contains(" as it was before"), row);
        assertFalse(row.contains("Fit factor"), row);
    }

    @Test
    void anAmendedEntryIsToldWithBothValues() throws IOException {
        Material session = Reported.rehearsed(SEAL, 11);
        Entry trial = firstTrial(session);
        Material amended =
                Reported.then(
                        session,
                        new Event.EntryAmended(
                                trial.number(),
                                new Value.Measured(new Quantity(14.5, Unit.SECOND)),
                                "misread"));
        Document page = Jsoup.parse(SessionReport.of(amended).html());
        Element deviations = part(page, "Deviations from the protocol");
        String row = deviations.select("tr").last().text();
        assertTrue(deviations.select("h3").eachText().contains("Amended"), deviations.text());
        assertTrue(row.contains(trial.value() + " 14.5 s misread after "), row);
        String close = Clock.minute(Recorded.end(session.events()).wall());
        String head = page.body().text();
        assertTrue(head.contains(" to " + close.substring(close.lastIndexOf(' ') + 1)), head);
        assertTrue(head.contains("Put right after its close, last on "), head);
        String origin = part(page, "Where this comes from").text();
        String closed = Clock.whole(Recorded.end(session.events()).wall());
        assertTrue(origin.contains("Closed " + closed), origin);
        assertTrue(origin.contains("Put right after its close, last "), origin);
        assertFalse(
                Jsoup.parse(SessionReport.of(session).html()).text().contains("Put right after"));
    }

    private static Entry firstTrial(Material session) {
        return session.state().captured().entries().stream()
                .filter(entry -> entry.slot() instanceof Slot.Trial && entry.stands())
                .findFirst()
                .orElseThrow();
    }

    @Test
    void inventedValuesAreCalledSoWhereNobodyMissesIt() {
        Page page = SessionReport.of(Reported.demonstration());
        Document html = Jsoup.parse(page.html());
        assertTrue(html.title().startsWith("Simulated, every value is invented: "), html.title());
        assertEquals(html.title(), html.selectFirst("h1").text());
        assertTrue(html.selectFirst(".caution").text().startsWith("Simulated: every value"));
        assertTrue(page.markdown().startsWith("# Simulated, every value is invented: "));
        assertTrue(page.text(80).startsWith("Simulated, every value is invented: "));
        Material real = Reported.real(Reported.demonstration(), Optional.empty());
        assertFalse(SessionReport.of(real).html().contains("Simulated"));
    }

    @Test
    void aFormTypedInIsCalledOne() {
        Event.Paper form = new Event.Paper(Optional.of(LocalDate.of(2026, 11, 20)));
        Material typed = Reported.real(Reported.demonstration(), Optional.of(form));
        assertTrue(
                SessionReport.of(typed)
                        .text(200)
                        .contains(
                                "Entered from a paper form of 20 Nov 2026: every time and reading"
                                        + " was typed in later."));
    }

    @Test
    void timesOfTypingAreNotToldAsTimesWorn() {
        Event.Paper form = new Event.Paper(Optional.of(LocalDate.of(2026, 11, 20)));
        Material worn = Reported.demonstration();
        String typed = SessionReport.of(Reported.real(worn, Optional.of(form))).markdown();
        assertTrue(SessionReport.of(worn).markdown().contains("| Begun | Took |"));
        assertFalse(typed.contains("| Begun | Took |"), typed);
        assertTrue(typed.contains("\n\nTyped in on 25 Nov 2026, "), typed);
        assertTrue(typed.contains("| Time at the keyboard |"), typed);
        assertFalse(typed.contains("| Session time |"), typed);
    }

    @Test
    void anAbandonedDonningIsADeviationTypedFromPaperOrNot() throws IOException {
        Event.Paper form = new Event.Paper(Optional.of(LocalDate.of(2026, 11, 20)));
        Material worn = Reported.rehearsed(SEAL, 3, "abandoned:2");
        String gone = "donning 2, " + worn.worn(2) + " | ";
        assertTrue(deviations(worn).contains("| When | Where | Why |"), deviations(worn));
        assertTrue(deviations(worn).contains(gone), deviations(worn));
        String typed = deviations(Reported.real(worn, Optional.of(form)));
        assertTrue(typed.contains("| When typed | Where | Why |"), typed);
        assertTrue(typed.contains(gone), typed);
    }

    private static String deviations(Material of) {
        String all = SessionReport.of(of).markdown();
        int from = all.indexOf("## Deviations from the protocol");
        return all.substring(from, all.indexOf("\n## ", from));
    }

    @Test
    void eachVerdictIsAHeadingAndIsNotSaidAgainBelowIt() {
        Element found =
                part(
                        Jsoup.parse(SessionReport.of(Reported.demonstration()).html()),
                        "What was found");
        assertEquals(
                List.of(
                        "Fit factor: no meaningful difference",
                        "Inhalation time: a meaningful increase"),
                found.select("h3").eachText());
        for (Element heading : found.select("h3")) {
            String verdict = heading.text().replaceAll(".*: ", "");
            String below = heading.nextElementSibling().text();
            assertTrue(below.contains("95 % interval "), below);
            assertFalse(below.contains(verdict), below);
        }
    }

    @Test
    void aNumberAndItsPercentSignStayOnOneLine() {
        String html = SessionReport.of(Reported.demonstration()).html();
        Element found = part(Jsoup.parse(html), "What was found");
        String below = found.selectFirst("h3").nextElementSibling().wholeText();
        assertTrue(below.contains("(95\u00a0% interval "), below);
    }

    @Test
    void earlierPlansOnTheQuestionAreCounted() {
        Material of = Reported.demonstration();
        ZonedDateTime begun = of.events().get(0).wall().minusDays(3);
        Material known =
                new Material(
                        of.state(),
                        of.shown(),
                        of.events(),
                        List.of(),
                        Optional.of(
                                List.of(
                                        new Material.Earlier(
                                                begun, true, 4, List.of("Fit factor: not settled")),
                                        new Material.Earlier(begun, false, 1, List.of()))));
        String text = SessionReport.of(known).text(400);
        assertTrue(text.contains("It is plan number 3 of this wearer on the same question."), text);
        assertTrue(text.contains("Fit factor: not settled"), text);
        assertTrue(text.contains("not closed"), text);
        assertFalse(SessionReport.of(of).text(400).contains("same question"));
    }

    @Test
    void whatIsConcealedIsSaidWithUntilWhen() {
        Material of = Reported.demonstration();
        int open = Reported.after(of, Event.DonningStarted.class, 4);
        Material half = Reported.of(of.events().subList(0, open));
        String text = SessionReport.of(half).text(400);
        assertTrue(text.contains("This session is not closed"), text);
        assertTrue(text.contains("concealed until the donning ends"), text);
        assertFalse(text.contains("Seed of the order      3"), text);
        isSound(SessionReport.of(half).html());
    }

    /** Of "abc": FIPS 180-2, appendix B.1 (Secure Hash Standard). */
    @Test
    void theHashIsThatOfTheText() {
        assertEquals(
                "ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad",
                ReportOrigin.hash("abc"));
    }

    @Test
    void theWholeProtocolIsThere() {
        Material of = Reported.demonstration();
        Document html = Jsoup.parse(SessionReport.of(of).html());
        assertEquals(
                of.opened().protocolText().lines().map(String::stripTrailing).toList(),
                part(html, "The protocol").selectFirst("pre").wholeText().lines().toList());
    }

    @Test
    void theDemonstrationIsSoundHtml() {
        isSound(SessionReport.of(Reported.demonstration()).html());
    }

    private static List<String> rows(Element within, String caption) {
        return within.select("table").stream()
                .filter(table -> table.select("caption").text().startsWith(caption))
                .flatMap(table -> table.select("tbody tr").eachText().stream())
                .toList();
    }

    private static Element part(Document page, String title) {
        return page.select("section").stream()
                .filter(each -> each.child(0).text().equals(title))
                .findFirst()
                .orElseThrow(() -> new AssertionError("no part " + title + "\n" + page.text()));
    }

    /** Named, ordered and labelled, so that nobody needs to see it to find the way. */
    static void isSound(String html) {
        Document page = Jsoup.parse(html);
        assertEquals("en", page.selectFirst("html").attr("lang"));
        assertEquals(1, page.select("h1").size());
        int level = 1;
        for (Element heading : page.select("h1, h2, h3, h4, h5, h6")) {
            int now = heading.tagName().charAt(1) - '0';
            assertTrue(now <= level + 1, () -> "skipped a level: " + heading);
            assertFalse(heading.text().isBlank(), html);
            level = now;
        }
        for (Element table : page.select("table")) {
            assertFalse(table.select("caption").text().isBlank(), table::outerHtml);
            for (Element head : table.select("th")) {
                assertTrue(Set.of("row", "col").contains(head.attr("scope")), head::outerHtml);
            }
        }
        for (Element figure : page.select("figure")) {
            assertFalse(figure.select("figcaption").text().isBlank());
            figure.select("svg").forEach(svg -> assertEquals("img", svg.attr("role")));
            figure.select("svg").forEach(svg -> assertFalse(svg.select("title").text().isBlank()));
        }
        Set<String> ids = new HashSet<>();
        page.select("[id]").forEach(each -> assertTrue(ids.add(each.id()), each.id()));
        page.select("nav a")
                .forEach(link -> assertTrue(ids.contains(link.attr("href").substring(1))));
        assertFalse(page.select("nav a").isEmpty());
        assertTrue(page.select("script, link, img, iframe, object, form").isEmpty());
    }
}
