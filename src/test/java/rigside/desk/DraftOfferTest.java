package rigside.desk;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.time.ZonedDateTime;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import rigside.analysis.SpreadWords;
import rigside.archive.Archive;
import rigside.archive.SomeValues;
import rigside.archive.WithValues;
import rigside.command.KeptSessions;
import rigside.journal.Journal;
import rigside.protocol.Measure;

/** What sessions on record say to a draft. */
class DraftOfferTest {
    /** The three sessions of {@code reference/scripts/across.R}, see {@code SpreadOnRecordTest}. */
    private static final List<SomeValues> THREE =
            List.of(
                    on("2026-03-16", new double[] {6.6, 6.4}, 7.3, 7.5),
                    on("2026-03-09", new double[] {5.6, 5.9, 5.5, 5.8}, 7.0, 6.8, 7.1, 7.2),
                    on("2026-03-02", new double[] {6.1, 6.3, 5.9}, 7.2, 7.9, 7.1));

    private static SomeValues on(String day, double[] plain, double... disc) {
        return SomeValues.on(day, plain, disc);
    }

    private static DraftRecord record(Stream<SomeValues> sessions) {
        return DraftRecord.of(sessions.map(SomeValues::session).toList());
    }

    private static DraftRecord three() {
        return record(THREE.stream());
    }

    /** The same by A, and one by B that spreads much more. */
    private static DraftRecord ofTwoWearers() {
        SomeValues other = on("2026-04-02", new double[] {6.1, 7.3, 5.9}, 7.2, 9.9, 11.1).by("B");
        return record(Stream.concat(Stream.of(other), THREE.stream()));
    }

    /** Enter at every question before one. */
    private static Draft until(String id, Draft begun) {
        Draft draft = begun;
        while (!draft.question().orElseThrow().id().equals(id)) {
            DraftQuestion asked = draft.question().get();
            boolean typed = asked.options().isEmpty() && asked.usual().isEmpty();
            draft = (typed ? draft.typing(asked.standIn()) : draft).take();
            assertEquals(Optional.empty(), draft.message(), asked.id());
        }
        return draft;
    }

    private static String why(Draft draft) {
        return String.join("\n", draft.question().orElseThrow().why());
    }

    /** R: 3.0 % and, with 80 % confidence, at most 4.2 % ({@code across.json}, value_spread). */
    @Test
    void theSpreadOfOnesOwnSessionsIsToldAndOffered() {
        Draft draft = until("breathing-spread", Draft.begin().with(three()));
        assertTrue(why(draft).startsWith("Your own sessions: 3.0 % (95 % limits "), why(draft));
        assertTrue(why(draft).contains("from 9 differences in 3 sessions."), why(draft));
        assertTrue(why(draft).contains("3 to 9 %: our estimate"), why(draft));
        Draft one = draft.choosing(1);
        assertEquals("3.0 %", one.typed());
        assertEquals("4.2 %", one.choosing(1).typed());
        assertEquals("4.2 %", one.choosing(1).choosing(1).typed());
        assertEquals("", one.choosing(-1).typed());
        assertEquals("3.0 %", draft.typing("7 %").choosing(1).typed());
        assertEquals("7 %", draft.typing("7 %").choosing(-1).typed());
        assertEquals("3.0 %", one.take().answers().of("breathing-spread"));
        assertEquals(
                Math.log(1.03),
                one.take()
                        .protocol()
                        .measure("breathing")
                        .flatMap(each -> each.compared())
                        .orElseThrow()
                        .expectedSpread()
                        .orElseThrow(),
                1e-12);
    }

    /** Whatever is offered can be taken: a size as the archive words it is one the file takes. */
    @ParameterizedTest
    @CsvSource({
        "ratio, none, 0.05",
        "ratio, mm, 2.5",
        "ratio, g, 0.00001",
        "difference, none, 0.5",
        "difference, g, 0.00412",
        "difference, L/min, 12345",
        "difference, Pa, 2.5e10",
        "difference, g, 0.0000000123",
        "difference, degC, 0.31",
        "difference, %, 1.7"
    })
    void aSpreadAsTheArchiveWordsItIsTakenAsAnAnswer(String compare, String unit, double size) {
        Draft draft = until("measures", Draft.begin());
        draft = draft.ticking().choosing(1).ticking().choosing(2).ticking().take();
        draft = until("number-unit", draft).typing(unit).take();
        draft = until("number-compare", draft).choosing(compare.equals("ratio") ? 0 : 1).take();
        draft = until("number-spread", draft);
        Measure measure = draft.protocol().measure("number").orElseThrow();
        assertEquals(compare.equals("ratio"), measure.scale() == Measure.Compared.Scale.RATIO);
        String words = SpreadWords.of(compare.equals("ratio"), measure.unit().symbol(), size);
        Draft taken = draft.typing(words).take();
        assertEquals(Optional.empty(), taken.message(), words);
        assertEquals(words, taken.answers().of("number-spread"));
    }

    @Test
    void theUsualAnswerIsTakenAsEver() {
        Draft draft = until("breathing-spread", Draft.begin().with(three()));
        assertEquals("6 %", draft.take().answers().of("breathing-spread"));
    }

    @Test
    void whereTheyDoNotTellItTheySaySoAndOfferNothing() {
        Draft draft = until("seal-spread", Draft.begin().with(three()));
        assertTrue(why(draft).startsWith("Your sessions on record do not tell it yet.\n"));
        assertEquals("", draft.choosing(1).typed());
    }

    @Test
    void whereThereAreNoneNothingIsSaid() {
        Draft draft = until("breathing-spread", Draft.begin().with(record(Stream.of())));
        assertTrue(why(draft).startsWith("3 to 9 %: our estimate"), why(draft));
    }

    @Test
    void noOtherQuestionHearsOfThem() {
        Draft draft = until("breathing-matters", Draft.begin().with(three()));
        assertEquals(DraftOffer.NONE, draft.offer());
    }

    @Test
    void whatIsTypedStaysWhenTheyAreReadMeanwhile() {
        Draft draft = until("breathing-spread", Draft.begin()).typing("7");
        assertTrue(why(draft).startsWith("Your sessions on record are still being read."));
        Draft read = draft.with(three());
        assertEquals("7", read.typed());
        assertTrue(why(read).startsWith("Your own sessions: 3.0 %"), why(read));
    }

    @Test
    void thatTheyCannotBeReadIsSaidAndTheInterviewGoesOn() {
        DraftRecord none = DraftRecord.unreadable("'sessions' cannot be read: no");
        Draft draft = until("breathing-spread", Draft.begin().with(none));
        assertTrue(
                why(draft).startsWith("Your sessions on record say nothing: 'sessions' cannot be"),
                why(draft));
        assertEquals("6 %", draft.take().answers().of("breathing-spread"));
    }

    @Test
    void ofSeveralWearersItIsAskedWhoseCount() {
        Draft asked = until("wearer", Draft.begin().with(ofTwoWearers()));
        assertTrue(why(asked).contains("they are of B, A."), why(asked));
        assertEquals(List.of("B", "A"), asked.offer().answers());
        Draft unknown = asked.typing("C").take();
        assertEquals(Optional.of("no session on record is of 'C'"), unknown.message());
        Draft ofA = until("breathing-spread", asked.typing("a").take());
        assertTrue(why(ofA).startsWith("Sessions of a: 3.0 %"), why(ofA));
        Draft ofB = until("breathing-spread", asked.choosing(1).take());
        assertTrue(why(ofB).contains("from 3 differences in 1 session."), why(ofB));
        Draft nobody = until("breathing-spread", asked.take());
        assertTrue(why(nobody).startsWith("3 to 9 %"), why(nobody));
        assertEquals(until("breathing-spread", Draft.begin()).text(), ofA.text());
        assertEquals("wearer", until("filters", asked.take()).back().question().get().id());
    }

    @Test
    void whoseCountIsNotAskedInTheMidstOfOtherQuestions() {
        Draft filters = until("filters", Draft.begin());
        assertEquals(filters, filters.with(ofTwoWearers()));
        Draft later = filters.take().with(ofTwoWearers());
        assertEquals("detection-limit", later.question().orElseThrow().id());
        Draft spread = until("breathing-spread", later);
        assertTrue(why(spread).startsWith("Your sessions on record are of several"), why(spread));
        assertEquals(List.of(), spread.offer().answers());
    }

    @Test
    void onlyWhatWasMeasuredAndIsClosedCounts(@TempDir Path home) throws Exception {
        Path sessions = home.resolve("sessions");
        Archive archive = new Archive(sessions, "test");
        assertEquals(DraftRecord.of(List.of()), DraftRecord.read(archive));
        Path real = KeptSessions.ofDemo(sessions, true).keep(0, 1, 0);
        KeptSessions.ofDemo(sessions, false).keep(7, 2, 0);
        // One that was begun and holds nothing yet.
        Journal.create(sessions, "disc.yaml", ZonedDateTime.parse("2026-05-01T09:00:00Z")).close();
        DraftRecord read = DraftRecord.read(archive);
        List<WithValues> found = read.sessions();
        assertEquals(1, found.size());
        assertEquals(real, found.get(0).session().folder());
        assertFalse(found.get(0).values().isEmpty());
        assertEquals(1, read.wearers().size());
    }
}
