package rigside.desk;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicReference;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import rigside.archive.Archive;
import rigside.archive.Archived;
import rigside.archive.ManySessions;
import rigside.archive.SomeSession;
import rigside.protocol.Subject;

class SessionListTest {
    private static final List<Archived> THREE =
            List.of(named("glass bench"), named("strap"), named("glass strap"));

    private static Archived named(String title) {
        return SomeSession.in(Path.of("sessions", title.replace(' ', '-')))
                .about(title, "Does it?")
                .comparing("plain", "changed")
                .archived();
    }

    private static SessionList typed(String words) {
        SessionList list = SessionList.of(THREE).asking();
        for (int at = 0; at < words.length(); at++) {
            list = list.typed(words.charAt(at));
        }
        return list;
    }

    private static List<String> titles(SessionList list) {
        return list.items().stream().map(item -> item.title()).toList();
    }

    @Test
    void typingNarrowsAtOnce() {
        assertEquals(List.of("glass bench", "strap", "glass strap"), titles(typed("")));
        assertEquals(List.of("glass bench", "glass strap"), titles(typed("gla")));
        assertEquals(List.of("glass strap"), titles(typed("gla strap")));
        assertEquals(List.of(), titles(typed("gla strapx")));
    }

    @Test
    void erasingWidensAgainAsIfNeverTyped() {
        assertEquals(typed("gla strap").items(), typed("gla strapx").erased().items());
        assertEquals(typed(""), typed("g").erased());
        assertEquals(typed(""), typed("").erased());
    }

    @Test
    void keptWordsStayWhenSessionsAreReadAgain() {
        SessionList kept = typed("glass ").asked();
        assertFalse(kept.typing());
        assertEquals("glass", kept.words());
        SessionList read = kept.with(SessionList.lines(THREE.subList(1, 3)));
        assertEquals(List.of("glass strap"), titles(read));
        assertEquals(List.of("strap", "glass strap"), titles(read.dropped()));
    }

    /** Who searches for a wearer's code sees it in what is found. */
    @Test
    void itSaysWhoseASessionIs() {
        Archived session =
                SomeSession.in(Path.of("sessions", "strap"))
                        .about("strap", "Does it?")
                        .fact("wearer", "W3", Subject.WEARER_CODE)
                        .archived();
        assertTrue(Items.of(session).detail().contains("wearer W3, folder strap"));
        assertTrue(Items.of(THREE.get(1)).detail().contains("folder strap"));
    }

    @Test
    void theSelectedSessionStaysSelectedWhenOthersCome() {
        Desk desk = Desk.of(List.of(), THREE.subList(1, 3), Choice.TYPED).moved(1, 1);
        assertEquals(Optional.of(THREE.get(2)), desk.session());
        Desk more = desk.with(desk.sessions().with(SessionList.lines(THREE)));
        assertEquals(Optional.of(THREE.get(2)), more.session());
    }

    @Test
    void whatIsSearchedForSelectsTheFirstFound() {
        Desk desk = Desk.of(List.of(), THREE, Choice.TYPED).moved(2, 2);
        assertEquals(Optional.of(THREE.get(1)), desk.searching(typed("strap")).session());
        assertEquals(Optional.empty(), desk.searching(typed("none")).session());
    }

    @Test
    void sessionsAreReadBesideTheDrawing(@TempDir Path home) throws Exception {
        ManySessions.write(home, 3, 3, 5);
        AtomicReference<Runnable> work = new AtomicReference<>();
        Listing listing = Listing.begin(new Archive(home, "1"), work::set);
        assertEquals(Optional.empty(), listing.within(Duration.ZERO));
        assertEquals("reading the sessions ...", listing.progress());
        work.get().run();
        assertEquals("reading 3 of 3 sessions", listing.progress());
        assertEquals(3, listing.found().orElseThrow().sessions().size());
        assertTrue(listing.found().orElseThrow().trouble().isEmpty());
    }

    @Test
    void aFolderThatCannotBeListedIsTrouble(@TempDir Path home) throws Exception {
        assertTrue(home.toFile().setReadable(false));
        try {
            Listing listing = Listing.begin(new Archive(home, "1"), Runnable::run);
            boolean mayAll = home.toFile().canRead();
            assertEquals(!mayAll, listing.found().orElseThrow().trouble().isPresent());
        } finally {
            assertTrue(home.toFile().setReadable(true));
        }
    }
}
