package rigside.archive;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import rigside.protocol.Subject;

class SessionsTest {
    private final Archived now = of("now", "2026-11-25T10:00:00Z", "A", "1", "Does it?");

    private static Archived of(
            String name, String begun, String wearer, String hash, String question) {
        return base(name, begun, hash, question)
                .fact("wearer", wearer, Subject.WEARER_CODE)
                .archived();
    }

    private static SomeSession base(String name, String begun, String hash, String question) {
        return SomeSession.in(Path.of(name)).begun(begun).hash(hash).about("Disc", question);
    }

    private List<String> earlier(Archived... among) {
        return Sessions.earlierOn(List.of(among), now).stream()
                .map(each -> each.folder().toString())
                .toList();
    }

    @Test
    void theSameQuestionAskedEarlierOfTheSameWearerIsFoundTheEarliestFirst() {
        assertEquals(
                List.of("first", "second"),
                earlier(
                        of("second", "2026-11-24T10:00:00Z", "A", "2", "Does it?"),
                        now,
                        of("first", "2026-11-23T10:00:00Z", "a", "1", "Does it now?")));
    }

    @Test
    void anotherQuestionAnotherWearerAndALaterSessionAreNot() {
        assertEquals(
                List.of(),
                earlier(
                        of("question", "2026-11-24T10:00:00Z", "A", "2", "Does it not?"),
                        of("wearer", "2026-11-24T10:00:00Z", "B", "1", "Does it?"),
                        of("later", "2026-11-26T10:00:00Z", "A", "1", "Does it?"),
                        of("now-too", "2026-11-25T11:00:00+01:00", "A", "1", "Does it?"),
                        base("nobody", "2026-11-24T10:00:00Z", "1", "Does it?").archived(),
                        base("invented", "2026-11-24T10:00:00Z", "1", "Does it?")
                                .fact("wearer", "A", Subject.WEARER_CODE)
                                .simulated()
                                .archived()));
    }

    @Test
    void whoseWearerIsNotKnownHasNoEarlierOnes() {
        Archived nobody = base("nobody", "2026-11-25T10:00:00Z", "1", "Does it?").archived();
        Archived before = base("before", "2026-11-24T10:00:00Z", "1", "Does it?").archived();
        assertEquals(List.of(), Sessions.earlierOn(List.of(before), nobody));
    }
}
