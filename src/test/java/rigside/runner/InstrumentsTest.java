package rigside.runner;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.time.ZoneOffset;
import java.time.ZonedDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import rigside.rig.Asked;
import rigside.rig.Cue;
import rigside.rig.FeedTrouble;
import rigside.rig.FeedTrouble.Kind;
import rigside.rig.Rig;
import rigside.rig.Span;
import rigside.session.Activity;
import rigside.session.Captured;
import rigside.session.Event;
import rigside.session.Input;
import rigside.session.Source;
import rigside.session.Story;
import rigside.session.Value;

/** A session whose readings come from instruments. */
class InstrumentsTest {
    private static final ZonedDateTime MORNING =
            ZonedDateTime.of(2026, 1, 5, 8, 0, 0, 0, ZoneOffset.UTC);
    private static final long SECOND = 1_000_000_000L;

    private final List<Event> kept = new ArrayList<>();
    private final List<FeedTrouble> troubles = new ArrayList<>();
    private final List<Asked> asked = new ArrayList<>();
    private OptionalDouble answer = OptionalDouble.empty();
    private boolean diskFull;
    private long now;

    /** An instrument that answers what the test says. */
    private final class Bench implements Rig {
        @Override
        public String words() {
            return "instruments: a bench (invented)";
        }

        @Override
        public boolean simulated() {
            return false;
        }

        @Override
        public List<FeedTrouble> pass(long at) {
            List<FeedTrouble> told = List.copyOf(troubles);
            troubles.clear();
            return told;
        }

        @Override
        public OptionalDouble answer(Asked question) {
            asked.add(question);
            return answer;
        }
    }

    @Test
    void theWindowsOfTheProtocolAreAskedForInSessionTime() throws IOException {
        Runner runner = atFirstReading();
        long begun = exerciseBegan(0);
        runner.tick(now);
        assertEquals(
                new Span(begun, begun + 5 * SECOND, true),
                last().span().orElseThrow(),
                "ambient 0 to 5 s, the first sample of the step");
        answer = OptionalDouble.of(4e9);
        runner.tick(now);
        assertEquals(
                new Span(begun + 8 * SECOND, begun + 20 * SECOND, true),
                last().span().orElseThrow(),
                "mask 8 to 20 s, after the room");
    }

    @Test
    void aSampleOnTheSameSideAsTheOneBeforeNeedsNoSettling() throws IOException {
        Runner runner = atFirstReading();
        answer = OptionalDouble.of(4e9);
        runner.tick(now);
        runner.accept(new Input.GoOnPressed(), now);
        now += 20 * SECOND;
        runner.tick(now);
        long begun = exerciseBegan(1);
        List<Span> spans = asked.stream().map(each -> each.span().orElseThrow()).toList();
        assertTrue(
                spans.contains(new Span(begun, begun + 12 * SECOND, false)),
                () -> "mask 0 to 12 s, after mask 8 to 20 s: " + spans);
        assertTrue(
                spans.contains(new Span(begun + 15 * SECOND, begun + 20 * SECOND, true)),
                () -> "ambient 15 to 20 s, after the mask: " + spans);
    }

    @Test
    void anExerciseDoneAgainIsAskedForByItsNewTime() throws IOException {
        Runner runner = atFirstReading();
        runner.accept(new Input.RetakeAsked("coughed"), now);
        now += 7 * SECOND;
        runner.accept(new Input.GoOnPressed(), now);
        long again = now;
        now += 20 * SECOND;
        runner.tick(now);
        assertEquals(new Span(again, again + 5 * SECOND, true), last().span().orElseThrow());
    }

    @Test
    void anAnswerIsCapturedAsReadFromAnInstrument() throws IOException {
        Runner runner = atFirstReading();
        answer = OptionalDouble.of(4e9);
        runner.tick(now);
        List<Event.EntryCaptured> captured =
                kept.stream()
                        .filter(Event.EntryCaptured.class::isInstance)
                        .map(Event.EntryCaptured.class::cast)
                        .filter(each -> each.source() == Source.INSTRUMENT)
                        .toList();
        assertEquals(2, captured.size());
        assertEquals(
                "4000 /cm3",
                assertInstanceOf(Value.Measured.class, captured.get(0).value())
                        .quantity()
                        .toString());
    }

    @Test
    void withoutAnAnswerTheTesterTypes() throws IOException {
        Runner runner = atFirstReading();
        runner.tick(now);
        runner.accept(new Input.Typed("4000"), now);
        Event.EntryCaptured typed =
                assertInstanceOf(Event.EntryCaptured.class, kept.get(kept.size() - 1));
        assertEquals(Source.TYPED, typed.source());
    }

    @Test
    void aFeedThatFailsIsRecordedAndShownUntilItIsBack() throws IOException {
        Runner runner = opened();
        troubles.add(new FeedTrouble("gauge", Kind.SILENT, 0, "gauge: nothing for 2 s"));
        now += SECOND;
        Result.Done done = assertInstanceOf(Result.Done.class, runner.tick(now));
        assertEquals(
                List.of(new Event.FeedFailed("gauge", "gauge: nothing for 2 s")), done.events());
        assertEquals(List.of(Cue.PROBLEM), done.cues());
        assertEquals(Map.of("gauge", "gauge: nothing for 2 s"), runner.state().feeds().why());
        troubles.add(new FeedTrouble("gauge", Kind.BACK, 0, "gauge: reads well again"));
        runner.tick(now + SECOND);
        assertEquals(Map.of(), runner.state().feeds().why());
        assertEquals(
                List.of("gauge: nothing for 2 s", "gauge: reads well again"),
                runner.state().captured().notes().stream().map(Captured.Note::text).toList());
    }

    @Test
    void noNoticeIsLostWhileTheDiskIsFull() throws IOException {
        Runner runner = opened();
        diskFull = true;
        troubles.add(new FeedTrouble("gauge", Kind.SILENT, 0, "gauge: silent"));
        troubles.add(new FeedTrouble("counter", Kind.SILENT, 0, "counter: silent"));
        assertInstanceOf(Result.NotKept.class, runner.tick(now));
        assertInstanceOf(Result.NotKept.class, runner.tick(now));
        diskFull = false;
        runner.accept(new Input.GoOnPressed(), now);
        runner.tick(now);
        assertEquals(
                List.of("gauge", "counter"),
                kept.stream()
                        .filter(Event.FeedFailed.class::isInstance)
                        .map(each -> ((Event.FeedFailed) each).feed())
                        .toList());
    }

    @Test
    void afterAResumeWhatFailsIsSaidAnew() throws IOException {
        Runner runner = opened();
        troubles.add(new FeedTrouble("gauge", Kind.SILENT, 0, "gauge: silent"));
        runner.tick(now);
        Runner again =
                Runner.reopen(
                        (events, wall, at) -> kept.addAll(events),
                        new Bench(),
                        () -> MORNING,
                        runner.state(),
                        now,
                        "test");
        assertEquals(Map.of(), again.state().feeds().why());
    }

    private Asked last() {
        return asked.get(asked.size() - 1);
    }

    private long exerciseBegan(int exercise) {
        return kept.stream()
                .filter(Event.ExerciseStarted.class::isInstance)
                .map(Event.ExerciseStarted.class::cast)
                .filter(each -> each.exercise() == exercise)
                .mapToLong(each -> began.get(kept.indexOf(each)))
                .max()
                .orElseThrow();
    }

    private final List<Long> began = new ArrayList<>();

    private Runner opened() throws IOException {
        Ledger ledger =
                (events, wall, at) -> {
                    if (diskFull) {
                        throw new IOException("no space left");
                    }
                    kept.addAll(events);
                    events.forEach(each -> began.add(at));
                };
        return Runner.open(
                ledger,
                new Bench(),
                () -> MORNING,
                new Event.SessionOpened(
                        "test",
                        "small.yaml",
                        Story.text("/session/small.yaml"),
                        7,
                        "instruments",
                        "",
                        false,
                        1));
    }

    /** The first exercise is over and its first concentration is asked for. */
    private Runner atFirstReading() throws IOException {
        Runner runner = opened();
        while (!(runner.state().activity() instanceof Activity.Filling filling
                && filling.slot() instanceof rigside.session.Slot.Ambient)) {
            now += SECOND;
            Input key = Rehearser.key(runner.state(), now).orElse(null);
            if (key != null) {
                runner.accept(key, now);
            } else {
                runner.tick(now);
            }
        }
        return runner;
    }
}
