package rigside.screen;

import java.util.ArrayList;
import java.util.List;
import rigside.protocol.Step;
import rigside.session.Activity;
import rigside.session.Procedure;
import rigside.session.Stage;

/** The bottom of every picture of a session: safety, the prompt or a message, and the keys. */
record Footer(View view, int columns) {

    private static final String UNWELL =
            "Dizzy or unwell? Stop at once: [Esc], mask off, sit down.";

    private static final List<KeyLine.Named> OF_REHEARSAL =
            List.of(
                    new KeyLine.Named("q", ""),
                    new KeyLine.Named("Esc", "stop the rehearsal; at the bench:"));

    static List<Line> of(View view, int columns) {
        Footer footer = new Footer(view, columns);
        List<Line> lines = new ArrayList<>();
        if (isBreathing(view)) {
            lines.add(Line.of(Tone.WARN, " ! " + UNWELL));
        }
        lines.add(Line.of(Tone.QUIET, view.glyphs().light().repeat(columns)));
        lines.addAll(footer.said());
        KeyLine.lines(keys(view), columns - 2).forEach(line -> lines.add(line.indented(1)));
        return List.copyOf(lines);
    }

    /** A rehearsal presses its keys itself, so those that stop it go before them. */
    private static List<KeyLine.Named> keys(View view) {
        List<KeyLine.Named> keys = new ArrayList<>(view.rehearsed() ? OF_REHEARSAL : List.of());
        Keys.of(view).forEach(key -> keys.add(new KeyLine.Named(key.label(), key.help())));
        return keys;
    }

    /** Whether the tester breathes through the mask against a clock now. */
    static boolean isBreathing(View view) {
        if (view.state().isFromPaper()) {
            return false;
        }
        Activity activity = view.state().activity();
        boolean timed =
                activity instanceof Activity.Exercising
                        || activity instanceof Activity.TrialReady
                        || activity instanceof Activity.LeadIn
                        || activity instanceof Activity.Pulling
                        || activity instanceof Activity.Tracing
                        || activity instanceof Activity.HoldAsked
                        || activity instanceof Activity.VoidAsked
                        || activity instanceof Activity.Resting;
        boolean inMask =
                activity instanceof Activity.Waiting waiting
                        && waiting.place().stage() == Stage.DONNING;
        boolean between =
                activity instanceof Activity.Filling filling
                        && filling.slot().place().stage() == Stage.DONNING
                        && Procedure.step(view.state(), filling.slot().place())
                                instanceof Step.Exercises;
        return timed || inMask || between;
    }

    /** One line is always kept for what is said, so that nothing jumps. */
    private List<Line> said() {
        if (view.prompt().isPresent()) {
            Line asked = Line.of(Tone.STRONG, " " + view.prompt().get().words() + ": ");
            return Line.stacked(
                    amends(view.prompt().get()) ? message() : List.of(),
                    List.of(typed(asked, view.typed(), columns - 1)));
        }
        List<Line> lines = message();
        return lines.isEmpty() ? List.of(Line.BLANK) : lines;
    }

    /** An entry is amended beside what stands there. */
    private static boolean amends(View.Prompt prompt) {
        return prompt == View.Prompt.AMEND_VALUE || prompt == View.Prompt.AMEND_REASON;
    }

    private List<Line> message() {
        List<Line> lines =
                view.message()
                        .map(
                                message ->
                                        Wrap.hanging(
                                                Line.of(Tone.WARN, " > "),
                                                Tone.STRONG,
                                                message,
                                                columns - 1))
                        .orElse(List.of());
        return lines.subList(0, Math.min(2, lines.size()));
    }

    /** Text being typed, its end always in sight, with a cursor. */
    static Line typed(Line asked, String typed, int columns) {
        int room = Math.max(4, columns - asked.width() - 1);
        String shown = Clean.text(typed);
        while (Clean.width(shown) > room) {
            shown = shown.substring(1);
        }
        return asked.plus(shown).plus(Tone.INVERSE, "_");
    }
}
