package rigside.protocol;

import java.util.List;
import java.util.function.ToDoubleFunction;
import java.util.stream.Stream;
import rigside.protocol.Step.Checklist;
import rigside.protocol.Step.Countdown;
import rigside.protocol.Step.Exercises;
import rigside.protocol.Step.Form;
import rigside.protocol.Step.Gates;
import rigside.protocol.Step.Note;
import rigside.protocol.Step.Observations;
import rigside.protocol.Step.Trials;

/**
 * How long things take at the bench, as far as a protocol tells. Times are in seconds. What has no
 * length of its own is reckoned with the allowances below: own judgement, no source. Steps that
 * depend on an earlier answer are reckoned as if they were done, so what is told here is what it
 * takes at most.
 */
public final class BenchTime {
    private static final double SECONDS_PER_CHECK = 8;
    private static final double SECONDS_PER_FIELD = 8;
    private static final double SECONDS_PER_NOTE = 8;

    /** Typing the readings of one exercise. */
    private static final double SECONDS_PER_READING = 8;

    private BenchTime() {}

    /**
     * One round: a donning of each condition with its trials. Where the mask stays on, what is done
     * after putting it on comes once, with whichever condition is first.
     */
    public static double round(Protocol protocol) {
        double rests =
                protocol.plan().trialSeconds().isPresent() ? 0 : restsBetweenSettings(protocol);
        return rests + round(protocol, id -> donning(protocol, id), BenchTime::withoutTrials);
    }

    /** The same as far as the steps of a round themselves declare it. */
    public static double declaredRound(Protocol protocol) {
        return restsBetweenSettings(protocol)
                + round(protocol, id -> declared(protocol, id), BenchTime::declared);
    }

    private static double round(
            Protocol protocol, ToDoubleFunction<String> donning, ToDoubleFunction<Step> step) {
        double left = protocol.plan().maskStaysOn() ? 1 - 1.0 / protocol.conditions().size() : 0;
        return protocol.conditions().stream()
                .mapToDouble(
                        each ->
                                donning.applyAsDouble(each.id())
                                        - left * puttingOn(protocol, each.id(), step))
                .sum();
    }

    /**
     * What is still to be rested in a round when the mask stays on and the trials of one setting
     * follow those of another: the mean over the orders they can come in.
     */
    private static double restsBetweenSettings(Protocol protocol) {
        if (!protocol.plan().maskStaysOn()) {
            return 0;
        }
        double rests = 0;
        for (Condition one : protocol.conditions()) {
            List<Step> before = protocol.donningOf(one.id());
            for (Condition two : protocol.conditions()) {
                List<Step> after =
                        protocol.donningOf(two.id()).stream()
                                .filter(step -> !step.head().applies().onlyAfterPuttingOn())
                                .toList();
                List<Step> both = Stream.concat(before.stream(), after.stream()).toList();
                rests +=
                        one.equals(two)
                                ? 0
                                : restsBetween(both) - restsBetween(before) - restsBetween(after);
            }
        }
        return rests / protocol.conditions().size();
    }

    private static double puttingOn(
            Protocol protocol, String conditionId, ToDoubleFunction<Step> seconds) {
        return sum(
                protocol,
                conditionId,
                step ->
                        step.head().applies().onlyAfterPuttingOn()
                                ? seconds.applyAsDouble(step)
                                : 0);
    }

    /** What comes before the first donning: all there is where nothing is worn. */
    public static double before(Protocol protocol) {
        return protocol.facts().size() * SECONDS_PER_FIELD + steps(protocol.before());
    }

    /**
     * One donning of a condition with its trials. What the plan states ({@code donning-takes} for
     * all but the trials, {@code trial-takes} for one trial with its rest) goes before what the
     * steps add up to.
     */
    public static double donning(Protocol protocol, String conditionId) {
        double rest =
                protocol.plan()
                        .donningSeconds()
                        .orElseGet(() -> sum(protocol, conditionId, BenchTime::withoutTrials));
        double trials = sum(protocol, conditionId, step -> trials(step, protocol.plan()));
        return rest
                + trials
                + (protocol.plan().trialSeconds().isPresent()
                        ? 0
                        : restsBetween(protocol.donningOf(conditionId)));
    }

    /**
     * The steps of a donning whose length is fixed, trials and what depends on an answer left out:
     * the least it can take.
     */
    static double fixed(Protocol protocol, String conditionId) {
        return sum(
                protocol,
                conditionId,
                step ->
                        step instanceof Trials || step.head().applies().depends()
                                ? 0
                                : declared(step));
    }

    /**
     * What the steps of a donning themselves declare: countdowns, exercises, gates, lead-ins and
     * the rests that have to be waited for. Nothing of it is an allowance.
     */
    public static double declared(Protocol protocol, String conditionId) {
        return declared(protocol.donningOf(conditionId));
    }

    /**
     * The same of steps one after the other. A rest counts from the last inhalation on, so what is
     * timed between two steps of trials is part of the rest before the second.
     */
    public static double declared(List<Step> steps) {
        return restsBetween(steps) + steps.stream().mapToDouble(BenchTime::declared).sum();
    }

    /** What is still to be rested where one step of trials follows another. */
    private static double restsBetween(List<Step> steps) {
        double rests = 0;
        double sincePull = Double.POSITIVE_INFINITY;
        for (Step step : steps) {
            if (step instanceof Trials trials) {
                rests += Math.max(0, trials.restSeconds() - sincePull);
                sincePull = 0;
            } else {
                sincePull += declared(step);
            }
        }
        return rests;
    }

    /** The same of one step by itself. */
    public static double declared(Step step) {
        if (step instanceof Countdown countdown) {
            return countdown.seconds();
        }
        if (step instanceof Gates gates) {
            return lengths(gates);
        }
        if (step instanceof Trials trials) {
            return trials.count() * trials.leadInSeconds()
                    + (trials.count() - 1) * trials.restSeconds();
        }
        return step instanceof Exercises exercises ? lengths(exercises) : 0;
    }

    /** Steps outside donnings, or without trials, with the allowances for what is not timed. */
    public static double steps(List<Step> steps) {
        return steps.stream().mapToDouble(BenchTime::withoutTrials).sum();
    }

    /** A length of time as people say it: {@code 45 s}, {@code 24 min}, {@code 1 h 5 min}. */
    public static String words(double seconds) {
        if (seconds < 90) {
            return Math.round(seconds) + " s";
        }
        long minutes = Math.round(seconds / 60);
        return minutes < 60 ? minutes + " min" : minutes / 60 + " h " + minutes % 60 + " min";
    }

    private static double sum(
            Protocol protocol, String conditionId, ToDoubleFunction<Step> seconds) {
        return protocol.donningOf(conditionId).stream().mapToDouble(seconds).sum();
    }

    private static double lengths(Exercises step) {
        return step.exercises().stream().mapToDouble(Exercise::seconds).sum();
    }

    private static double lengths(Gates step) {
        return step.gates().stream().mapToDouble(Gate::seconds).sum();
    }

    /** A rest stands between trials, so that the last one has none. */
    private static double trials(Step step, Plan plan) {
        if (!(step instanceof Trials trials)) {
            return 0;
        }
        if (plan.trialSeconds().isPresent()) {
            return trials.count() * plan.trialSeconds().getAsDouble();
        }
        // Times spread in ratios, so the middle of what is plausible is the geometric one.
        double breath = Math.sqrt(trials.shortest() * trials.longest());
        return trials.count() * (trials.leadInSeconds() + breath)
                + (trials.count() - 1) * trials.restSeconds();
    }

    private static double withoutTrials(Step step) {
        return step.match(
                new Step.Cases<Double>() {
                    @Override
                    public Double checklist(Checklist step) {
                        return step.items().size() * SECONDS_PER_CHECK;
                    }

                    @Override
                    public Double form(Form step) {
                        return step.fields().size() * SECONDS_PER_FIELD;
                    }

                    @Override
                    public Double countdown(Countdown step) {
                        return step.seconds();
                    }

                    @Override
                    public Double exercises(Exercises step) {
                        return lengths(step) + step.exercises().size() * SECONDS_PER_READING;
                    }

                    @Override
                    public Double trials(Trials step) {
                        return 0.0;
                    }

                    @Override
                    public Double observations(Observations step) {
                        return step.fields().size() * SECONDS_PER_FIELD;
                    }

                    @Override
                    public Double note(Note step) {
                        return SECONDS_PER_NOTE;
                    }

                    @Override
                    public Double gates(Gates step) {
                        return lengths(step) + step.gates().size() * SECONDS_PER_READING;
                    }
                });
    }
}
