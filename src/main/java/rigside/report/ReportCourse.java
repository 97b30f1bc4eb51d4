package rigside.report;

import java.time.ZonedDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rigside.protocol.Step;
import rigside.report.Block.Head;
import rigside.report.Block.Part;
import rigside.session.Event;
import rigside.session.Place;
import rigside.session.Procedure;
import rigside.session.Recorded;

/**
 * Pauses, what was begun and broken off, and what the instruments did, in the order it happened.
 */
final class ReportCourse {
    private final Material of;
    private final ZonedDateTime opened;
    private final List<List<Cell>> pauses = new ArrayList<>();
    private final List<List<Cell>> broken = new ArrayList<>();
    private final List<List<Cell>> feeds = new ArrayList<>();

    private ReportCourse(Material of) {
        this.of = of;
        this.opened = of.events().get(0).wall();
    }

    static List<Block> of(Material of) {
        ReportCourse course = new ReportCourse(of);
        for (int at = 0; at < of.events().size(); at++) {
            course.read(at);
        }
        List<Block> blocks = new ArrayList<>();
        of.state()
                .course()
                .ended()
                .filter(why -> !isAsPlanned(of))
                .ifPresent(
                        why ->
                                blocks.add(
                                        Part.of(
                                                "Ended by the tester",
                                                "",
                                                List.of(new Block.Words(why)))));
        course.add(blocks, "Pauses", "When everything stood still", "For how long", course.pauses);
        course.add(
                blocks,
                "Broken off",
                "What was broken off, begun afresh or timed in doubt",
                "Where",
                course.broken);
        course.add(blocks, "Instruments", "What the instruments did", "Which", course.feeds);
        return blocks;
    }

    /** Whether the repeats ended because there was enough, or no more were planned. */
    private static boolean isAsPlanned(Material of) {
        return of.shown().enough()
                || of.shown().planUsedUp()
                || of.shown().completeRounds() >= of.protocol().plan().most();
    }

    /** A session on paper has the times of typing alone. */
    private void add(
            List<Block> blocks,
            String title,
            String caption,
            String second,
            List<List<Cell>> rows) {
        String when = of.opened().paper().isPresent() ? "When typed" : "When";
        if (!rows.isEmpty()) {
            blocks.add(
                    Part.of(
                            title,
                            "",
                            List.of(new Block.Table(caption, Head.of(when, second, "Why"), rows))));
        }
    }

    private void read(int at) {
        Recorded each = of.events().get(at);
        Event event = each.event();
        if (event instanceof Event.Halted halted) {
            pauses.add(row(each, until(at, Event.Continued.class), halted.why()));
        } else if (event instanceof Event.SessionReopened) {
            Recorded before = of.events().get(at - 1);
            boolean left = before.event() instanceof Event.SessionLeft;
            pauses.add(
                    row(
                            before,
                            Clock.length(before.at(), each.at()),
                            left ? "the session was left" : "the program was ended from outside"));
        } else if (event instanceof Event.DonningAbandoned gone) {
            broken.add(
                    row(
                            each,
                            "donning " + gone.donning() + ", " + of.worn(gone.donning()),
                            gone.reason()));
        } else if (event instanceof Event.TrialInterrupted broke) {
            broken.add(row(each, "trial " + (broke.trial() + 1) + of(broke.place()), "broken off"));
        } else if (event instanceof Event.ExerciseInterrupted broke) {
            broken.add(row(each, exercise(broke.place(), broke.exercise()), "broken off"));
        } else if (event instanceof Event.ExerciseReopened again) {
            broken.add(row(each, exercise(again.place(), again.exercise()), "done again"));
        } else if (event instanceof Event.GateInterrupted broke) {
            broken.add(row(each, "a gate" + of(broke.place()), "broken off"));
        } else if (event instanceof Event.TimeDoubted doubted) {
            broken.add(row(each, "a time", doubted.why()));
        } else if (event instanceof Event.TraceMissing missing) {
            feeds.add(row(each, "pressure trace" + of(missing.place()), missing.why()));
        } else if (event instanceof Event.FeedFailed failed) {
            feeds.add(row(each, failed.feed(), failed.why()));
        } else if (event instanceof Event.FeedBack back) {
            feeds.add(row(each, back.feed(), back.words()));
        }
    }

    /** A halt ends with what the tester goes on with, or with the donning. */
    private String until(int from, Class<? extends Event> end) {
        Optional<Recorded> ended =
                of.events().subList(from + 1, of.events().size()).stream()
                        .filter(
                                each ->
                                        end.isInstance(each.event())
                                                || each.event() instanceof Event.DonningAbandoned
                                                || each.event() instanceof Event.SessionReopened)
                        .findFirst();
        return ended.map(each -> Clock.length(of.events().get(from).at(), each.at()))
                .orElse("to the end");
    }

    private List<Cell> row(Recorded when, String what, String why) {
        return Cell.texts(
                List.of(
                        of.hasTimes() ? Clock.second(opened, when.wall()) : "concealed",
                        what,
                        why));
    }

    private String exercise(Place place, int exercise) {
        String title =
                Procedure.step(of.state(), place) instanceof Step.Exercises step
                        ? " " + step.exercises().get(exercise).title()
                        : "";
        return "exercise " + (exercise + 1) + title + of(place);
    }

    private String of(Place place) {
        return place.donning() == 0
                ? ""
                : ", donning " + place.donning() + ", " + of.worn(place.donning());
    }
}
