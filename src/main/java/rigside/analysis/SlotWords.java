package rigside.analysis;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.IntStream;
import rigside.protocol.Gate;
import rigside.protocol.Step;
import rigside.session.Donning;
import rigside.session.Procedure;
import rigside.session.Slot;
import rigside.session.State;

/** What a gap asks for, in words. */
public record SlotWords(State state) implements Slot.Cases<String> {

    /** The words by themselves. */
    public static String of(State state, Slot slot) {
        return slot.match(new SlotWords(state));
    }

    /** The words within a sentence: beginning small, without a mark at their end. */
    public static String within(State state, Slot slot) {
        String words = of(state, slot).strip().replaceAll("[.:]$", "");
        boolean shouted = words.length() < 2 || !Character.isLowerCase(words.charAt(1));
        return shouted
                ? words
                : words.substring(0, 1).toLowerCase(Locale.ROOT) + words.substring(1);
    }

    @Override
    public String field(Slot.Field slot) {
        List<Integer> asking = alike(slot, step -> step.asks().contains(slot.id()));
        String which =
                " (" + (asking.indexOf(slot.place().step()) + 1) + " of " + asking.size() + ")";
        return Procedure.field(state, slot).ask() + (asking.size() > 1 ? which : "");
    }

    @Override
    public String ambient(Slot.Ambient slot) {
        int windows = exercises(slot).exercises().get(slot.exercise()).ambient().size();
        String which = windows > 1 ? " " + (slot.window() + 1) + " of " + windows : "";
        return "ambient concentration" + which + ", " + exercise(slot, slot.exercise());
    }

    @Override
    public String mask(Slot.Mask slot) {
        return "concentration in the mask, " + exercise(slot, slot.exercise());
    }

    @Override
    public String pressure(Slot.Pressure slot) {
        return "peak inhalation pressure, " + exercise(slot, slot.exercise());
    }

    @Override
    public String trial(Slot.Trial slot) {
        return "time of trial " + (slot.trial() + 1) + of(slot, Step.Trials.class);
    }

    @Override
    public String gate(Slot.Gate slot) {
        Step.Gates step = (Step.Gates) Procedure.step(state, slot.place());
        return gate(step.gates().get(slot.gate()).kind()) + of(slot, Step.Gates.class);
    }

    private static String gate(Gate.Kind kind) {
        return switch (kind) {
            case ZERO -> "gate: concentration of filtered air";
            case AMBIENT -> "gate: ambient concentration";
        };
    }

    private String exercise(Slot slot, int at) {
        return "exercise " + (at + 1) + " " + exercises(slot).exercises().get(at).title();
    }

    private Step.Exercises exercises(Slot slot) {
        return (Step.Exercises) Procedure.step(state, slot.place());
    }

    /** The step's title where there are more steps of its kind. */
    private String of(Slot slot, Class<? extends Step> kind) {
        return alike(slot, kind::isInstance).size() > 1
                ? ", " + Procedure.step(state, slot.place()).title()
                : "";
    }

    /** The positions of the steps of the slot's part, for what is worn, that are alike. */
    private List<Integer> alike(Slot slot, Predicate<Step> alike) {
        List<Step> steps = Procedure.steps(state.protocol(), slot.place().stage());
        Optional<Donning> worn = state.course().donning(slot.place().donning());
        return IntStream.range(0, steps.size())
                .filter(
                        at ->
                                worn.stream()
                                        .allMatch(
                                                each -> steps.get(at).appliesTo(each.condition())))
                .filter(at -> alike.test(steps.get(at)))
                .boxed()
                .toList();
    }
}
