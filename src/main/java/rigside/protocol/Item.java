package rigside.protocol;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rigside.yaml.Value;

/** One entry of a part of the procedure, or of a group, as it is written. */
sealed interface Item {
    /**
     * A step.
     *
     * @param step as read; what it depends on is not in it yet
     * @param feeds the measures it feeds, at their places
     * @param onlyIf the earlier answer it depends on
     */
    record Written(Step step, List<Value<String>> feeds, Optional<OnlyIfText> onlyIf)
            implements Item {
        public Written {
            feeds = List.copyOf(feeds);
        }
    }

    /**
     * The use of a group.
     *
     * @param group its id
     * @param times how often it is done, one after the other
     * @param onlyFor the conditions it is for; absent for all
     * @param onlyIf the earlier answer it depends on
     */
    record Use(
            Value<String> group,
            int times,
            Value<List<String>> onlyFor,
            Optional<OnlyIfText> onlyIf)
            implements Item {}

    /** What every kind of step says, and the measures it turns out to feed. */
    record Common(
            Value<String> title,
            Value<String> say,
            Value<List<String>> onlyFor,
            Value<StepReader.After> onlyAfter,
            Value<OnlyIfText> onlyIf,
            List<Value<String>> feeds) {
        Common(
                Value<String> title,
                Value<String> say,
                Value<List<String>> onlyFor,
                Value<StepReader.After> onlyAfter,
                Value<OnlyIfText> onlyIf) {
            this(title, say, onlyFor, onlyAfter, onlyIf, new ArrayList<>());
        }

        /** Notes that the step feeds a measure; one that could not be read is left out. */
        void feed(Value<String> measure) {
            if (measure.isPresent()) {
                feeds.add(measure);
            }
        }

        /** Once all was read. */
        Step.Head head() {
            Applies applies =
                    new Applies(onlyFor.orElse(List.of()), onlyAfter.isPresent(), List.of());
            return new Step.Head(title.get(), say.orElse(""), applies);
        }

        Item written(Step step) {
            return new Written(step, feeds, onlyIf.toOptional());
        }
    }
}
