package rigside.screen;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import rigside.analysis.Analysis;
import rigside.analysis.Live;
import rigside.analysis.Looks;
import rigside.analysis.Shown;
import rigside.measure.Counted;
import rigside.measure.TracedInhalation;
import rigside.session.Activity;
import rigside.session.Entry;
import rigside.session.Event;
import rigside.session.Gated;
import rigside.session.Input;
import rigside.session.Slot;
import rigside.session.Story;

/** Sessions brought to every kind of activity, and what a tester looks at there. */
final class Scenes {
    private Scenes() {}

    static final View.Style UNICODE = new View.Style(View.Colours.MANY, true);
    static final View.Style ASCII = new View.Style(View.Colours.NONE, false);

    /** The step pages, by the name of their picture. */
    static Map<String, View> steps() {
        Map<String, View> views = new LinkedHashMap<>();
        views.put("cautions", step(Story.of("/protocols/seal-and-breathing.yaml")));
        views.put("field", typed(step(small().goOn().type("W1")), "21,5"));
        views.put("field-empty", step(small().goOn()));
        views.put("reading", step(small().goOn().type("W1").type("21")));
        views.put("gate-to-start", step(Gated.atGates()));
        views.put("gating", later(Gated.atGates().goOn(), 20));
        views.put("gate-value", typed(step(Gated.roomRead()), "4"));
        views.put("gate-missed", step(Gated.roomRead().type("430")));
        views.put("next-donning", step(Story.atFirstDonning()));
        views.put("checking", step(donning().goOn()));
        views.put("checking-goes-on", step(Branched.atSealCheck()));
        views.put("checking-after-no", step(Branched.atSealCheck().answer(false)));
        views.put("checking-again", step(Branched.sealedAtSecond()));
        views.put("waiting-to-start", step(donning().goOn().goOn().goOn()));
        views.put("waiting", later(donning().goOn().goOn().goOn().goOn(), 3.4));
        views.put("exercise-to-start", step(firstPurged()));
        views.put("exercise", later(firstPurged().goOn(), 12));
        views.put("exercise-live", fed(later(firstPurged().goOn(), 17), 0.04, false));
        views.put("exercise-live-moved", fed(later(firstPurged().goOn(), 17), 0.31, true));
        views.put(
                "gating-live",
                later(Gated.atGates().goOn(), 20).with(Live.gate(OptionalDouble.of(0.02e6))));
        views.put("concentration", typed(step(firstPurged().goOn().pass(20)), "4000"));
        views.put(
                "exercise-two-to-start",
                step(firstPurged().goOn().pass(20).type("4000").type("40")));
        views.put("doubting", step(firstPurged().goOn().pass(20).type("4000").type("3000")));
        views.put("trial-ready", step(firstExercised()));
        views.put("lead-in", later(firstExercised().trigger(), 1.2));
        views.put("lead-in-go", later(firstExercised().trigger(), 3.1));
        views.put("pulling", later(firstPulling(), 4.7));
        views.put("hold-asked", step(firstPulling().pass(8.25).trigger()));
        views.put("tracing", gauged(step(gaugedPull().pass(6).send(PRESSED)), 20));
        views.put("void-asked", step(firstPulling().pass(0.9).trigger().answer(true)));
        views.put("resting", later(firstExercised().inhaled(8.25), 11));
        views.put("observation", step(observed()));
        views.put("paper-exercise", step(onPaper().purged()));
        views.put("paper-trial", typed(step(onPaper().purged().exercised("40")), "8,2"));
        views.put("paper-held", step(onPaper().purged().exercised("40").type("8.2")));
        views.put("paper-gate", step(Story.onPaper(Gated.text()).goOn().type("W1").type("21")));
        views.put("paper-gate-missed", step(paperGateMissed()));
        views.put("donning-done", step(observed().type("3")));
        views.put("between-rounds", step(rounds(2)));
        views.put("recommended", step(settled()));
        views.put("halted", step(firstExercised().trigger().send(new Input.HaltPressed())));
        views.put("closing", step(ended()));
        views.put("closed", step(ended().goOn()));
        return views;
    }

    private static Story paperGateMissed() {
        return Story.onPaper(Gated.text()).goOn().type("W1").type("21").type("430");
    }

    private static Story onPaper() {
        return Story.onPaper(Story.text("/session/small.yaml")).goOn().type("W1").type("21").goOn();
    }

    /** The other pages, and pictures with something asked or said. */
    static Map<String, View> pages() {
        Map<String, View> views = new LinkedHashMap<>();
        views.put("tally-before-looks", page(rounds(1), View.Page.TALLY));
        views.put("tally", page(rounds(2), View.Page.TALLY));
        views.put("tally-settled", page(settled(), View.Page.TALLY));
        views.put("tally-level", page(withLevel(), View.Page.TALLY));
        views.put("tally-of-trials", page(ofTrials(1.25), View.Page.TALLY));
        views.put("between-trials", step(ofTrials(1.1)));
        views.put("tally-of-three", page(three(), View.Page.TALLY));
        views.put("between-three", step(three()));
        views.put("tally-concealed", page(firstExercised(), View.Page.TALLY));
        views.put("tally-of-mishaps", page(mishaps(), View.Page.TALLY));
        views.put("entries", page(mishaps(), View.Page.ENTRIES, 3));
        views.put("entries-of-facts", page(ended().type("all well"), View.Page.ENTRIES, 20));
        views.put("entries-concealed", page(firstExercised().inhaled(8.25), View.Page.ENTRIES));
        views.put("entries-no-longer", page(Branched.answerStruckOut(), View.Page.ENTRIES));
        views.put("entries-amended", page(amended(), View.Page.ENTRIES, 6));
        views.put("entries-amending", amending());
        views.put("method-amended", page(amended(), View.Page.METHOD));
        views.put("tally-flags", Reasons.in(page(rounds(3), View.Page.TALLY)));
        views.put("recommended-flags", Reasons.in(step(settled())));
        views.put("method", Reasons.in(page(settled(), View.Page.METHOD)));
        views.put("method-concealed", Reasons.in(page(firstExercised(), View.Page.METHOD)));
        views.put("flags", Reasons.in(page(rounds(3), View.Page.FLAGS)));
        views.put("flags-concealed", Reasons.in(page(firstExercised(), View.Page.FLAGS)));
        views.put("help", page(rounds(1), View.Page.HELP));
        views.put("prompt", asked(step(firstExercised()), "the strap slipped"));
        views.put("message", said(step(firstExercised()), "the trigger does nothing here"));
        views.put("simulated", later(firstExercised(simulated()).trigger(), 1.2));
        views.put(
                "shown-exercise-two",
                step(shown().purged().goOn().pass(20).type("4000").type("40")));
        views.put("shown-exercise-running", later(secondExercise(shown()), 7));
        views.put("shown-pulling", later(firstExercised(shown()).trigger().pass(3).trigger(), 4.7));
        views.put("shown-resting", later(firstExercised(shown()).inhaled(8.25), 11));
        views.put(
                "shown-donning-done",
                step(
                        shown().purged()
                                .exercised("40")
                                .inhaled(8.1)
                                .pass(30)
                                .inhaled(8.3)
                                .type("4")));
        views.put("gauge-ready", gauged(step(firstExercised(tolerant())), -1.2));
        views.put("gauge-lead-in", gauged(later(firstExercised(tolerant()).trigger(), 3.1), 90));
        views.put("gauge-weak", gauged(later(gaugedPull(), 4.7), 170));
        views.put("gauge-right", gauged(later(gaugedPull(), 4.7), 262));
        views.put("gauge-hard", gauged(later(gaugedPull(), 4.7), 334));
        views.put(
                "gauge-clock-shown",
                gauged(later(firstExercised(shown()).trigger().pass(3).trigger(), 4.7), 262));
        views.put("gauge-silent", silent(later(gaugedPull(), 4.7)));
        views.put("trace-doubted", step(traced(0.38)));
        views.put("gauge-none", gauged(later(gaugedPull(), 4.7), 3));
        views.put("gauge-blowing", gauged(step(firstExercised(tolerant())), -51.9));
        views.put(
                "gate-passed",
                step(Gated.atGates().send(new Input.LeaveOutAsked("no zero filter"))));
        views.put(
                "broken-off",
                later(
                        firstExercised()
                                .inhaled(8.25)
                                .pass(30)
                                .trigger()
                                .pass(3)
                                .trigger()
                                .pass(4)
                                .send(new Input.HaltPressed())
                                .goOn(),
                        5));
        views.put("trace-missing", step(untraced()));
        views.put("untraced-entries", page(untraced().answer(true), View.Page.ENTRIES, 1));
        views.put("trace-resting", later(traced(0.88), 11));
        views.put("trace-entries", page(traced(0.88), View.Page.ENTRIES, 1));
        views.put("trace-tally", page(tracedRound(), View.Page.TALLY));
        views.put("seven-exercises", step(shipped()));
        views.put(
                "choices", step(Story.of("/protocols/seal-and-breathing.yaml").goOn().type("W1")));
        views.put("foreign", step(foreign()));
        return views;
    }

    static Story small() {
        return Story.of("/session/small.yaml");
    }

    private static final Input PRESSED = new Input.TriggerPressed(true);

    /** The small comparison with a tolerance; an instrument follows the pressure. */
    private static Story tolerant() {
        return atFirstDonning(
                Story.text("/session/small.yaml")
                        .replace("target: 250 Pa\n", "target: 250 Pa\n    tolerance: 20 %\n"),
                false);
    }

    private static Story gaugedPull() {
        return firstExercised(tolerant()).trigger().pass(3).trigger();
    }

    /** One inhalation with its trace, held for so large a share of it. */
    private static Story traced(double within) {
        return gaugedPull().pass(8.25).send(PRESSED).send(trace(8, within));
    }

    private static Story untraced() {
        return gaugedPull()
                .pass(8.25)
                .send(PRESSED)
                .send(new Input.PullNotTraced("the gauge was silent for too much of the pull"));
    }

    private static Input trace(double seconds, double within) {
        return new Input.PullTraced(
                new TracedInhalation(-0.2, seconds, 250 * seconds, 243, 18.6, within, 0, true, 1));
    }

    /** A round whose inhalations are traced; what the exercises gave is typed. */
    private static Story tracedRound() {
        Story story = tolerant();
        for (int turn = 0; turn < 2; turn++) {
            double seconds = isDisc(story) ? 9.4 : 8.1;
            story.purged().exercised("40");
            for (int trial = 0; trial < 2; trial++) {
                story.trigger().pass(3).trigger().pass(seconds).send(PRESSED);
                story.send(trace(seconds + 0.2 * trial, 0.88)).pass(30);
            }
            if (story.activity() instanceof Activity.Filling) {
                story.type("3");
            }
            story.goOn();
        }
        return story;
    }

    /** The same view with a gauge that reads so much suction, in Pa. */
    static View gauged(View view, double suction) {
        return view.with(Optional.of(new View.Gauge(OptionalDouble.of(suction))));
    }

    private static View silent(View view) {
        return view.with(Optional.of(new View.Gauge(OptionalDouble.empty())));
    }

    /** The small comparison with nothing concealed. */
    private static Story shown() {
        return atFirstDonning(
                Story.text("/session/small.yaml")
                        .replace(
                                "  most: 4\n",
                                "  most: 4\n  conceal: {trial-clock: shown, result: shown}\n"),
                false);
    }

    /** Two rounds of the small comparison with a level to reach. */
    private static Story withLevel() {
        Story story =
                atFirstDonning(
                        Story.text("/session/small.yaml")
                                .replace(
                                        "    kind: fit-factor\n",
                                        """
                                            kind: fit-factor
                                            required: {level: 93, rule: overall}
                                        """),
                        false);
        round(story, 0, 1.25);
        round(story, 1, 1.25);
        return story;
    }

    /** Two rounds of the small comparison in which each trial stands for itself. */
    private static Story ofTrials(double ratio) {
        Story story =
                atFirstDonning(
                        Story.text("/session/small.yaml")
                                .replace(
                                        "meaningful: 2 times\n",
                                        "meaningful: 2 times\n    decides: no\n")
                                .replace(
                                        "  most: 4\n",
                                        "  most: 8\n  design: independent\n  replicates: trials\n"),
                        false);
        round(story, 0, ratio);
        round(story, 1, ratio);
        return story;
    }

    /** Two rounds of three conditions. */
    private static Story three() {
        String felt =
                """
                  - id: felt
                    title: Mask with the felt
                    specimen: {piece: mask 1 and felt 1, worn-before: 0}
                    particle-reading: seal-only
                measures:
                """;
        Story story =
                atFirstDonning(
                        Story.text("/session/small.yaml").replace("measures:\n", felt), false);
        for (int round = 0; round < 2; round++) {
            for (int turn = 0; turn < 3; turn++) {
                story.donning("4" + turn, (isDisc(story) ? 10 : 8) + 0.1 * round + 0.07 * turn);
            }
            story.send(new Input.LookArrived(Looks.of(Analysis.of(story.state()), story.state())));
        }
        return story;
    }

    /** With what a counter gives in the first exercise. */
    private static View fed(View view, double change, boolean moved) {
        Counted.Limits limits = new Counted.Limits(188, OptionalDouble.of(259));
        return view.with(
                new Live(
                        OptionalDouble.of(18.2e6),
                        List.of(new Live.Fit(0, 219.8, false, Optional.of(limits))),
                        OptionalDouble.of(change),
                        moved));
    }

    private static Story simulated() {
        return atFirstDonning(Story.text("/session/small.yaml"), true);
    }

    /** The shipped comparison, four of its seven exercises done. */
    private static Story shipped() {
        Story story = Story.of("/protocols/seal-and-breathing.yaml").goOn();
        for (String fact : List.of("W1", "2", "2", "21", "40", "counter 1", "gauge 1", "")) {
            story.type(fact);
        }
        story.goOn().goOn().goOn().goOn();
        story.goOn().pass(60).type("0").goOn().pass(10).type("4000").goOn().goOn();
        while (!(story.activity() instanceof Activity.Checking)) {
            story.goOn();
        }
        story.goOn().goOn().goOn().goOn().goOn().pass(180);
        for (int exercise = 0; exercise < 4; exercise++) {
            story.goOn().pass(60).type("4000").type("40");
        }
        return story;
    }

    /** Titles that are wide, accented, or meant to harm. */
    private static Story foreign() {
        return atFirstDonning(
                Story.text("/session/small.yaml")
                        .replace("Mask with the disc", "\u30de\u30b9\u30af e\u0301 \u092e\u0941")
                        .replace("Small comparison", "\u5c0f\u3055\u306a\u6bd4\u8f03 \u00bd"),
                false);
    }

    static Story atFirstDonning(String text, boolean simulated) {
        return opened(text, simulated).goOn().type("W1").type("21").goOn();
    }

    private static Story firstExercised(Story story) {
        return story.purged().exercised("40");
    }

    private static Story secondExercise(Story story) {
        return story.purged().goOn().pass(20).type("4000").type("40").goOn();
    }

    private static Story donning() {
        return Story.atFirstDonning().goOn();
    }

    private static Story firstPurged() {
        return Story.atFirstDonning().purged();
    }

    private static Story firstExercised() {
        return firstPurged().exercised("40");
    }

    private static Story firstPulling() {
        return firstExercised().trigger().pass(3).trigger();
    }

    /** The first donning with the disc, which ends with an observation. */
    private static Story observed() {
        Story story = Story.atFirstDonning();
        while (!isDisc(story)) {
            story.donning("40", 8.1);
        }
        return story.purged().exercised("44").inhaled(9.2).pass(30).inhaled(9.4);
    }

    static boolean isDisc(Story story) {
        return story.activity() instanceof Activity.NextDonning next
                && next.condition().equals("disc");
    }

    /** Complete rounds, each looked at. */
    static Story rounds(int count) {
        Story story = Story.atFirstDonning();
        for (int round = 0; round < count; round++) {
            round(story, round, 1.25);
        }
        return story;
    }

    private static void round(Story story, int round, double ratio) {
        for (int turn = 0; turn < 2; turn++) {
            boolean disc = isDisc(story);
            String mask = disc ? String.valueOf(41 + 3 * round) : String.valueOf(40 - 2 * round);
            story.donning(mask, (disc ? 8 * ratio : 8) + 0.11 * round + 0.07 * turn);
        }
        story.send(new Input.LookArrived(Looks.of(Analysis.of(story.state()), story.state())));
    }

    /** Every question settled. */
    static Story settled() {
        Story story = Story.atFirstDonning();
        for (int round = 0; !(story.activity() instanceof Activity.Recommended); round++) {
            round(story, round, 1.5);
        }
        return story;
    }

    static Story ended() {
        return settled().goOn().type("");
    }

    /** A round with a failed check, an abandoned donning, voids and a note. */
    private static Story mishaps() {
        Story story = rounds(1);
        story.goOn().answer(true).answer(false);
        story.purged().goOn().pass(20).send(new Input.LeaveOutAsked("the counter froze"));
        story.send(new Input.AbandonAsked("the strap slipped"));
        story.purged().exercised("38").inhaled(8.4);
        return story.send(new Input.UndoAsked()).send(new Input.NoteTyped("warm in here"));
    }

    /** A mask concentration of the first donning and a time of the last one are put right. */
    static Story amended() {
        Story story = settled();
        int last = story.state().captured().entries().size();
        Entry time =
                story.state().captured().entries().stream()
                        .filter(entry -> entry.slot() instanceof Slot.Trial)
                        .reduce((first, second) -> second)
                        .orElseThrow();
        story.send(new Input.AmendAsked(4, "44", "typed the wrong line", false));
        story.send(new Input.AmendAsked(time.number(), "9.5", "the clock was misread", false));
        story.send(new Input.VoidAsked(last - 1, "wrong window"));
        return story.send(new Input.LookArrived(Looks.due(story.state())));
    }

    private static View amending() {
        View view = page(rounds(1), View.Page.ENTRIES, 3);
        Entry entry = ((Listing.Row.OfEntry) Listing.of(view.state()).get(3)).entry();
        return with(
                view,
                Optional.of(View.Prompt.AMEND_VALUE),
                "12",
                Optional.of(AmendingWords.now(view, entry)),
                view.style());
    }

    static View step(Story story) {
        return page(story, View.Page.STEP);
    }

    static View page(Story story, View.Page page) {
        return page(story, page, 0);
    }

    static View page(Story story, View.Page page, int selected) {
        return new View(
                story.state(),
                Shown.of(story.state(), Analysis.of(story.state())),
                story.now(),
                page,
                selected,
                Optional.empty(),
                "",
                Optional.empty(),
                UNICODE);
    }

    static View later(Story story, double seconds) {
        View view = step(story);
        return at(view, view.now() + Math.round(seconds * 1e9));
    }

    static View selected(View view, int selected) {
        return new View(
                        view.state(),
                        view.shown(),
                        view.now(),
                        view.page(),
                        selected,
                        view.prompt(),
                        view.typed(),
                        view.message(),
                        view.style())
                .with(view.live());
    }

    static View at(View view, long now) {
        return new View(
                        view.state(),
                        view.shown(),
                        now,
                        view.page(),
                        view.selected(),
                        view.prompt(),
                        view.typed(),
                        view.message(),
                        view.style())
                .with(view.live());
    }

    static View typed(View view, String typed) {
        return with(view, view.prompt(), typed, view.message(), view.style());
    }

    static View asked(View view, String typed) {
        return with(
                view, Optional.of(View.Prompt.ABANDON_REASON), typed, view.message(), view.style());
    }

    static View said(View view, String message) {
        return with(view, view.prompt(), view.typed(), Optional.of(message), view.style());
    }

    static View styled(View view, View.Style style) {
        return with(view, view.prompt(), view.typed(), view.message(), style);
    }

    private static View with(
            View view,
            Optional<View.Prompt> prompt,
            String typed,
            Optional<String> message,
            View.Style style) {
        return new View(
                        view.state(),
                        view.shown(),
                        view.now(),
                        view.page(),
                        view.selected(),
                        prompt,
                        typed,
                        message,
                        style)
                .with(view.gauge())
                .with(view.live());
    }

    /** The small comparison opened with a simulated rig, or with another text. */
    static Story opened(String text, boolean simulated) {
        return Story.opened(
                new Event.SessionOpened(
                        "test",
                        "small.yaml",
                        text,
                        7,
                        "simulated",
                        "",
                        simulated,
                        simulated ? 30 : 1));
    }
}
