package rigside.protocol;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class BenchTimeTest {
    private static final String BASE = Shipped.text("rigside/protocol/base.yaml");

    @Test
    void statedCostsGoBeforeTheSteps() {
        // two donnings of 12 min and 5 trials of 75 s
        assertEquals(2 * (720 + 5 * 75), BenchTime.round(read(BASE)));
    }

    @Test
    void withoutStatedCostsTheStepsAreAddedUp() {
        Protocol protocol =
                read(
                        BASE.replace("  donning-takes: 12 min\n", "")
                                .replace("  trial-takes: 75 s\n", ""));
        // a check, the purge, two exercises with their typing, a field
        double plain = 8 + 60 + (60 + 15 + 2 * 8) + 8;
        // lead-in and the geometric middle of 2 and 30 s, five times; four rests
        double trials = 5 * (3 + Math.sqrt(60)) + 4 * 61;
        assertEquals(plain + trials, BenchTime.donning(protocol, "plain"), 1e-9);
        // two observations more
        assertEquals(plain + trials + 16, BenchTime.donning(protocol, "with-disc"), 1e-9);
    }

    @Test
    void aRoundIsADonningOfEachCondition() {
        Protocol protocol = read(BASE);
        assertEquals(
                BenchTime.donning(protocol, "plain") + BenchTime.donning(protocol, "with-disc"),
                BenchTime.round(protocol));
    }

    /** After the last pull come the exercises of 75 s; the purge is done once. */
    @Test
    void whereTheMaskStaysOnItIsRestedBetweenSettingsToo() {
        String text =
                BASE.replace("plan:\n", "plan:\n  mask: stays-on\n")
                        .replace("title: Purge\n", "title: Purge\n    only-after: putting-on\n")
                        .replace("rest: 61 s", "rest: 100 s");
        Protocol protocol = read(text);
        double apart =
                BenchTime.declared(protocol, "plain") + BenchTime.declared(protocol, "with-disc");
        assertEquals(apart - 60 + (100 - 75), BenchTime.declaredRound(protocol));
        Protocol slow = read(text.replace("rest: 100 s", "rest: 61 s"));
        assertEquals(
                BenchTime.declared(slow, "plain") + BenchTime.declared(slow, "with-disc") - 60,
                BenchTime.declaredRound(slow));
    }

    @ParameterizedTest
    @CsvSource({"0, 0 s", "45.4, 45 s", "89, 89 s", "91, 2 min", "1440, 24 min", "3900, 1 h 5 min"})
    void timesAreSaidAsPeopleSayThem(double seconds, String words) {
        assertEquals(words, BenchTime.words(seconds));
    }

    private static Protocol read(String text) {
        return ((Read.Good) ProtocolReader.read("x", text)).protocol();
    }
}
