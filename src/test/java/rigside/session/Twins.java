package rigside.session;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import java.util.function.Predicate;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import rigside.analysis.Analysis;
import rigside.analysis.Looks;
import rigside.measure.Quantity;
import rigside.measure.Unit;

/**
 * Two sessions that differ in nothing but what a protocol conceals: event for event the same, with
 * other times of trials, other readings of instruments, or another order of the donnings to come.
 * Their numbers have digits of their own, so that one of them is known wherever it turns up.
 *
 * @param first one of them, every event
 * @param second the other, the same number of events
 */
public record Twins(List<Recorded> first, List<Recorded> second) {
    /** Donnings done; the plan's fewest rounds are never reached, so that nothing is settled. */
    private static final int DONNINGS = 5;

    private static final String PLAN = "  fewest: 2\n  most: 4\n";
    private static final String LONGER = "  fewest: 3\n  most: 4\n";

    public Twins {
        first = List.copyOf(first);
        second = List.copyOf(second);
        if (!kinds(first).equals(kinds(second))) {
            throw new IllegalStateException("the twins differ in what happened");
        }
    }

    /**
     * How a twin is its own.
     *
     * @param seed of its order
     * @param pull the first pull of its first condition, in seconds
     * @param added how much longer a pull of the other condition is, in seconds
     * @param mask the first mask concentration, /cm3
     */
    private record Own(long seed, double pull, double added, double mask) {}

    /** Times of trials differ; everything else is the same. */
    public static Twins inTimes() {
        return of(LONGER, new Own(7, 6.137, 0.0713, 37), new Own(7, 9.391, 3.1871, 37));
    }

    /** What instruments read differs too, and all is concealed until the session ends. */
    public static Twins inEverything() {
        return of(
                LONGER
                        + "  conceal: {trial-clock: until-session-ends, result: until-session-ends}\n",
                new Own(7, 6.137, 0.0713, 37.13),
                new Own(7, 9.391, 3.1871, 83.47));
    }

    /**
     * The order from the second block of rounds on differs; up to where other things happen then.
     */
    public static Twins inOrder() {
        long other = 8;
        while (!sameAtFirst(7, other)) {
            other++;
        }
        String text = Story.text("/session/small.yaml").replace(PLAN, LONGER);
        List<Recorded> one = played(text, new Own(7, 6.137, 0.07, 37));
        List<Recorded> two = played(text, new Own(other, 6.137, 0.07, 37));
        int alike = 0;
        while (kinds(one).get(alike).equals(kinds(two).get(alike))) {
            alike++;
        }
        return new Twins(one.subList(0, alike), two.subList(0, alike));
    }

    /** The same through the first block, which is two rounds, and not the same after it. */
    private static boolean sameAtFirst(long seed, long other) {
        return order(seed, 1).equals(order(other, 1))
                && order(seed, 2).equals(order(other, 2))
                && !order(seed, 3).equals(order(other, 3));
    }

    private static List<String> order(long seed, int round) {
        return Order.of(List.of("bare", "disc"), rigside.protocol.Plan.Order.BALANCED, seed, round);
    }

    private static Twins of(String plan, Own first, Own second) {
        String text = Story.text("/session/small.yaml").replace(PLAN, plan);
        return new Twins(played(text, first), played(text, second));
    }

    /** Where one of them stands after {@code count} events. */
    public static State after(List<Recorded> journal, int count) {
        return Evolve.fold(journal.subList(0, count));
    }

    /**
     * The numbers of events after which something is to be looked at: while {@code concealed}
     * holds, one for each kind of activity of each donning.
     */
    public List<Integer> moments(Predicate<State> concealed) {
        List<Integer> counts = new ArrayList<>();
        List<String> seen = new ArrayList<>();
        State state = State.START;
        for (Recorded each : first) {
            state = Evolve.step(state, each.event(), each.at());
            String where =
                    each.event().getClass().getSimpleName()
                            + state.activity().getClass().getSimpleName()
                            + state.course().donnings().size();
            if (concealed.test(state) && !seen.contains(where)) {
                seen.add(where);
                counts.add((int) each.number());
            }
        }
        return List.copyOf(counts);
    }

    private static List<Class<?>> kinds(List<Recorded> journal) {
        return journal.stream().<Class<?>>map(each -> each.event().getClass()).toList();
    }

    /**
     * The plausible pulls as they could be written, to two and three digits: by the clock, and at
     * the target.
     */
    public List<String> timesInDigits() {
        return Stream.of(first, second)
                .flatMap(List::stream)
                .flatMap(each -> seconds(each.event()).stream().boxed())
                .filter(seconds -> seconds > 2)
                .flatMap(seconds -> Stream.of("%.2f", "%.3f").map(form -> in(form, seconds)))
                .distinct()
                .toList();
    }

    /** Whether a text has a number as a whole, not as a part of another. */
    public static boolean tells(String text, String digits) {
        return text.contains(digits)
                && Pattern.compile("(?<![\\d.])" + Pattern.quote(digits) + "(?!\\d)")
                        .matcher(text)
                        .find();
    }

    private static String in(String form, double seconds) {
        return String.format(Locale.ROOT, form, seconds);
    }

    private static OptionalDouble seconds(Event event) {
        if (event instanceof Event.TrialStopped stopped) {
            return OptionalDouble.of(stopped.seconds());
        }
        return event instanceof Event.EntryCaptured captured
                        && captured.slot() instanceof Slot.Trial
                        && captured.value() instanceof Value.Measured measured
                ? OptionalDouble.of(measured.quantity().si())
                : OptionalDouble.empty();
    }

    private static List<Recorded> played(String text, Own own) {
        Story story =
                Story.opened(
                        new Event.SessionOpened(
                                "test", "small.yaml", text, own.seed(), "typed", "", false, 1));
        Player player = new Player(story, own);
        while (!(story.activity() instanceof Activity.Closed)) {
            player.go();
        }
        return story.journal();
    }

    /** Does what is asked, and once everything that can happen beside it. */
    private static final class Player {
        private final Story story;
        private final Own own;
        private int pulls;
        private int readings;

        Player(Story story, Own own) {
            this.story = story;
            this.own = own;
        }

        void go() {
            Activity activity = story.activity();
            if (story.state().lookDue()) {
                story.send(
                        new Input.LookArrived(Looks.of(Analysis.of(story.state()), story.state())));
            } else if (activity instanceof Activity.NextDonning
                    && story.state().course().donnings().size() == DONNINGS) {
                story.send(new Input.EndAsked("the day is over"));
            } else if (activity instanceof Activity.Filling filling) {
                fill(filling.slot());
            } else if (activity instanceof Activity.TrialReady) {
                story.trigger();
            } else if (activity instanceof Activity.LeadIn) {
                story.pass(1.5).pass(1.5).trigger();
            } else if (activity instanceof Activity.Pulling) {
                pull();
            } else if (activity instanceof Activity.HoldAsked) {
                story.answer(pulls != 3);
            } else if (activity instanceof Activity.VoidAsked) {
                story.answer(pulls == 5);
            } else if (activity instanceof Activity.Resting) {
                rest();
            } else if (isRunning(activity)) {
                story.pass(20);
            } else {
                story.goOn();
            }
        }

        private static boolean isRunning(Activity activity) {
            return (activity instanceof Activity.Waiting waiting && waiting.startedAt().isPresent())
                    || (activity instanceof Activity.Exercising exercising
                            && exercising.startedAt().isPresent());
        }

        /** The fifth and the sixth are implausibly short, the eighth is stopped in the middle. */
        private void pull() {
            pulls++;
            boolean disc = story.state().course().open().orElseThrow().condition().equals("disc");
            double usual = own.pull() + (disc ? own.added() : 0) + 0.0307 * pulls;
            double seconds = pulls == 5 || pulls == 6 ? 0.9 + usual / 20 : usual;
            if (pulls == 8) {
                story.pass(usual / 2).send(new Input.HaltPressed());
            } else {
                story.pass(seconds).trigger();
            }
        }

        private void rest() {
            if (pulls == 4 && story.state().captured().notes().isEmpty()) {
                story.send(new Input.NoteTyped("the strap was tight"));
                story.send(new Input.TimeDoubted("the clock was set"));
            }
            if (pulls == 9 && story.state().isUndoable()) {
                pulls++;
                story.send(new Input.UndoAsked());
            } else {
                story.pass(30);
            }
        }

        private void fill(Slot slot) {
            if (slot instanceof Slot.Field) {
                story.type("W1").type("21").type("3");
                return;
            }
            readings++;
            double reading = slot instanceof Slot.Mask ? own.mask() + 0.31 * readings : 4000;
            story.send(
                    new Input.ReadingArrived(
                            slot,
                            new Quantity(reading, Unit.PER_CUBIC_CENTIMETRE),
                            Source.INSTRUMENT));
        }
    }
}
