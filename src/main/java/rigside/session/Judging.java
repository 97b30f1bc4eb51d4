package rigside.session;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rigside.measure.Numbers;
import rigside.measure.Quantity;
import rigside.measure.TracedInhalation;
import rigside.measure.Unit;
import rigside.protocol.Plan;
import rigside.protocol.Step;

/** What a pressure trace leads to, and which times of inhalations are doubted. */
record Judging(State state) {

    /**
     * A pull may begin or end so long before or after its press, or {@link #FAR_SHARE} of its
     * length where that is more: people are late, and a wrong press is later. Ours, no source.
     */
    private static final double FAR_SECONDS = 1;

    /** As {@link #FAR_SECONDS}, as a share of the pull. */
    private static final double FAR_SHARE = 0.2;

    /** The time at the target pressure is what counts; nobody is asked whether it was held. */
    Response traced(TracedInhalation inhalation) {
        if (!(state.activity() instanceof Activity.Tracing tracing)) {
            return Response.nothing();
        }
        double seconds = inhalation.equivalentSeconds(trials(tracing.place()).target().si());
        int number = state.captured().entries().size() + 1;
        Slot slot = new Slot.Trial(tracing.place(), tracing.trial());
        List<Event> events = new ArrayList<>();
        events.add(new Event.EntryCaptured(number, slot, Respond.time(seconds), read()));
        events.add(new Event.EntryTraced(number, new Trace.Pull(tracing.seconds(), inhalation)));
        doubt(tracing.place(), seconds, Optional.of(new Trace.Pull(tracing.seconds(), inhalation)))
                .ifPresent(why -> events.add(new Event.VoidOffered(number, why)));
        return new Response.Happened(events);
    }

    Response notTraced(String why) {
        return state.activity() instanceof Activity.Tracing tracing
                ? Response.of(new Event.TraceMissing(tracing.place(), tracing.trial(), why))
                : Response.nothing();
    }

    /** The median of the peaks is the exercise's pressure. */
    Response breathed(Slot.Pressure slot, Trace.Breaths breaths) {
        boolean awaited =
                state.activity() instanceof Activity.Filling filling && filling.slot().equals(slot);
        if (!awaited) {
            return Response.nothing();
        }
        Unit unit = ((Step.Exercises) Procedure.step(state, slot.place())).pressureUnit();
        double peak = unit.fromSi(breaths.medians().peakInhalationPa());
        int number = state.captured().entries().size() + 1;
        return Response.of(
                new Event.EntryCaptured(
                        number, slot, new Value.Measured(new Quantity(peak, unit)), read()),
                new Event.EntryTraced(number, breaths));
    }

    private Source read() {
        return state.opening().orElseThrow().event().simulated()
                ? Source.SIMULATED
                : Source.INSTRUMENT;
    }

    /**
     * Why the time of an inhalation is offered for voiding, in words.
     *
     * @param seconds its time
     * @param trace what a pressure trace shows of it, if there is one
     */
    Optional<String> doubt(Place place, double seconds, Optional<Trace.Pull> trace) {
        Step.Trials step = trials(place);
        List<String> whys = new ArrayList<>();
        state.doing().doubt().ifPresent(whys::add);
        trace.ifPresent(pull -> farFromPresses(pull, whys));
        trace.ifPresent(pull -> unsteady(step, pull.inhalation(), whys));
        implausible(step, seconds).ifPresent(whys::add);
        return whys.isEmpty() ? Optional.empty() : Optional.of(String.join("; ", whys));
    }

    /** Why a time is not plausible, in words that follow "is". */
    static Optional<String> implausible(Step.Trials step, double seconds) {
        if (seconds < step.shortest()) {
            return Optional.of(
                    "shorter than the shortest plausible " + Typing.seconds(step.shortest()));
        }
        return seconds > step.longest()
                ? Optional.of("longer than the longest plausible " + Typing.seconds(step.longest()))
                : Optional.empty();
    }

    /** Such a pull may be another breath than the one that was meant. */
    private void farFromPresses(Trace.Pull pull, List<String> whys) {
        TracedInhalation seen = pull.inhalation();
        double far = Math.max(FAR_SECONDS, FAR_SHARE * seen.seconds());
        far("the pull began ", seen.startSeconds(), "the first press", far, whys);
        far("the pull ended ", seen.endSeconds() - pull.pressedSeconds(), "the second", far, whys);
    }

    /** Without a number where the clock is concealed. */
    private void far(String what, double late, String press, double far, List<String> whys) {
        if (Math.abs(late) > far) {
            String howFar = isRough() ? "long" : Typing.seconds(Numbers.rounded(Math.abs(late), 2));
            whys.add(what + howFar + (late > 0 ? " after " : " before ") + press);
        }
    }

    /**
     * Only roughly where the clock is concealed: nothing here may then tell how long the pull was.
     */
    private void unsteady(Step.Trials step, TracedInhalation pull, List<String> whys) {
        if (pull.pulls() > 1) {
            whys.add("the pressure shows " + pull.pulls() + " breaths in, not one");
        }
        if (step.tolerance().isEmpty()) {
            return;
        }
        double tolerance = step.tolerance().getAsDouble();
        double target = step.target().si();
        if (Math.abs(pull.meanPa() - target) > tolerance * target) {
            whys.add(
                    "the mean pressure was "
                            + mean(step.target().unit(), pull.meanPa())
                            + ", not within "
                            + percent(tolerance)
                            + " of "
                            + step.target());
        } else if (pull.withinShare() < step.heldShare()) {
            whys.add(
                    "the pressure was within "
                            + percent(tolerance)
                            + " of "
                            + step.target()
                            + " for "
                            + share(pull.withinShare())
                            + " of the pull only");
        }
    }

    /** While a pull is judged its donning is open, so every other word conceals it. */
    private boolean isRough() {
        return state.protocol().plan().trialClock() != Plan.Until.SHOWN;
    }

    private String mean(Unit unit, double pascals) {
        return isRough()
                ? "about " + Roughly.mean(pascals, unit)
                : new Quantity(Numbers.rounded(unit.fromSi(pascals), 3), unit).toString();
    }

    private String share(double share) {
        return isRough() ? "about " + Roughly.percent(share) + " %" : percent(share);
    }

    private static String percent(double share) {
        return Math.round(100 * share) + " %";
    }

    private Step.Trials trials(Place place) {
        return (Step.Trials) Procedure.step(state, place);
    }
}
