package rigside.screen;

import java.util.List;
import java.util.Optional;
import rigside.analysis.SlotWords;
import rigside.measure.Numbers;
import rigside.measure.Unit;
import rigside.protocol.Field;
import rigside.protocol.Step;
import rigside.session.Activity;
import rigside.session.Entry;
import rigside.session.Event;
import rigside.session.Procedure;
import rigside.session.Slot;
import rigside.session.Value;

/** A gap that waits to be filled, and the questions about what was put there. */
record QuestionPicture(Scene scene, Slot slot) {

    List<Line> asked() {
        return slot instanceof Slot.Field field
                ? field(Procedure.field(scene.state(), field))
                : reading();
    }

    List<Line> doubted(Activity.Doubting activity) {
        return Scene.stack(
                scene.strong(words()),
                value(activity.value()),
                scene.strong(Texts.sentence(activity.why()) + ". Is it right?"),
                scene.wrapped("[y] take it as it is. [n] type it again."));
    }

    /** How a pull was held is judged before its time is seen. */
    List<Line> voidAsked(Activity.VoidAsked activity) {
        Optional<Entry> entry = scene.state().captured().entry(activity.entry());
        boolean traced = entry.flatMap(Entry::pull).isPresent();
        boolean out =
                !(slot instanceof Slot.Trial)
                        || (entry.filter(scene.view().shown()::isOut).isPresent() && !traced);
        return Scene.stack(
                scene.strong(words() + ", entry " + activity.entry()),
                out ? entry.map(each -> value(each.value())).orElse(List.of()) : List.of(),
                scene.strong(
                        "It looks implausible: " + activity.why() + ". Is it to be struck out?"),
                scene.wrapped(
                        "[y] strike it out; it is kept with this reason, and done again."
                                + " [n] keep it."));
    }

    private List<Line> field(Field field) {
        List<Line> ask = scene.strong(field.ask());
        return Scene.stack(
                Line.stacked(List.of(progress(field)), ask),
                input(field.answer() instanceof Field.Numeric numeric ? numeric.unit() : Unit.ONE),
                AnswerWords.of(field).stream()
                        .flatMap(line -> Wrap.lines(line, scene.columns() - 2).stream())
                        .map(line -> line.indented(2))
                        .toList());
    }

    private Line progress(Field field) {
        Step step = Procedure.step(scene.state(), slot.place());
        List<Field> fields = step.fields();
        return Line.of(
                Tone.QUIET, "question " + (fields.indexOf(field) + 1) + " of " + fields.size());
    }

    private List<Line> reading() {
        if (slot instanceof Slot.Gate gate) {
            Step.Gates step = scene.step(gate.place(), Step.Gates.class);
            return Scene.stack(
                    scene.strong(words()),
                    input(step.unit()),
                    LiveLines.amiss(scene),
                    GatePicture.of(scene, gate.place(), gate.gate()).asked(),
                    invented());
        }
        if (slot instanceof Slot.Trial trial) {
            return TrialPicture.of(scene, trial.place(), trial.trial()).typed(input(Unit.SECOND));
        }
        Step.Exercises step = scene.step(slot.place(), Step.Exercises.class);
        Unit unit = slot instanceof Slot.Pressure ? step.pressureUnit() : step.unit();
        List<Line> ask = scene.strong(words());
        List<Line> asked = Scene.stack(ask, input(unit), LiveLines.amiss(scene), invented());
        return Scene.stack(
                asked,
                FitList.of(scene, slot.place(), exercise(), scene.rows() - asked.size() - 1));
    }

    private List<Line> invented() {
        Event.SessionOpened opened = scene.state().opening().orElseThrow().event();
        return opened.simulated()
                ? scene.wrapped("The simulated rig answers by itself.")
                : List.of();
    }

    private int exercise() {
        return slot instanceof Slot.Ambient ambient
                ? ambient.exercise()
                : slot instanceof Slot.Mask mask
                        ? mask.exercise()
                        : slot instanceof Slot.Pressure pressure ? pressure.exercise() : 0;
    }

    private String words() {
        return Texts.sentence(SlotWords.of(scene.state(), slot));
    }

    /** The typed line; while the prompt has the keyboard nothing is typed here. */
    private List<Line> input(Unit unit) {
        String typed = scene.view().prompt().isPresent() ? "" : scene.view().typed();
        Line line =
                Footer.typed(
                        Line.of(Tone.STRONG, scene.signs().here() + " "),
                        typed,
                        scene.columns() - unit.symbol().length() - 2);
        return Scene.stack(List.of(line.plus(Tone.QUIET, " " + unit.symbol())), large(typed));
    }

    /** What is typed, to be checked from two metres; the question is known by then. */
    private List<Line> large(String typed) {
        boolean drawn = scene.isTall() && Big.fitting(typed, scene.lesser(), scene.columns()) > 0;
        return drawn ? scene.lesser(typed) : List.of();
    }

    private List<Line> value(Value value) {
        return value instanceof Value.Measured measured
                ? scene.big(
                        Numbers.plain(measured.quantity().value()),
                        measured.quantity().unit().symbol(),
                        scene.columns())
                : scene.strong(value.toString());
    }
}
