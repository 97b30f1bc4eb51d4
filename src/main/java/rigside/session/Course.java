package rigside.session;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalLong;

/**
 * How far the procedure has come.
 *
 * @param cautionsRead whether the cautions were acknowledged
 * @param stage the part of the session
 * @param wentOnAt how many looks had been taken when the tester last went on although everything
 *     had settled; 0 if never
 * @param ended why there is no further donning, in the tester's words; empty while one may follow
 * @param closed whether the session is closed
 * @param donnings all donnings begun, in the order they were begun
 * @param progress for each step begun, how many items are confirmed, exercises finished; 1 for a
 *     finished countdown or a note that was read
 * @param begun when each exercise last began, in nanoseconds of session time
 * @param checked what became last of each item of a checklist
 */
public record Course(
        boolean cautionsRead,
        Stage stage,
        int wentOnAt,
        Optional<String> ended,
        boolean closed,
        List<Donning> donnings,
        Map<Place, Integer> progress,
        Map<Exercise, Long> begun,
        Map<Check, Checked> checked) {
    static final Course START =
            new Course(
                    false,
                    Stage.BEFORE,
                    0,
                    Optional.empty(),
                    false,
                    List.of(),
                    Map.of(),
                    Map.of(),
                    Map.of());

    public Course {
        donnings = List.copyOf(donnings);
        progress = Map.copyOf(progress);
        begun = Map.copyOf(begun);
        checked = Map.copyOf(checked);
    }

    /**
     * One exercise as met in one session.
     *
     * @param exercise its position in the step, from 0
     */
    public record Exercise(Place place, int exercise) {}

    /**
     * One item of a checklist as met in one session.
     *
     * @param item its position in the list, from 0
     */
    public record Check(Place place, int item) {}

    /** What became of an item of a checklist; empty while it is open, or open again. */
    public Optional<Checked> checked(Place place, int item) {
        return progress(place) > item
                ? Optional.ofNullable(checked.get(new Check(place, item)))
                : Optional.empty();
    }

    /** When an exercise last began, in nanoseconds of session time; empty if it never did. */
    public OptionalLong begun(Place place, int exercise) {
        Long at = begun.get(new Exercise(place, exercise));
        return at == null ? OptionalLong.empty() : OptionalLong.of(at);
    }

    Course withBegun(Place place, int exercise, long at) {
        Map<Exercise, Long> changed = new HashMap<>(begun);
        changed.put(new Exercise(place, exercise), at);
        return new Course(
                cautionsRead, stage, wentOnAt, ended, closed, donnings, progress, changed, checked);
    }

    /** The donning that is going on. */
    public Optional<Donning> open() {
        return donnings.stream()
                .filter(donning -> donning.outcome() == Donning.Outcome.OPEN)
                .findFirst();
    }

    public Optional<Donning> donning(int number) {
        return donnings.stream().filter(donning -> donning.number() == number).findFirst();
    }

    /** How far a step has come. */
    public int progress(Place place) {
        return progress.getOrDefault(place, 0);
    }

    Course withCautionsRead() {
        return new Course(true, stage, wentOnAt, ended, closed, donnings, progress, begun, checked);
    }

    Course at(Stage next) {
        return new Course(
                cautionsRead, next, wentOnAt, ended, closed, donnings, progress, begun, checked);
    }

    Course withWentOnAt(int looks) {
        return new Course(
                cautionsRead, stage, looks, ended, closed, donnings, progress, begun, checked);
    }

    /** After the last donning, whatever stage it was. */
    Course withEnded(String reason) {
        return new Course(
                cautionsRead,
                Stage.AFTER,
                wentOnAt,
                Optional.of(reason),
                closed,
                donnings,
                progress,
                begun,
                checked);
    }

    Course withClosed() {
        return new Course(
                cautionsRead, stage, wentOnAt, ended, true, donnings, progress, begun, checked);
    }

    Course with(List<Donning> changed) {
        return new Course(
                cautionsRead, stage, wentOnAt, ended, closed, changed, progress, begun, checked);
    }

    Course with(Place place, int count) {
        Map<Place, Integer> changed = new HashMap<>(progress);
        changed.put(place, count);
        return new Course(
                cautionsRead, stage, wentOnAt, ended, closed, donnings, changed, begun, checked);
    }

    /** An item answered, and the checklist come as far as {@code count}. */
    Course with(Place place, int item, Checked how, int count) {
        Map<Check, Checked> changed = new HashMap<>(checked);
        changed.put(new Check(place, item), how);
        Course counted = with(place, count);
        return new Course(
                cautionsRead,
                stage,
                wentOnAt,
                ended,
                closed,
                donnings,
                counted.progress(),
                begun,
                changed);
    }
}
