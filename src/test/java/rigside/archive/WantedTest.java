package rigside.archive;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Random;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import rigside.decide.Conclusion;
import rigside.decide.Verdict;
import rigside.protocol.Measure.Compared.Matters;
import rigside.protocol.Subject;

class WantedTest {
    private static final Wanted ALL = wanted(Search.of(""), List.of());

    @TempDir static Path made;

    private static List<Archived> many;

    private static final Archived GLASS =
            SomeSession.in(Path.of("2026-11-25-0916-straps"))
                    .begun("2026-11-25T23:30:00+01:00")
                    .closed()
                    .about("Straps at the glass bench", "Does the naïve Straße strap slip?")
                    .comparing("Old strap", "New strap")
                    .fact("wearer", "Ab12", Subject.WEARER_CODE)
                    .fact("mask-size", "LARGE", Subject.MASK)
                    .found(finding(Verdict.MEANINGFUL_DIFFERENCE, -1, Matters.EITHER))
                    .archived();

    @BeforeAll
    static void makeSessions() throws Exception {
        ManySessions.write(made, 50, 6, 7);
        many = new Archive(made, "1").list(Progress.NONE);
    }

    private static Archived.Finding finding(Verdict verdict, int direction, Matters matters) {
        return new Archived.Finding(
                "seal",
                "New strap",
                new Conclusion(verdict, direction),
                matters,
                OptionalDouble.of(0.5),
                Optional.empty(),
                4);
    }

    private static Wanted wanted(Search search, List<VerdictAsked> verdicts) {
        return new Wanted(
                search,
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                verdicts,
                Optional.empty(),
                Optional.empty());
    }

    private static Wanted on(String from, String to) {
        return new Wanted(
                Search.of(""),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.of(LocalDate.parse(from)),
                Optional.of(LocalDate.parse(to)),
                List.of(),
                Optional.empty(),
                Optional.empty());
    }

    private static Wanted of(String wearer, String mask, String protocol, String condition) {
        return new Wanted(
                Search.of(""),
                Optional.of(wearer),
                Optional.of(mask),
                Optional.of(protocol),
                Optional.of(condition),
                Optional.empty(),
                Optional.empty(),
                List.of(),
                Optional.of(true),
                Optional.of(false));
    }

    @ParameterizedTest
    @CsvSource({
        "glass, true",
        "GLASS straps, true",
        "straps glass, true",
        "strasse, true",
        "STRAßE, true",
        "naive, true",
        "nai\u0308ve, true",
        "n\u200Baive, true",
        "new, true",
        "ab12, true",
        "large, true",
        "0916, true",
        "'mask a', true",
        "'  glass   bench ', true",
        "'old new', true",
        "glasses, false",
        "'glass small', false",
        "'bench does', true",
        "benchdoes, false",
        "'meaningful DECREASE', true",
        "'straps meaningful', true",
        "increase, false",
        ".*, false"
    })
    void wordsAreFoundHoweverTheyAreWritten(String words, boolean found) {
        assertEquals(found, Search.of(words).finds(GLASS));
    }

    @Test
    void moreWordsNeverFindMore() {
        Random random = new Random(11);
        List<String> words =
                many.stream()
                        .flatMap(each -> List.of(Search.text(each).split("\\s+", -1)).stream())
                        .distinct()
                        .toList();
        for (int i = 0; i < 300; i++) {
            List<String> asked = new ArrayList<>();
            List<Archived> before = many;
            while (asked.size() < 4) {
                asked.add(words.get(random.nextInt(words.size())));
                Search search = new Search(asked);
                List<Archived> now = many.stream().filter(search::finds).toList();
                assertTrue(before.containsAll(now), () -> asked + " finds more");
                before = now;
            }
        }
    }

    @Test
    void everyWordOfASessionFindsIt() {
        for (Archived each : many) {
            for (String word : Search.text(each).split("\\s+", -1)) {
                assertTrue(Search.of(word).finds(each), word);
            }
        }
    }

    /** An open session has come to none. */
    @Test
    void theWordsOfAVerdictAreSearchedWhereItIsSaid() {
        int found = 0;
        for (Archived each : many) {
            for (Archived.Finding finding : each.findings()) {
                assertTrue(Search.of(finding.words()).finds(each), finding.words());
                found++;
            }
            assertTrue(each.closed() || !Search.text(each).contains("\na meaningful"));
        }
        assertTrue(found > 0);
    }

    @Test
    void nothingAskedFindsAll() {
        assertEquals(many, many.stream().filter(ALL).toList());
        assertTrue(Search.of(" \t ").isForAll());
    }

    @Test
    void aDayIsThatOfTheBenchNotOfAnotherZone() {
        assertTrue(on("2026-11-25", "2026-11-25").test(GLASS));
        assertTrue(on("2026-11-24", "2026-11-26").test(GLASS));
        assertEquals(false, on("2026-11-26", "2026-11-27").test(GLASS));
        assertEquals(false, on("2026-11-20", "2026-11-24").test(GLASS));
    }

    @Test
    void aSessionThatNeverBeganIsOnNoDay() {
        Archived none = SomeSession.in(Path.of("none")).archived();
        assertEquals(false, on("1900-01-01", "2100-01-01").test(none));
    }

    @ParameterizedTest
    @CsvSource({
        "AB12, large, straps, new, true",
        "ab12, mask, disc.yaml, old strap, true",
        "ab1, large, straps, new, false",
        "ab12, small, straps, new, false",
        "ab12, large, disc slip, new, false",
        "ab12, large, straps, old new, false"
    })
    void eachPartOfAWishHasToHold(
            String wearer, String mask, String protocol, String condition, boolean found) {
        assertEquals(found, of(wearer, mask, protocol, condition).test(GLASS));
    }

    @ParameterizedTest
    @CsvSource({
        "meaningful difference, MEANINGFUL_DIFFERENCE, 1, EITHER, true",
        "a meaningful difference, MEANINGFUL_DIFFERENCE, -1, EITHER, true",
        "meaningful increase, MEANINGFUL_DIFFERENCE, 1, EITHER, true",
        "meaningful increase, MEANINGFUL_DIFFERENCE, -1, EITHER, false",
        "Meaningful-Decrease, MEANINGFUL_DIFFERENCE, -1, DECREASE, true",
        "meaningful difference, NO_MEANINGFUL_DIFFERENCE, 0, EITHER, false",
        "no meaningful difference, NO_MEANINGFUL_DIFFERENCE, 0, INCREASE, true",
        "no meaningful increase, NO_MEANINGFUL_DIFFERENCE, 0, INCREASE, true",
        "no meaningful increase, NO_MEANINGFUL_DIFFERENCE, 0, EITHER, true",
        "no meaningful increase, NO_MEANINGFUL_DIFFERENCE, 0, DECREASE, false",
        "a difference of unsettled size, DIFFERENCE_SIZE_UNSETTLED, 1, EITHER, true",
        "not settled, NOT_SETTLED, 0, EITHER, true",
        "not settled, TOO_FEW_ROUNDS, 0, EITHER, false",
        "too few repeats, TOO_FEW_ROUNDS, 0, EITHER, true"
    })
    void aVerdictIsAskedForInItsOwnWords(
            String asked, Verdict verdict, int direction, Matters matters, boolean found) {
        Archived session =
                SomeSession.in(Path.of("one"))
                        .closed()
                        .found(finding(Verdict.NOT_SETTLED, 0, matters))
                        .found(finding(verdict, direction, matters))
                        .archived();
        boolean also = asked.equals("not settled");
        VerdictAsked parsed = VerdictAsked.parse(asked).orElseThrow();
        assertEquals(found || also, wanted(Search.of(""), List.of(parsed)).test(session));
    }

    @Test
    void everyVerdictThatIsSaidCanBeAskedFor() {
        for (Verdict verdict : Verdict.values()) {
            for (Matters matters : Matters.values()) {
                Archived.Finding said = finding(verdict, 1, matters);
                VerdictAsked asked = VerdictAsked.parse(said.words()).orElseThrow();
                assertEquals(verdict, asked.verdict());
            }
        }
        VerdictAsked.WORDS.forEach(each -> assertTrue(VerdictAsked.parse(each).isPresent(), each));
        assertEquals(Optional.empty(), VerdictAsked.parse("good"));
    }
}
