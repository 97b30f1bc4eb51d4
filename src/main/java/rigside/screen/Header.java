package rigside.screen;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import rigside.measure.Numbers;
import rigside.protocol.Condition;
import rigside.protocol.Plan;
import rigside.protocol.Protocol;
import rigside.protocol.Step;
import rigside.session.Activity;
import rigside.session.Applicable;
import rigside.session.Donning;
import rigside.session.Event;
import rigside.session.Place;
import rigside.session.Procedure;
import rigside.session.State;

/**
 * The top of every picture of a session: what it is, where it stands, how far the part has come.
 */
record Header(View view, int columns) {
    /** So many characters of names leave room for the title. */
    private static final int MOST_NAMES = 30;

    private static final String REHEARSED = "[rehearsal: invented values] ";

    static List<Line> of(View view, int columns) {
        Header header = new Header(view, columns);
        return List.of(header.strip(), header.standing(), header.course(), Line.BLANK);
    }

    private Line strip() {
        Event.SessionOpened opened = view.state().opening().orElseThrow().event();
        String notice =
                failing(view.state())
                        + (opened.paper().isPresent() ? "[entered from paper] " : "")
                        + (view.rehearsed()
                                ? REHEARSED
                                : notice(opened.simulated(), opened.speed()));
        return strip(view.state().protocol().title(), notice, columns, view.glyphs());
    }

    /** A title on the left and a notice on the right that is never cut. */
    static Line strip(String title, String notice, int columns, Glyphs signs) {
        int room = columns - Clean.width(notice);
        return Line.of(Tone.INVERSE, " " + title)
                .cut(room - 1, signs.cut())
                .padded(room, Tone.INVERSE)
                .plus(Tone.INVERSE, notice);
    }

    /** What has to be known of a simulated rig's values; empty for a real one. */
    static String notice(boolean simulated, double speed) {
        if (!simulated) {
            return "";
        }
        String times = speed == 1 ? "" : " x" + Numbers.plain(speed);
        return "[simulated rig" + times + ": invented values] ";
    }

    /** Which instruments fail now; empty when none does. */
    private static String failing(State state) {
        Set<String> feeds = new TreeSet<>(state.feeds().why().keySet());
        if (feeds.isEmpty()) {
            return "";
        }
        String names = String.join(", ", feeds);
        return names.length() <= MOST_NAMES
                ? "[fails: " + names + "] "
                : "[" + feeds.size() + " instruments fail] ";
    }

    private Line standing() {
        State state = view.state();
        Optional<Donning> open = state.course().open();
        if (open.isPresent()) {
            Donning donning = open.get();
            return worn(donning.round(), donning.condition())
                    .plus(Tone.QUIET, "   donning " + donning.number());
        }
        if (state.activity() instanceof Activity.NextDonning next) {
            return worn(next.round(), next.condition()).plus(Tone.QUIET, "   comes next");
        }
        if (state.protocol().purpose() == Protocol.Purpose.INSTRUMENT_CHECK) {
            return Line.of(" instrument check, nothing is worn");
        }
        return Line.of(
                " "
                        + switch (state.course().stage()) {
                            case BEFORE -> "before the first donning";
                            case DONNING -> "between donnings";
                            case AFTER -> "after the last donning";
                        });
    }

    private Line worn(int round, String condition) {
        Protocol protocol = view.state().protocol();
        boolean one = protocol.purpose() == Protocol.Purpose.REPEATABILITY;
        return Line.of(one ? " " + round + " of " + protocol.plan().most() : " round " + round)
                .plus(Tone.QUIET, one ? "   " : " (plan: " + planned(protocol.plan()) + ")   ")
                .plus(Tone.STRONG, title(view.state(), condition));
    }

    /** Rounds, or what is counted where each donning or trial stands for itself. */
    private static String planned(Plan plan) {
        return plan.fewest()
                + " to "
                + plan.most()
                + (plan.design() == Plan.Design.ROUNDS ? "" : " values each");
    }

    static String title(State state, String condition) {
        return state.protocol().condition(condition).map(Condition::title).orElse(condition);
    }

    /** A rule, heavy as far as this part has come, with the step's place and title in it. */
    private Line course() {
        Optional<Place> place = Places.of(view.state());
        if (place.isEmpty()) {
            return Line.of(Tone.QUIET, view.glyphs().light().repeat(columns));
        }
        List<Integer> steps = steps(place.get());
        int at = steps.indexOf(place.get().step()) + 1;
        String words =
                " "
                        + at
                        + " of "
                        + steps.size()
                        + "  "
                        + Procedure.step(view.state(), place.get()).title()
                        + " ";
        int done =
                Math.min(
                        columns * (at - 1) / Math.max(1, steps.size()),
                        columns - 2 - Clean.width(Clean.text(words)));
        Line head =
                Line.of(view.glyphs().heavy().repeat(Math.max(1, done)))
                        .plus(Tone.STRONG, words)
                        .cut(columns - 1, view.glyphs().cut());
        return head.plus(
                Tone.QUIET, view.glyphs().light().repeat(Math.max(0, columns - head.width())));
    }

    /** The positions of the steps of one part that apply and ask for anything. */
    private List<Integer> steps(Place place) {
        List<Step> steps = Procedure.steps(view.state().protocol(), place.stage());
        return Applicable.steps(view.state(), place.stage(), place.donning()).stream()
                .filter(
                        at ->
                                !(steps.get(at) instanceof Step.Form form)
                                        || !form.fields().isEmpty())
                .toList();
    }
}
