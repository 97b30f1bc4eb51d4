package rigside.desk;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.ZonedDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import rigside.protocol.Protocol;
import rigside.screen.HomeView.Review;
import rigside.session.Story;

/** Work beside the drawing, here done when the test says so. */
class PendingTest {
    private static final ProtocolFile SMALL =
            ProtocolFile.of("small.yaml", Story.text("/session/small.yaml"), "");
    private static final Protocol PROTOCOL = SMALL.protocol().orElseThrow();

    private final List<Runnable> todo = new ArrayList<>();

    private static TrialRun run() {
        return new TrialRun(
                PROTOCOL,
                Openings.of(SMALL, PROTOCOL, new Choice(true, 1), 7, "test"),
                ZonedDateTime.parse("2026-01-05T08:00:00Z"));
    }

    @Test
    void aRehearsalSaysHowFarItIsAndEndsInAReviewThatSaysItIsInvented() {
        Pending pending = Pending.rehearsal(run(), "Small", todo::add);
        assertEquals(Optional.empty(), pending.found());
        assertEquals(
                List.of("rehearsing, before the first donning ..."), pending.progress().lines());
        todo.get(0).run();
        Review found = pending.found().orElseThrow();
        assertTrue(found.simulated());
        assertTrue(found.trouble().get(0).contains("invented"), found.trouble().toString());
        assertTrue(found.read().orElseThrow().state().course().closed());
        assertTrue(found.read().get().shown().completeRounds() >= PROTOCOL.plan().fewest());
        assertTrue(pending.progress().lines().get(0).contains("donning"));
    }

    @Test
    void aRehearsalThatIsLeftEndsAtOnce() {
        Pending pending = Pending.rehearsal(run(), "Small", todo::add);
        pending.leave();
        todo.get(0).run();
        assertEquals(List.of("the rehearsal was left"), pending.found().orElseThrow().lines());
    }

    @Test
    void theSameSeedGivesTheSameRehearsal() throws Exception {
        assertEquals(run().play().state(), run().play().state());
    }

    @Test
    void aCheckTellsAdviceBenchTimeAndWhatThePlanBrings() {
        List<String> lines = ProtocolPages.checked(SMALL).lines();
        String all = String.join("\n", lines);
        assertTrue(all.startsWith("small.yaml: no problems, it can be run."), all);
        assertTrue(all.contains("To think over"), all);
        assertTrue(all.contains("a round takes about"), all);
        PROTOCOL.measures().stream()
                .filter(each -> each.compared().isPresent())
                .forEach(each -> assertTrue(all.contains("Plan for: " + each.title()), all));
    }
}
