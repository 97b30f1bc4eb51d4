package rigside.bench;

import java.util.Optional;
import java.util.OptionalDouble;
import rigside.rig.Signal;
import rigside.runner.Runner;
import rigside.screen.Drawing;
import rigside.screen.SessionScreen;
import rigside.screen.View;

/** The pictures of a session on a console: only what changed since the last one is drawn. */
final class Painting {
    private final Console console;

    /** What is on the screen, if that is known. */
    private Optional<Drawing> drawn = Optional.empty();

    Painting(Console console) {
        this.console = console;
    }

    /** All that a picture depends on but the size. */
    static View view(Runner runner, Ui ui, long now, View.Style style) {
        return ui.view(runner.state(), runner.shown(), now, style)
                .with(gauge(runner))
                .with(runner.live(now));
    }

    /** Suction is what the tester feels: the pressure with its sign turned round. */
    static Optional<View.Gauge> gauge(Runner runner) {
        return runner.now(Signal.PRESSURE)
                .map(now -> now.si().stream().map(pressure -> -pressure).boxed().findFirst())
                .map(suction -> suction.map(OptionalDouble::of).orElse(OptionalDouble.empty()))
                .map(View.Gauge::new);
    }

    /** With how much of it there is room for. */
    View sized(View view) {
        return view.with(SessionScreen.seen(view, console.size()));
    }

    void draw(View view) {
        Drawing next = SessionScreen.of(view, console.size());
        if (console.isStale()) {
            drawn = Optional.empty();
            console.draw(graphics -> SessionScreen.draw(graphics, view));
        } else if (!drawn.equals(Optional.of(next))) {
            Optional<Drawing> there = drawn;
            drawn = Optional.of(next);
            there.ifPresentOrElse(
                    before -> console.drawOver(graphics -> next.over(before, graphics)),
                    () -> console.draw(next::on));
        }
    }
}
