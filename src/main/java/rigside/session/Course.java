package rigside.session;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

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
 */
public record Course(
        boolean cautionsRead,
        Stage stage,
        int wentOnAt,
        Optional<String> ended,
        boolean closed,
        List<Donning> donnings,
        Map<Place, Integer> progress) {
    static final Course START =
            new Course(false, Stage.BEFORE, 0, Optional.empty(), false, List.of(), Map.of());

    public Course {
        donnings = List.copyOf(donnings);
        progress = Map.copyOf(progress);
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
        return new Course(true, stage, wentOnAt, ended, closed, donnings, progress);
    }

    Course at(Stage next) {
        return new Course(cautionsRead, next, wentOnAt, ended, closed, donnings, progress);
    }

    Course withWentOnAt(int looks) {
        return new Course(cautionsRead, stage, looks, ended, closed, donnings, progress);
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
                progress);
    }

    Course withClosed() {
        return new Course(cautionsRead, stage, wentOnAt, ended, true, donnings, progress);
    }

    Course with(List<Donning> changed) {
        return new Course(cautionsRead, stage, wentOnAt, ended, closed, changed, progress);
    }

    Course with(Place place, int count) {
        Map<Place, Integer> changed = new HashMap<>(progress);
        changed.put(place, count);
        return new Course(cautionsRead, stage, wentOnAt, ended, closed, donnings, changed);
    }
}
