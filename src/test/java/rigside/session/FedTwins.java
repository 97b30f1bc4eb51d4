package rigside.session;

import java.util.List;
import rigside.analysis.Analysis;
import rigside.analysis.Looks;
import rigside.measure.Breath;
import rigside.measure.Quantity;
import rigside.measure.TracedInhalation;
import rigside.measure.Unit;

/**
 * Twins whose readings come from instruments: a counter on either side of the mask and a gauge that
 * follows free breathing and pulls. How a pull was held differs too, by less than is told of it
 * while times are concealed.
 */
public final class FedTwins {
    /** Donnings done; the plan's fewest rounds are never reached, so that nothing is settled. */
    private static final int DONNINGS = 5;

    private static final double TARGET = 250;

    private FedTwins() {}

    /**
     * How a twin is its own.
     *
     * @param pull the first pull at the target, in seconds
     * @param added how much longer the second pull of a donning is, in seconds; below 0 where the
     *     twin takes the longer one first
     * @param disc how much longer the pulls of the other condition are, in seconds
     * @param held how its pulls were held
     * @param early the mask concentration of the first three donnings, /cm3
     * @param mask that of the later ones
     * @param peak the peak of its free breaths, in Pa
     */
    private record Own(
            double pull,
            double added,
            double disc,
            Held held,
            double early,
            double mask,
            double peak) {}

    /**
     * How the pulls of a twin were held.
     *
     * @param mean of its steady pulls, in Pa
     * @param within the share of them inside the band
     * @param slack the share inside the band of the one that was not held
     * @param weak the mean of the one that was too weak, in Pa
     */
    private record Held(double mean, double within, double slack, double weak) {}

    private static final Held ONE = new Held(247.3, 0.8812, 0.371, 193.2);
    private static final Held OTHER = new Held(252.1, 0.8947, 0.384, 188.4);

    /**
     * By the usual concealment, until a donning ends: pulls and breaths differ, and the readings of
     * the first three donnings.
     */
    public static Twins untilDonningEnds() {
        return of(
                "",
                new Own(6.137, 0.413, 0.0713, ONE, 37.13, 41, 93.7),
                new Own(9.391, -0.377, 3.1871, OTHER, 83.47, 41, 141.3));
    }

    /**
     * Results are shown and times of trials concealed until the session ends: pulls differ. There
     * are looks, one pull is amended after them and one struck out; fit factors scatter so that
     * nothing settles, whatever the times are.
     */
    public static Twins inClockAlone() {
        String text =
                text(
                        """
                          fewest: 2
                          most: 4
                          conceal: {trial-clock: until-session-ends, result: shown}
                        """);
        return new Twins(
                played(text, new Own(6.137, 0.413, 0.0713, ONE, 37, 83.47, 93.7), true),
                played(text, new Own(9.391, -0.377, 3.1871, OTHER, 37, 83.47, 93.7), true));
    }

    /**
     * Times are out when a donning ends, results only at the end: what instruments read differs.
     */
    public static Twins inResults() {
        return of(
                "  conceal: {result: until-session-ends}\n",
                new Own(6.137, 0.413, 0.713, ONE, 37.13, 37.13, 93.7),
                new Own(6.137, 0.413, 0.713, ONE, 83.47, 83.47, 141.3));
    }

    /** All is concealed until the session ends, and all of it differs. */
    public static Twins inEverything() {
        return of(
                "  conceal: {trial-clock: until-session-ends, result: until-session-ends}\n",
                new Own(6.137, 0.413, 0.0713, ONE, 37.13, 37.13, 93.7),
                new Own(9.391, -0.377, 3.1871, OTHER, 83.47, 83.47, 141.3));
    }

    private static Twins of(String conceal, Own first, Own second) {
        String text = text("  fewest: 3\n  most: 4\n" + conceal);
        return new Twins(played(text, first, false), played(text, second, false));
    }

    private static String text(String plan) {
        return Story.text("/session/small.yaml")
                .replace("  fewest: 2\n  most: 4\n", plan)
                .replace(
                        "plan:\n",
                        "  - id: peak\n    title: Peak\n    kind: pressure-trace\nplan:\n")
                .replace(
                        "    kind: fit-factor\n",
                        "    kind: fit-factor\n    sample-flow: 0.1 L/min\n")
                .replace("feeds: fit\n", "feeds: [fit, peak]\n    pressure-unit: Pa\n")
                .replace("mask: 8 to 20 s\n", "mask: 8 to 20 s\n        pressure: 9 to 19 s\n")
                .replace("target: 250 Pa\n", "target: 250 Pa\n    tolerance: 20 %\n");
    }

    private static List<Recorded> played(String text, Own own, boolean corrected) {
        Story story =
                Story.opened(
                        new Event.SessionOpened(
                                "test", "small.yaml", text, 7, "typed", "", false, 1));
        Player player = new Player(story, own, corrected);
        while (!(story.activity() instanceof Activity.Closed)) {
            player.go();
        }
        return story.journal();
    }

    /** Does what is asked, and lets instruments answer. */
    private static final class Player {
        private final Story story;
        private final Own own;
        private final boolean corrected;
        private int pulls;
        private int readings;
        private int corrections;

        Player(Story story, Own own, boolean corrected) {
            this.story = story;
            this.own = own;
            this.corrected = corrected;
        }

        void go() {
            Activity activity = story.activity();
            if (story.state().lookDue()) {
                story.send(
                        new Input.LookArrived(Looks.of(Analysis.of(story.state()), story.state())));
            } else if (activity instanceof Activity.NextDonning && isToBeCorrected()) {
                correct();
            } else if (activity instanceof Activity.NextDonning && donnings() == DONNINGS) {
                story.send(new Input.EndAsked("the day is over"));
            } else if (activity instanceof Activity.Filling filling) {
                fill(filling.slot());
            } else if (activity instanceof Activity.TrialReady) {
                story.trigger();
            } else if (activity instanceof Activity.LeadIn) {
                story.pass(1.5).pass(1.5).trigger();
            } else if (activity instanceof Activity.Pulling pulling) {
                pulls++;
                double late = pulls == 6 ? 0 : 0.21;
                story.pass(TARGET * atTarget(pulling.trial()) / mean() + late)
                        .send(new Input.TriggerPressed(true));
            } else if (activity instanceof Activity.Tracing tracing) {
                story.pass(0.4).send(traced(tracing.trial()));
            } else if (activity instanceof Activity.HoldAsked) {
                story.answer(true);
            } else if (activity instanceof Activity.VoidAsked) {
                story.answer(pulls != 3);
            } else if (activity instanceof Activity.Resting) {
                rest();
            } else if (isRunning(activity)) {
                story.pass(20);
            } else {
                story.goOn();
            }
        }

        private boolean isToBeCorrected() {
            return corrected && donnings() == DONNINGS - 1 && corrections < 2;
        }

        /** Of the first donning one pull is amended, then one of the second is struck out. */
        private void correct() {
            corrections++;
            int entry =
                    story.state().captured().entries().stream()
                            .filter(each -> each.slot() instanceof Slot.Trial && each.stands())
                            .filter(each -> each.slot().place().donning() == corrections)
                            .findFirst()
                            .orElseThrow()
                            .number();
            story.send(
                    corrections == 1
                            ? new Input.AmendAsked(entry, "8.03", "misread", false)
                            : new Input.VoidAsked(entry, "the mask moved"));
        }

        private int donnings() {
            return story.state().course().donnings().size();
        }

        private static boolean isRunning(Activity activity) {
            return (activity instanceof Activity.Waiting waiting && waiting.startedAt().isPresent())
                    || (activity instanceof Activity.Exercising exercising
                            && exercising.startedAt().isPresent());
        }

        /** The seventh is implausibly short, and so done again. */
        private double atTarget(int trial) {
            boolean disc = story.state().course().open().orElseThrow().condition().equals("disc");
            double usual =
                    own.pull() + (disc ? own.disc() : 0) + own.added() * trial + 0.031 * donnings();
            return pulls == 7 ? 0.9 + usual / 20 : usual;
        }

        /** The fifth is too weak, and so done again; the sixth is timed by the clock alone. */
        private double mean() {
            return pulls == 5 ? own.held().weak() : pulls == 6 ? TARGET : own.held().mean();
        }

        /** The third is not held, and kept all the same. */
        private Input traced(int trial) {
            if (pulls == 6) {
                return new Input.PullNotTraced("the gauge was silent");
            }
            double within = pulls == 3 ? own.held().slack() : own.held().within();
            double integral = TARGET * atTarget(trial);
            double end = -0.13 + integral / mean();
            return new Input.PullTraced(
                    new TracedInhalation(-0.13, end, integral, mean(), 18.6, within, 0, true, 1));
        }

        private void rest() {
            if (pulls == 4) {
                story.send(new Input.FeedNoticed("gauge", true, "gauge: no readings for 2 s"));
                story.send(new Input.FeedNoticed("gauge", false, "gauge: readings again"));
            }
            story.pass(30);
        }

        private void fill(Slot slot) {
            if (slot instanceof Slot.Field) {
                story.type("W1").type("21").type("3");
            } else if (slot instanceof Slot.Pressure pressure) {
                double peak = own.peak() + 0.71 * donnings();
                Breath medians = new Breath(0, 3 + peak / 97, 1 + peak / 97, peak, 61, 120, 80);
                int count = own.peak() > 100 ? 3 : 2;
                story.send(new Input.BreathsFound(pressure, new Trace.Breaths(count, 0, medians)));
            } else {
                readings++;
                double mask = (donnings() <= 3 ? own.early() : own.mask()) + 0.31 * readings;
                double reading = slot instanceof Slot.Mask ? mask : 4000;
                story.send(
                        new Input.ReadingArrived(
                                slot,
                                new Quantity(reading, Unit.PER_CUBIC_CENTIMETRE),
                                Source.INSTRUMENT,
                                5));
            }
        }
    }
}
