package rigside.runner;

import java.util.ArrayList;
import java.util.List;
import rigside.protocol.Exercise;
import rigside.protocol.Field;
import rigside.protocol.IfNot;
import rigside.protocol.Protocol;
import rigside.protocol.Step;

/**
 * Where in a donning something can go wrong.
 *
 * @param step the position of the step, from 0
 * @param position the position in the step, from 0
 * @param what what is there
 */
record Spot(int step, int position, What what) {
    /** What can be spoilt. */
    enum What {
        CHECK,
        WAIT,
        EXERCISE,
        MASK,
        PRESSURE,
        TRIAL,
        FIELD
    }

    /**
     * Where a fault can strike in a donning of a condition, in order: of steps that depend on no
     * answer, since those are sure to be done, or else of all.
     */
    static List<Spot> of(Protocol protocol, String condition, Fault fault) {
        List<Spot> all = fault.of(of(protocol, condition));
        List<Spot> sure =
                all.stream()
                        .filter(
                                spot ->
                                        !protocol.donning()
                                                .get(spot.step())
                                                .head()
                                                .applies()
                                                .depends())
                        .toList();
        return sure.isEmpty() ? all : sure;
    }

    private static List<Spot> of(Protocol protocol, String condition) {
        List<Spot> spots = new ArrayList<>();
        List<Step> steps = protocol.donning();
        for (int at = 0; at < steps.size(); at++) {
            if (steps.get(at).appliesTo(condition)) {
                spots.addAll(steps.get(at).match(new InStep(protocol, at)));
            }
        }
        return List.copyOf(spots);
    }

    private record InStep(Protocol protocol, int step) implements Step.Cases<List<Spot>> {
        /** Checks that end the donning when they fail, and those that are kept as an outcome. */
        @Override
        public List<Spot> checklist(Step.Checklist list) {
            List<Spot> checks = new ArrayList<>();
            for (int item = 0; item < list.items().size(); item++) {
                IfNot ifNot = list.items().get(item).ifNot();
                if (ifNot == IfNot.ABANDON || ifNot == IfNot.GO_ON) {
                    checks.add(new Spot(step, item, What.CHECK));
                }
            }
            return checks;
        }

        @Override
        public List<Spot> form(Step.Form form) {
            return fields(form);
        }

        private List<Spot> fields(Step asking) {
            List<Spot> fields = new ArrayList<>();
            for (int at = 0; at < asking.fields().size(); at++) {
                Field field = asking.fields().get(at);
                if (new MeasureOf(protocol).typed(field.id()).isPresent()) {
                    fields.add(new Spot(step, at, What.FIELD));
                }
            }
            return fields;
        }

        @Override
        public List<Spot> countdown(Step.Countdown countdown) {
            return List.of(new Spot(step, 0, What.WAIT));
        }

        @Override
        public List<Spot> exercises(Step.Exercises exercises) {
            List<Spot> spots = new ArrayList<>();
            for (int at = 0; at < exercises.exercises().size(); at++) {
                Exercise exercise = exercises.exercises().get(at);
                spots.add(new Spot(step, at, What.EXERCISE));
                if (exercise.mask().isPresent()) {
                    spots.add(new Spot(step, at, What.MASK));
                }
                if (exercise.pressure().isPresent()) {
                    spots.add(new Spot(step, at, What.PRESSURE));
                }
            }
            return spots;
        }

        @Override
        public List<Spot> trials(Step.Trials trials) {
            List<Spot> spots = new ArrayList<>();
            for (int trial = 0; trial < trials.count(); trial++) {
                spots.add(new Spot(step, trial, What.TRIAL));
            }
            return spots;
        }

        @Override
        public List<Spot> observations(Step.Observations observations) {
            return fields(observations);
        }

        @Override
        public List<Spot> note(Step.Note note) {
            return List.of();
        }

        @Override
        public List<Spot> gates(Step.Gates gates) {
            return List.of();
        }
    }
}
