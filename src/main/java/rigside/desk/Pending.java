package rigside.desk;

import java.io.IOException;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Executor;
import java.util.function.Supplier;
import rigside.bench.Wall;
import rigside.protocol.Protocol;
import rigside.runner.Assumed;
import rigside.screen.HomeView.Review;

/**
 * A page that is worked at beside the drawing.
 *
 * @param work gives the page
 * @param doing how far it is, as a page
 * @param stop is run when nobody waits for it any more
 */
record Pending(Aside<Review> work, Supplier<Review> doing, Runnable stop) {
    private static final String INVENTED =
            "A rehearsal: every value is invented, and nothing of it is kept.";

    /** What to think over in a sound file, and what its plan can be expected to bring. */
    static Pending check(ProtocolFile sound) {
        String title = sound.protocol().orElseThrow().title();
        return new Pending(
                Aside.begin(Aside.THREADS, () -> ProtocolPages.checked(sound)),
                () -> new Review(title, List.of("playing the plan some 100 000 times ...")),
                () -> {});
    }

    /** A rehearsal of a sound file, read through like any closed session. */
    static Pending rehearsal(ProtocolFile sound, String version) {
        Protocol protocol = sound.protocol().orElseThrow();
        TrialRun run =
                new TrialRun(
                        protocol,
                        Openings.rehearsed(
                                        sound,
                                        protocol,
                                        Optional.empty(),
                                        Assumed.NOTHING,
                                        Openings.anySeed(),
                                        version)
                                .opening(),
                        Wall.now());
        return rehearsal(run, protocol.title(), Aside.THREADS);
    }

    static Pending rehearsal(TrialRun run, String title, Executor threads) {
        return new Pending(
                Aside.begin(threads, () -> page(run, title)),
                () -> new Review(title, List.of(run.progress() + " ...")),
                run::leave);
    }

    private static Review page(TrialRun run, String title) {
        try {
            TrialRun.Played played = run.play();
            return Reviews.of(played.state(), played.events(), List.of(INVENTED));
        } catch (IOException ended) {
            return new Review(title, List.of(ended.getMessage()));
        }
    }

    Optional<Review> found() {
        return work.found();
    }

    Review progress() {
        return doing.get();
    }

    void leave() {
        stop.run();
    }
}
