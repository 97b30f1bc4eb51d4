package rigside.analysis;

import java.util.List;
import java.util.Map;
import rigside.measure.Quantity;
import rigside.measure.Unit;
import rigside.session.Captured;
import rigside.session.Entry;
import rigside.session.Event;
import rigside.session.Evolve;
import rigside.session.Place;
import rigside.session.Slot;
import rigside.session.Source;
import rigside.session.Stage;
import rigside.session.State;
import rigside.session.Story;
import rigside.session.Value;

/** A session of {@code glass.yaml} written straight as events, for tests. */
final class Bench {
    private static final int EXERCISES = 1;
    private static final int TRIALS = 2;
    private static final int EFFORT = 3;

    private State state = State.START;
    private int donning;
    private long now;

    /** Changes are texts of the protocol and what stands in their place. */
    static Bench with(Map<String, String> changes) {
        String text = Story.text("/analysis/glass.yaml");
        for (Map.Entry<String, String> change : changes.entrySet()) {
            if (!text.contains(change.getKey())) {
                throw new IllegalArgumentException("not in the protocol: " + change.getKey());
            }
            text = text.replace(change.getKey(), change.getValue());
        }
        return new Bench()
                .take(new Event.SessionOpened("test", "glass.yaml", text, 7, "typed", "", false, 1))
                .take(new Event.CautionsAcknowledged());
    }

    static Bench plain() {
        return with(Map.of());
    }

    /** Each until when, as the file says it. */
    static Bench concealing(String trialClock, String result) {
        String plan = "most: 10";
        String conceal = "{trial-clock: " + trialClock + ", result: " + result + "}";
        return with(Map.of(plan, plan + "\n  conceal: " + conceal));
    }

    /** Results shown at once. */
    static String shownPlan(String plan) {
        return plan + "\n  conceal: {trial-clock: shown, result: shown}";
    }

    Bench take(Event event) {
        now += 1_000_000_000L;
        state = Evolve.step(state, event, now);
        return this;
    }

    Bench start(int round, String condition) {
        donning++;
        return take(new Event.DonningStarted(donning, round, 1, condition));
    }

    Bench complete() {
        return take(new Event.DonningCompleted(donning));
    }

    /** Ambient 4000, the same mask concentration in both exercises, per cm3. */
    Bench exercises(double mask) {
        return exercises(mask, mask);
    }

    Bench exercises(double first, double second) {
        return sampled(4000, first, second);
    }

    /** The same ambient concentration before and after two masks', per cm3. */
    Bench sampled(double ambient, double first, double second) {
        Place place = place(EXERCISES);
        return capture(new Slot.Ambient(place, 0, 0), ambient, Unit.PER_CUBIC_CENTIMETRE)
                .capture(new Slot.Mask(place, 0), first, Unit.PER_CUBIC_CENTIMETRE)
                .capture(new Slot.Mask(place, 1), second, Unit.PER_CUBIC_CENTIMETRE)
                .capture(new Slot.Ambient(place, 1, 0), ambient, Unit.PER_CUBIC_CENTIMETRE);
    }

    Bench trial(int trial, double seconds) {
        return capture(new Slot.Trial(place(TRIALS), trial), seconds, Unit.SECOND);
    }

    Bench trials(double first, double second) {
        return trial(0, first).trial(1, second);
    }

    Bench effort(double pascal) {
        return capture(new Slot.Field(place(EFFORT), "effort"), pascal, Unit.PASCAL);
    }

    Bench vitalCapacity(double litres) {
        Slot slot = new Slot.Field(new Place(Stage.BEFORE, 0, 0), "vital-capacity");
        return capture(slot, litres, Unit.LITRE);
    }

    Bench capture(Slot slot, double value, Unit unit) {
        return take(
                new Event.EntryCaptured(
                        captured().entries().size() + 1,
                        slot,
                        new Value.Measured(new Quantity(value, unit)),
                        Source.TYPED));
    }

    /** A whole donning; the mask concentration in 1/cm3 against 4000 outside. */
    Bench donning(int round, String condition, double mask, double seconds, double pascal) {
        return start(round, condition)
                .exercises(mask)
                .trials(seconds, seconds)
                .effort(pascal)
                .complete();
    }

    /** A round of the two conditions with these inhalation times, all else alike; then its look. */
    Bench round(int round, double bare, double disc) {
        return donning(round, "bare", 20, bare, 300).donning(round, "disc", 20, disc, 300).look();
    }

    Bench look() {
        return take(new Event.LookTaken(Looks.of(analysis(), state)));
    }

    Bench voided(int entry) {
        return take(new Event.EntryVoided(entry, "the mask moved"));
    }

    /** The entry amended to another time of the same trial. */
    Bench amended(int donning, int trial, double seconds) {
        Value value = new Value.Measured(new Quantity(seconds, Unit.SECOND));
        return take(new Event.EntryAmended(entry(donning, trial), value, "misread"));
    }

    /** The entry a donning has of a trial. */
    int entry(int donning, int trial) {
        Slot slot = new Slot.Trial(new Place(Stage.DONNING, donning, TRIALS), trial);
        return captured().standing(slot).map(Entry::number).orElseThrow();
    }

    /** The entry replaced by another time of the same trial. */
    Bench replaced(int donning, int trial, double seconds) {
        Slot slot = new Slot.Trial(new Place(Stage.DONNING, donning, TRIALS), trial);
        return voided(entry(donning, trial)).capture(slot, seconds, Unit.SECOND);
    }

    private Captured captured() {
        return state.captured();
    }

    private Place place(int step) {
        return new Place(Stage.DONNING, donning, step);
    }

    State state() {
        return state;
    }

    Analysis analysis() {
        return Analysis.of(state);
    }

    Shown shown() {
        return Shown.of(state, analysis());
    }

    MeasureResult measure(String id) {
        return analysis().measure(id).orElseThrow();
    }

    Comparison comparison(String measure) {
        return measure(measure).comparison("disc").orElseThrow();
    }

    static boolean says(List<String> remarks, String words) {
        return remarks.stream().anyMatch(remark -> remark.contains(words));
    }
}
