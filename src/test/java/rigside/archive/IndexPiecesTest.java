package rigside.archive;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.BufferUnderflowException;
import java.nio.ByteBuffer;
import java.nio.file.Path;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZonedDateTime;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import rigside.analysis.Standing;
import rigside.decide.Conclusion;
import rigside.decide.Limits;
import rigside.decide.Verdict;
import rigside.journal.Damage;
import rigside.protocol.Measure.Compared.Matters;
import rigside.protocol.Plan.Design;
import rigside.protocol.Protocol.Purpose;
import rigside.protocol.Subject;

/** What is written to the index is read from it to the last bit, whatever texts and numbers. */
class IndexPiecesTest {
    private static final Path FOLDER = Path.of("sessions", "2026-11-29-odd");

    private static final Archived.OnDisk JOURNAL =
            new Archived.OnDisk(Long.MAX_VALUE, Instant.ofEpochSecond(-1, 999_999_999));

    /** Half a surrogate pair has no UTF-8; the others would end a line or a word of many forms. */
    private static final String ODD = "\uD83D [\"\\],\t\n\0 \u202E\uFFFF 日本 \uD83D\uDE37";

    private static final Archived EVERYTHING =
            new Archived(
                    FOLDER,
                    Optional.of(JOURNAL),
                    Optional.of(ZonedDateTime.parse("2026-10-25T02:30+01:00[Europe/Paris]")),
                    Optional.of(ZonedDateTime.parse("-0001-01-01T00:00:00.000000001-03:30")),
                    true,
                    true,
                    Optional.of(new Archived.Paper(Optional.of(LocalDate.MIN), ODD)),
                    Optional.of(
                            new Archived.Followed(
                                    ODD, "", ODD, "0", Purpose.COMPARISON, Design.ROUNDS)),
                    List.of(
                            new Archived.Fact("a", ODD, "x".repeat(100_000), Optional.empty()),
                            new Archived.Fact("b", "", ODD, Optional.of(Subject.MASK))),
                    List.of(new Archived.Worn("plain", ODD, "", Integer.MAX_VALUE)),
                    List.of(
                            new Archived.Measured("m", "", ODD, "", true, Optional.empty()),
                            new Archived.Measured(
                                    "n",
                                    "N",
                                    "",
                                    "Pa",
                                    false,
                                    Optional.of(
                                            new Archived.Compared(
                                                    ODD,
                                                    -Double.MIN_VALUE,
                                                    Double.MAX_VALUE,
                                                    Matters.INCREASE,
                                                    true)))),
                    0,
                    List.of(
                            finding(OptionalDouble.empty(), Optional.empty()),
                            finding(
                                    OptionalDouble.of(0.1 + 0.2),
                                    Optional.of(
                                            new Limits(
                                                    Double.NEGATIVE_INFINITY,
                                                    Double.POSITIVE_INFINITY)))),
                    List.of(new Damage(ODD, 7, ODD, "")));

    private static final List<WithValues.Value> VALUES =
            List.of(
                    value(OptionalDouble.of(Double.POSITIVE_INFINITY), OptionalDouble.of(-0.0)),
                    value(OptionalDouble.empty(), OptionalDouble.of(1.0 / 3)));

    private static Archived.Finding finding(OptionalDouble estimate, Optional<Limits> interval) {
        return new Archived.Finding(
                "n",
                "plain",
                new Conclusion(Verdict.MEANINGFUL_DIFFERENCE, -1),
                Matters.EITHER,
                estimate,
                interval,
                3);
    }

    private static WithValues.Value value(OptionalDouble number, OptionalDouble halved) {
        return new WithValues.Value(
                "n", ODD, 1, 2, Instant.MAX, 3, Standing.COUNTS, number, halved, true, false);
    }

    private static byte[] written() {
        return Index.written(List.of(Index.Pieces.of(new WithValues(EVERYTHING, VALUES))));
    }

    private static List<Index.Kept> read(byte[] bytes) {
        return Index.of(ByteBuffer.wrap(bytes))
                .still(
                        Map.of(
                                FOLDER.getFileName().toString(),
                                new InFolder(FOLDER, Optional.of(JOURNAL))));
    }

    @Test
    void whatIsReadIsWhatWasWritten() {
        List<Index.Kept> kept = read(written());
        assertEquals(List.of(EVERYTHING), kept.stream().map(Index.Kept::session).toList());
        assertEquals(VALUES, kept.get(0).pieces().readValues());
    }

    @Test
    void whatWasReadIsWrittenAgainToTheByte() {
        byte[] once = written();
        byte[] again = Index.written(read(once).stream().map(Index.Kept::pieces).toList());
        assertEquals(ByteBuffer.wrap(once), ByteBuffer.wrap(again));
    }

    /** The check sum keeps such an index out; should one get in, it is no fault of the program. */
    @Test
    void cutOrChangedAnywhereItIsReadOrPassedOver() {
        byte[] whole = written();
        for (int at = 0; at < whole.length; at += at < 2_000 ? 1 : 997) {
            assertTrue(read(Arrays.copyOf(whole, at)).size() <= 1);
            byte[] changed = whole.clone();
            changed[at] ^= (byte) 0x84;
            assertTrue(read(changed).size() <= 1);
        }
    }

    @Test
    void noMoreIsReadThanThereIs() {
        Cells cells = new Cells(ByteBuffer.wrap(new byte[] {0x7F, 0, 0, 0, 1}));
        assertThrows(IllegalArgumentException.class, cells::text);
        assertThrows(BufferUnderflowException.class, cells::size);
    }
}
