package rigside.journal;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.time.ZonedDateTime;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import rigside.session.Event;
import rigside.session.Place;
import rigside.session.Recorded;
import rigside.session.Slot;
import rigside.session.Source;
import rigside.session.Stage;
import rigside.session.Value;

class WrittenFormTest {
    /**
     * Format 1 as it was first written. Never to be changed: journals of that form are in people's
     * hands. A new format gets a file of its own beside it.
     */
    private static final String APPROVED = "/journal/events-1.jsonl";

    /** What format 2 added, besides the hash that each line carries. */
    private static final String LATER = "/journal/events-2.jsonl";

    @Test
    void theSamplesHoldEveryKindOfEventGapAndValue() {
        Set<Class<?>> events = kinds(Samples.events().stream());
        Set<Class<?>> slots =
                kinds(
                        Samples.events().stream()
                                .filter(Event.EntryCaptured.class::isInstance)
                                .map(event -> ((Event.EntryCaptured) event).slot()));
        Set<Class<?>> values =
                kinds(
                        Samples.events().stream()
                                .filter(Event.EntryCaptured.class::isInstance)
                                .map(event -> ((Event.EntryCaptured) event).value()));
        assertEquals(Set.of(Event.class.getPermittedSubclasses()), events);
        assertEquals(Set.of(Slot.class.getPermittedSubclasses()), slots);
        assertEquals(Set.of(Value.class.getPermittedSubclasses()), values);
    }

    static List<Recorded> everyKind() {
        return Samples.recorded();
    }

    @ParameterizedTest
    @MethodSource("everyKind")
    void whatIsWrittenReadsBackAsItWas(Recorded recorded) {
        String line = EventWriter.write(recorded, false);
        assertEquals(recorded, EventReader.read(Json.read(viaUtf8(line)).orElseThrow()));
        assertFalse(line.contains("\n"));
    }

    @ParameterizedTest
    @CsvSource({",", "2026-11-20,\"form-date\":\"2026-11-20\""})
    void aSessionEnteredFromPaperReadsBackAsItWas(LocalDate on, String written) {
        Event.SessionOpened opened =
                new Event.SessionOpened(
                        "0.1.0",
                        "disc.yaml",
                        "format: 1",
                        7,
                        "typed",
                        "",
                        false,
                        1,
                        "",
                        Optional.of(new Event.Paper(Optional.ofNullable(on))));
        Recorded recorded = new Recorded(1, Samples.recorded().get(0).wall(), 0, opened);
        String line = EventWriter.write(recorded, false);
        assertTrue(line.contains("\"from-paper\":true"), line);
        assertTrue(written == null || line.contains(written), line);
        assertEquals(recorded, EventReader.read(Json.read(line).orElseThrow()));
    }

    @Test
    void aFormOfNoDayIsSaid() throws IOException {
        String line =
                approved().lines().findFirst().orElseThrow().replaceFirst("}$", "")
                        + ",\"from-paper\":true,\"form-date\":\"yesterday\"}";
        Unreadable said =
                assertThrows(
                        Unreadable.class, () -> EventReader.read(Json.read(line).orElseThrow()));
        assertEquals(
                "'form-date' is 'yesterday', must be a day like 2026-11-20", said.getMessage());
    }

    @Test
    void theWrittenFormIsTheApprovedOne() throws IOException {
        byte[] written =
                Samples.recorded().stream()
                        .map(recorded -> EventWriter.write(recorded, false) + "\n")
                        .collect(Collectors.joining())
                        .getBytes(StandardCharsets.UTF_8);
        String approved = approved().replaceFirst("\"journal\":1", "\"journal\":2");
        assertEquals(approved, new String(written, StandardCharsets.UTF_8));
        assertArrayEquals(approved.getBytes(StandardCharsets.UTF_8), written);
    }

    @Test
    void theApprovedFormIsRead() throws IOException {
        List<Recorded> read =
                approved()
                        .lines()
                        .map(line -> EventReader.read(Json.read(line).orElseThrow()))
                        .toList();
        assertEquals(Samples.recorded(), read);
    }

    /** A rename in the code must not reach the file. */
    @Test
    void theWordsAreNotTheNamesOfClasses() throws IOException {
        for (Class<?> kind : Event.class.getPermittedSubclasses()) {
            assertFalse(approved().contains(kind.getSimpleName()), kind.getSimpleName());
        }
    }

    @Test
    void everyNumberReadsBackToTheLastBit() {
        Random random = new Random(20_261_125);
        for (int count = 0; count < 20_000; count++) {
            double seconds = Double.longBitsToDouble(random.nextLong());
            Recorded recorded = at(Samples.BEFORE, seconds);
            String line = EventWriter.write(recorded, false);
            assertEquals(recorded, EventReader.read(Json.read(line).orElseThrow()), line);
        }
    }

    /** {@code Double.toString} of Java 17 gives 1.9999999999999998E23, that of Java 19 2.0E23. */
    @Test
    void numbersAreWrittenTheSameOnEveryJavaVersion() {
        double number = Double.parseDouble("2e23");
        assertTrue(
                EventWriter.write(at(Samples.BEFORE, number), false)
                        .endsWith("\"seconds\":2.0E23}"));
    }

    @Test
    void aNumberWrittenByHandWithoutAPointIsRead() {
        String line = EventWriter.write(at(Samples.BEFORE, 7), false);
        String byHand = line.replace("7.0", "7");
        assertEquals(
                at(Samples.BEFORE, 7), EventReader.read(Json.read(byHand).orElseThrow()), byHand);
    }

    static List<ZonedDateTime> walls() {
        return List.of(
                ZonedDateTime.of(2026, 10, 25, 2, 30, 0, 0, ZoneId.of("Europe/Paris"))
                        .withLaterOffsetAtOverlap(),
                ZonedDateTime.of(2026, 10, 25, 2, 30, 0, 0, ZoneId.of("Europe/Paris"))
                        .withEarlierOffsetAtOverlap(),
                ZonedDateTime.of(2026, 1, 1, 0, 0, 0, 0, ZoneOffset.UTC),
                ZonedDateTime.of(2026, 1, 1, 0, 0, 0, 1, ZoneId.of("UTC")),
                ZonedDateTime.of(2026, 1, 1, 0, 0, 0, 0, ZoneId.of("Asia/Kathmandu")));
    }

    @ParameterizedTest
    @MethodSource("walls")
    void theWallClockReadsBackWithItsZone(ZonedDateTime wall) {
        Recorded recorded = new Recorded(2, wall, 0, new Event.Continued());
        assertEquals(
                recorded,
                EventReader.read(Json.read(EventWriter.write(recorded, false)).orElseThrow()));
    }

    @Test
    void everyStageAndSourceHasAWordOfItsOwn() {
        assertEquals(
                List.of(Stage.values()),
                Arrays.stream(Stage.values())
                        .map(each -> Words.stage(Words.of(each)).orElseThrow())
                        .toList());
        assertEquals(
                List.of(Source.values()),
                Arrays.stream(Source.values())
                        .map(each -> Words.source(Words.of(each)).orElseThrow())
                        .toList());
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '`',
            value = {
                "\"event\":\"went-of\" | unknown event 'went-of'",
                "\"event\":\"donning-completed\" | 'donning' is missing",
                "\"event\":\"donning-completed\",\"donning\":2.5"
                        + " | 'donning' is '2.5', must be a whole number",
                "\"event\":\"donning-completed\",\"donning\":3000000000"
                        + " | 'donning' is '3000000000', must be a whole number",
                "\"event\":\"donning-completed\",\"donning\":\"2\""
                        + " | 'donning' is '2', must be a whole number",
                "\"event\":\"halted\",\"why\":null | 'why' is 'null', must be words",
                "\"event\":\"went-on\",\"reason\":\"\" | unknown field 'reason'",
                "\"event\":\"went-on\",\"journal\":1 | unknown field 'journal'",
                "\"event\":\"note-read\",\"place\":3 | 'place' is '3', must be a group of fields",
                "\"event\":\"note-read\",\"place\":{\"stage\":\"later\",\"step\":0}"
                        + " | unknown stage 'later'",
                "\"event\":\"note-read\",\"place\":{\"stage\":\"after\",\"step\":-1}"
                        + " | there is no step -1 of donning 0",
                "\"event\":\"note-read\",\"place\":{\"stage\":\"after\",\"step\":0,\"donning\":1}"
                        + " | unknown field 'donning'",
                "\"event\":\"note-read\",\"place\":{\"stage\":\"donning\",\"step\":0,\"donning\":0}"
                        + " | there is no step 0 of donning 0",
                "\"event\":\"doubt-dropped\",\"slot\":{\"kind\":\"gap\"} | unknown kind 'gap'",
                "\"event\":\"look-taken\",\"round\":1,\"enough\":1 | 'enough' is '1', must be true"
                        + " or false",
                "\"event\":\"look-taken\",\"round\":1,\"enough\":true,\"plan-used-up\":true,"
                        + "\"lines\":{} | 'lines' is '{}', must be a list",
            })
    void aLineThatIsNotWhollyAnEventIsRefusedInWords(String fields, String words) {
        String line =
                "{\"n\":2,\"wall\":\"2026-11-25T09:16:20+01:00[Europe/Paris]\",\"at\":0,"
                        + fields
                        + "}";
        Unreadable refused =
                assertThrows(
                        Unreadable.class, () -> EventReader.read(Json.read(line).orElseThrow()));
        assertEquals(words, refused.getMessage());
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '`',
            value = {
                "1e999,\"unit\":\"s\" | 'number' is 'Infinity', must be a number",
                "\"infinity\",\"unit\":\"s\" | 'number' must be a finite number",
                "true,\"unit\":\"s\" | 'number' is 'true', must be a number",
                "\"12.4\",\"unit\":\"s\" | 'number' is '12.4', must be a number",
                "12.4,\"unit\":\"S\" | unknown unit 'S'",
                "12.4,\"text\":\"12.4 s\" | unknown field 'number'",
            })
    void aValueThatIsNotWhollyOneIsRefusedInWords(String number, String words) {
        String line =
                "{\"n\":2,\"wall\":\"2026-11-25T09:16:20Z\",\"at\":0,\"event\":\"entry-doubted\","
                        + "\"slot\":{\"kind\":\"field\",\"place\":{\"stage\":\"before\",\"step\":0},"
                        + "\"id\":\"x\"},\"value\":{\"number\":"
                        + number
                        + "},\"why\":\"\"}";
        Unreadable refused =
                assertThrows(
                        Unreadable.class, () -> EventReader.read(Json.read(line).orElseThrow()));
        assertEquals(words, refused.getMessage());
    }

    private static Recorded at(Place place, double seconds) {
        return new Recorded(
                2,
                ZonedDateTime.of(2026, 11, 25, 9, 16, 20, 0, ZoneOffset.UTC),
                0,
                new Event.TrialStopped(place, 0, seconds));
    }

    private static String viaUtf8(String line) {
        return new String(line.getBytes(StandardCharsets.UTF_8), StandardCharsets.UTF_8);
    }

    private static Set<Class<?>> kinds(Stream<?> all) {
        return all.map(Object::getClass).collect(Collectors.toSet());
    }

    private static String approved() throws IOException {
        return resource(APPROVED) + resource(LATER);
    }

    private static String resource(String name) throws IOException {
        try (InputStream in = WrittenFormTest.class.getResourceAsStream(name)) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        }
    }
}
