package rigside.rig;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** From bytes to readings, whatever the bytes: told once, nothing thrown, and well again after. */
class HostileStreamTest {
    private static final long SECOND = 1_000_000_000L;
    private static final String RIG =
            """
            format: 1
            title: bench (invented)
            feeds:
              - {id: gauge, quantity: mask-pressure, file: a, unit: Pa, from: -1000, to: 1000, %s}
            """;

    private final List<FeedTrouble> told = new ArrayList<>();
    private final LineSplitter splitter = new LineSplitter(false);
    private FeedWatch watch = watch("column: 1");
    private long now;

    @ParameterizedTest
    @ValueSource(
            strings = {
                "column: 1",
                "column: p, separator: semicolon, decimal: comma",
                "column: 3, separator: space",
                "pattern: '(?<value>.+)'"
            })
    void randomBytesAreNonsenseToldOnce(String form) {
        watch = watch(form);
        Random random = new Random(3);
        byte[] junk = new byte[100_000];
        random.nextBytes(junk);
        send(junk);
        assertEquals(1, told.size(), told.toString());
        assertEquals(FeedTrouble.Kind.NONSENSE, told.get(0).kind());
        watch.readings()
                .between(0, now)
                .forEach(each -> assertTrue(Math.abs(each.si()) <= 1000, each.toString()));
    }

    @Test
    void aMegabyteWithoutAnEndIsHeldInAFewKilobytesAndToldWhenItEnds() {
        send("9".repeat(1 << 20));
        assertEquals(List.of(), told);
        send("\n");
        assertEquals(FeedTrouble.Kind.NONSENSE, told.get(0).kind());
        assertTrue(told.get(0).words().length() < 200, told.get(0).words());
        for (int count = 0; count < 3; count++) {
            send("-12.5\n");
        }
        assertEquals(FeedTrouble.Kind.BACK, told.get(1).kind());
        assertEquals(3, watch.readings().count());
    }

    @Test
    void linesInPiecesWithEveryEndAndNumbersFromAnotherCountry() {
        for (String piece : "-1.5\r\n-2.5\n\r\n-3.5\r-4,5\n NaN\n-5.5\n".split("", -1)) {
            send(piece);
        }
        assertEquals(
                List.of(-1.5, -2.5, -3.5, -5.5),
                watch.readings().between(0, now).stream().map(Reading::si).toList());
        assertEquals(2, watch.nonsense());
        assertEquals(1, told.size());
    }

    @Test
    void anHourWithoutAnythingIsOneSilence() {
        send("-1\n-1\n-1\n");
        for (int second = 0; second < 3600; second++) {
            now += SECOND;
            watch.pass(now);
            told.addAll(watch.tell());
        }
        assertEquals(1, told.size());
        assertEquals(FeedTrouble.Kind.SILENT, told.get(0).kind());
    }

    @Test
    void aHundredThousandLinesAtOnceAreAllRead() {
        send("-1\n".repeat(100_000));
        assertEquals(100_000, watch.readings().count());
        assertEquals(List.of(), told);
    }

    private void send(String text) {
        send(text.getBytes(StandardCharsets.UTF_8));
    }

    private void send(byte[] bytes) {
        now += SECOND / 1000;
        splitter.take(
                bytes,
                bytes.length,
                line -> watch.take(new Arrival.Line(now, line.text(), line.whole())));
        watch.pass(now);
        told.addAll(watch.tell());
    }

    private static FeedWatch watch(String form) {
        RigFile file =
                RigFile.read("b", RIG.formatted(form), Path.of("bench")).value().orElseThrow();
        return new FeedWatch(((RigFile.Attached) file).instruments().feeds().get(0), 0);
    }
}
