package rigside.archive;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;

class AmongTest {
    private static final Among REAL = among(Optional.empty(), Optional.empty());

    private final Archived closed = Expected.ONE.session().session();
    private final Archived invented = Expected.TWO.invented().session().session();
    private final Archived open =
            SomeSession.in(Path.of("open")).begun("2026-04-01T09:00:00Z").archived();

    private static Among among(Optional<String> protocol, Optional<String> wearer) {
        return new Among(protocol, wearer, false);
    }

    @Test
    void closedRealSessionsAreMeant() {
        assertTrue(REAL.holds(closed));
        assertFalse(REAL.holds(invented));
        assertFalse(REAL.holds(open));
        assertTrue(new Among(Optional.empty(), Optional.empty(), true).holds(invented));
        assertFalse(new Among(Optional.empty(), Optional.empty(), true).holds(closed));
    }

    @Test
    void wordsOfTheProtocolAndTheWearerChoose() {
        assertTrue(among(Optional.of("dis"), Optional.of("A")).holds(closed));
        assertFalse(among(Optional.of("strap"), Optional.empty()).holds(closed));
        assertFalse(among(Optional.empty(), Optional.of("B")).holds(closed));
    }

    @Test
    void whatIsLeftOutIsCounted() {
        assertEquals(
                Optional.of("Left out: 1 open session and 1 simulated session."),
                REAL.leftOut(List.of(closed, invented, open)));
        assertEquals(Optional.empty(), REAL.leftOut(List.of(closed)));
    }

    /** A folder copied aside would count its session twice in every chart and spread. */
    @Test
    void ofCopiesOneIsMeantTheOneThatWentOnLast() {
        Archived original = Expected.ONE.session().session();
        Archived copy = copied(original, "2026-03-02-shared", 0);
        Archived amended = copied(original, "2026-03-02-amended", 5);
        Archived other = Expected.TWO.session().session();
        assertEquals(
                Set.of(original.folder(), other.folder()),
                REAL.meant(List.of(copy, original, other)));
        assertEquals(Set.of(amended.folder()), REAL.meant(List.of(copy, original, amended)));
        assertEquals(
                Optional.of("Left out: 2 copies of others."),
                REAL.leftOut(List.of(copy, original, amended, other)));
    }

    @Test
    void aCopyThatIsOpenTakesNothingAway() {
        Archived half =
                SomeSession.in(Path.of("half")).begun(Expected.ONE.day() + "T09:00:00Z").archived();
        assertEquals(Set.of(closed.folder()), REAL.meant(List.of(half, closed)));
    }

    private static Archived copied(Archived original, String folder, int minutes) {
        return new Archived(
                Path.of(folder),
                original.journal(),
                original.begun(),
                original.last().map(each -> each.plusMinutes(minutes)),
                true,
                original.simulated(),
                original.paper(),
                original.protocol(),
                original.facts(),
                original.conditions(),
                original.measures(),
                original.completeRounds(),
                original.findings(),
                original.damage());
    }

    @Test
    void noSessionAndSeveralWearersAreRefused() {
        assertEquals(
                "there is no closed session", REAL.refusal(List.of(invented)).orElseThrow().what());
        Archived other = Expected.TWO.by("B").session().session();
        assertEquals(
                "these sessions are of several wearers: 'A' and 'B'",
                REAL.refusal(List.of(closed, other)).orElseThrow().what());
        assertEquals(Optional.empty(), REAL.refusal(List.of(closed)));
    }

    @Test
    void capitalsMakeNoOtherWearer() {
        Archived same = Expected.TWO.by("a ").session().session();
        assertEquals(Optional.empty(), REAL.refusal(List.of(closed, same)));
        assertTrue(among(Optional.empty(), Optional.of("A")).holds(same));
        Archived accented = Expected.TWO.by("\u00e4").session().session();
        assertEquals(
                "these sessions are of several wearers: 'A' and '\u00e4'",
                REAL.refusal(List.of(closed, same, accented)).orElseThrow().what());
    }
}
