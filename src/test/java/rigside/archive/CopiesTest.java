package rigside.archive;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import rigside.journal.JournalReader;
import rigside.journal.Rewritten;
import rigside.measure.Quantity;
import rigside.measure.Unit;
import rigside.session.Entry;
import rigside.session.Event;
import rigside.session.Recorded;
import rigside.session.Slot;
import rigside.session.Value;

/** Copies of whole journals; {@link AmongTest} has what is done with them. */
class CopiesTest {
    private static final Path DEMONSTRATION = Path.of("demo/recorded-session");

    @TempDir Path sessions;

    private void write(String name, List<Recorded> events) throws Exception {
        Path folder = Files.createDirectories(sessions.resolve(name));
        Files.write(folder.resolve("journal.jsonl"), Rewritten.bytes(events));
    }

    /** Both were closed at the same time; only one of them was put right afterwards. */
    @Test
    void aCopyAmendedAfterTheCloseStaysWhateverItIsCalled() throws Exception {
        List<Recorded> events = JournalReader.readAsGiven(DEMONSTRATION).events();
        int trial =
                JournalReader.readAsGiven(DEMONSTRATION).state().captured().entries().stream()
                        .filter(each -> each.slot() instanceof Slot.Trial && each.stands())
                        .mapToInt(Entry::number)
                        .findFirst()
                        .orElseThrow();
        Recorded last = events.get(events.size() - 1);
        List<Recorded> amended = new ArrayList<>(events);
        amended.add(
                new Recorded(
                        last.number() + 1,
                        last.wall().plusDays(3),
                        last.at() + 1,
                        new Event.EntryAmended(
                                trial,
                                new Value.Measured(new Quantity(7.5, Unit.SECOND)),
                                "misread")));
        write("it", events);
        write("amended-later", amended);
        List<Archived> all = new Archive(sessions, "1").list(Progress.NONE);
        assertEquals(2, all.size());
        assertEquals(
                Set.of(sessions.resolve("amended-later")),
                new Among(Optional.empty(), Optional.empty(), true).meant(all));
    }
}
