package rigside.session;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.time.ZonedDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** A session told in inputs and seconds, for tests. */
public final class Story {
    private static final ZonedDateTime OPENED =
            ZonedDateTime.of(2026, 1, 5, 8, 0, 0, 0, ZoneOffset.UTC);

    private State state = State.START;
    private long now;
    private List<Event> last = List.of();
    private String refusal = "";
    private final List<Recorded> journal = new ArrayList<>();

    private Story() {}

    /** A session just opened, by a protocol of the test resources. */
    public static Story of(String resource) {
        return opened(
                new Event.SessionOpened(
                        "test", resource, text(resource), 7, "typed", "", false, 1));
    }

    /** The same typed in from a form. */
    public static Story onPaper(String text) {
        return opened(
                new Event.SessionOpened(
                        "test",
                        "form.yaml",
                        text,
                        7,
                        "typed",
                        "",
                        false,
                        1,
                        "",
                        Optional.of(new Event.Paper(Optional.of(LocalDate.of(2026, 1, 3))))));
    }

    public static Story opened(Event.SessionOpened opening) {
        Story story = new Story();
        story.take(List.of(opening));
        return story;
    }

    /** The small comparison with its cautions read, facts entered and note read. */
    public static Story atFirstDonning() {
        return of("/session/small.yaml").goOn().type("W1").type("21").goOn();
    }

    /** A donning begun, its checks confirmed and its purge over. */
    public Story purged() {
        return goOn().goOn().goOn().goOn().goOn().pass(10);
    }

    /** The two exercises done and their readings typed. */
    public Story exercised(String mask) {
        return goOn().pass(20).type("4000").type(mask).goOn().pass(20).type(mask).type("4000");
    }

    /** One inhalation, held. */
    public Story inhaled(double seconds) {
        return trigger().pass(3).trigger().pass(seconds).trigger().answer(true);
    }

    /** A whole donning of the small comparison. */
    public Story donning(String mask, double seconds) {
        purged().exercised(mask).inhaled(seconds).pass(30).inhaled(seconds);
        if (state.activity() instanceof Activity.Filling) {
            type("3");
        }
        return goOn();
    }

    public Story goOn() {
        return send(new Input.GoOnPressed());
    }

    public Story trigger() {
        return send(new Input.TriggerPressed());
    }

    public Story answer(boolean yes) {
        return send(new Input.Answered(yes));
    }

    public Story type(String text) {
        return send(new Input.Typed(text));
    }

    /** Lets time pass, then ticks once. */
    public Story pass(double seconds) {
        now += Math.round(seconds * 1e9);
        return send(new Input.Ticked());
    }

    public Story send(Input input) {
        Response response = Respond.to(state, input, now);
        if (response instanceof Response.Refused refused) {
            refusal = refused.why();
            last = List.of();
        } else {
            refusal = "";
            take(((Response.Happened) response).events());
        }
        return this;
    }

    private void take(List<Event> more) {
        last = more;
        for (Event event : more) {
            journal.add(new Recorded(journal.size() + 1, OPENED.plusNanos(now), now, event));
            state = Evolve.step(state, event, now);
        }
    }

    public State state() {
        return state;
    }

    public Activity activity() {
        return state.activity();
    }

    /** The events of the last input. */
    public List<Event> last() {
        return last;
    }

    /** Everything that happened, as a journal would give it back. */
    public List<Recorded> journal() {
        return List.copyOf(journal);
    }

    /** Why the last input was refused; empty if it was not. */
    public String refusal() {
        return refusal;
    }

    public long now() {
        return now;
    }

    public static String text(String resource) {
        try (InputStream in = Story.class.getResourceAsStream(resource)) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
