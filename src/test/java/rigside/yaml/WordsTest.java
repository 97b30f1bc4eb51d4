package rigside.yaml;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class WordsTest {
    private static final List<String> KNOWN =
            List.of("exercises", "trials", "note", "only-for", "step");

    @ParameterizedTest
    @CsvSource({
        "'', '', 0",
        "a, '', 1",
        "trial, trials, 1",
        "tirals, trials, 1",
        "form, from, 1",
        "kitten, sitting, 3"
    })
    void theDistanceCountsEditsAndSwapsOfNeighbours(String from, String to, int edits) {
        assertEquals(edits, Words.distance(from, to));
        assertEquals(edits, Words.distance(to, from));
    }

    @ParameterizedTest
    @CsvSource({
        "exersises, exercises",
        "Trials, trials",
        "only_for, only-for",
        "only for, only-for",
        "noet, note",
        "stpe, step"
    })
    void theNearestKnownWordIsFound(String word, String near) {
        assertEquals(Optional.of(near), Words.nearest(word, KNOWN));
    }

    @ParameterizedTest
    @CsvSource({"colour", "''", "x", "trialstrialstrialstrialstrialstrialstrials"})
    void aWordUnlikeAnyIsNotGuessed(String word) {
        assertEquals(Optional.empty(), Words.nearest(word, KNOWN));
    }

    @Test
    void aQuoteIsShortOnOneLineAndHarmless() {
        assertEquals("'a b?[31m?'", Words.quoted("a\nb\u001B[31m\u202E"));
        assertEquals("'" + "x".repeat(40) + "...'", Words.quoted("x".repeat(41)));
    }
}
