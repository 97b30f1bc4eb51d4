package rigside.protocol;

import java.util.List;
import java.util.Optional;
import rigside.measure.Dimension;
import rigside.measure.Quantity;
import rigside.measure.Unit;
import rigside.yaml.Value;
import rigside.yaml.Words;

/** What an earlier answer must be so that a step can depend on it. */
final class OnlyIfRules {
    private OnlyIfRules() {}

    /**
     * The meaning of an {@code only-if}; absent, and noted, if it has none.
     *
     * @param applies when the step is done, as far as conditions decide
     * @param earlier the steps before it whose answers are known by then; empty if some of them
     *     could not be read, and then a missing answer is no problem
     */
    static Value<OnlyIf> read(
            Placed.Depends depends, Applies applies, Optional<List<Step>> earlier, Known known) {
        OnlyIfText text = depends.text();
        return known.answers
                .refer(text.answer())
                .then(id -> asked(text, id, applies, earlier, known))
                .then(id -> test(text, id, known))
                .map(test -> new OnlyIf(text.answer().get(), test, depends.back()));
    }

    private static Value<String> asked(
            OnlyIfText text,
            String id,
            Applies applies,
            Optional<List<Step>> earlier,
            Known known) {
        Value<String> answer = text.answer();
        boolean isRead = known.fields.containsKey(id) || known.checks.containsKey(id);
        if (known.facts.all().contains(id) || earlier.isEmpty() || !isRead) {
            return answer;
        }
        List<Step> asking =
                earlier.get().stream().filter(step -> step.asks().contains(id)).toList();
        return answer.must(
                        same -> !asking.isEmpty(),
                        same -> "the answer '" + id + "' is not known yet when this step comes",
                        "put this step after the one that asks it; a donning's answers are known"
                                + " in that donning only")
                .must(
                        same -> asking.stream().anyMatch(step -> meet(step, applies)),
                        same -> "the answer '" + id + "' is asked for other conditions only",
                        "let both steps be for the same conditions, or delete 'only-if'");
    }

    private static boolean meet(Step asking, Applies applies) {
        List<String> asked = asking.head().applies().conditions();
        return asked.isEmpty()
                || applies.conditions().isEmpty()
                || asked.stream().anyMatch(applies.conditions()::contains);
    }

    private static Value<OnlyIf.Test> test(OnlyIfText text, String id, Known known) {
        Step.Checklist.Item check = known.checks.get(id);
        if (check != null) {
            return check(text, id, check);
        }
        Field field = known.fields.get(id);
        return field == null
                ? text.limit().map(word -> new OnlyIf.Is(word))
                : field.answer().match(new OfAnswer(text, id));
    }

    /** Only a check that lets the list go on can be answered with no and other steps follow. */
    private static Value<OnlyIf.Test> check(OnlyIfText text, String id, Step.Checklist.Item check) {
        return isWord(text, id)
                .must(
                        word -> word.equals("yes") || word.equals("no"),
                        word -> "a check is answered with yes or no, not " + Words.quoted(word),
                        "write yes or no")
                .must(
                        word -> !word.equals("no") || check.ifNot() == IfNot.GO_ON,
                        word -> "no step comes after a no to the check '" + id + "'",
                        "write 'if-not: go-on' at that check, so that the steps go on after a no")
                .map(word -> new OnlyIf.Is(word));
    }

    private static Value<String> isWord(OnlyIfText text, String id) {
        return text.limit()
                .must(
                        word -> text.way().equals(OnlyIfText.IS),
                        word -> "'" + id + "' is answered with a word, not with a number",
                        "write 'is' instead of '" + text.way() + "'");
    }

    /** By what is answered. */
    private record OfAnswer(OnlyIfText text, String id)
            implements Field.Answer.Cases<Value<OnlyIf.Test>> {
        @Override
        public Value<OnlyIf.Test> numeric(Field.Numeric answer) {
            return limit(answer.unit().dimension()).map(this::than);
        }

        @Override
        public Value<OnlyIf.Test> choice(Field.Choice answer) {
            return isWord(text, id)
                    .then(
                            word ->
                                    text.limit()
                                            .must(
                                                    answer.options()::contains,
                                                    given ->
                                                            "'"
                                                                    + id
                                                                    + "' has no choice "
                                                                    + Words.quoted(given),
                                                    Words.suggestion(word, answer.options())))
                    .map(word -> new OnlyIf.Is(word));
        }

        @Override
        public Value<OnlyIf.Test> scale(Field.Scale answer) {
            String help =
                    "write a number from "
                            + answer.from()
                            + " to "
                            + answer.to()
                            + " with part of the scale "
                            + text.way()
                            + " it";
            return limit(Dimension.NUMBER)
                    .must(number -> number.unit() == Unit.ONE, this::isBeyond, help)
                    .must(number -> holdsSome(number.value(), answer), this::isBeyond, help)
                    .map(this::than);
        }

        @Override
        public Value<OnlyIf.Test> words(Field.Words answer) {
            return text.answer()
                    .wrong(
                            "'" + id + "' takes free words, and no step can depend on them",
                            "give it 'choices' instead of 'words'");
        }

        private Value<Quantity> limit(Dimension dimension) {
            Value<String> number =
                    text.limit()
                            .must(
                                    word -> !text.way().equals(OnlyIfText.IS),
                                    word -> "'" + id + "' is a number, not a word",
                                    "write 'above' or 'below' instead of 'is'");
            return QuantityText.quantity(number, dimension);
        }

        private OnlyIf.Test than(Quantity limit) {
            return text.way().equals(OnlyIfText.ABOVE)
                    ? new OnlyIf.Above(limit)
                    : new OnlyIf.Below(limit);
        }

        private boolean holdsSome(double limit, Field.Scale scale) {
            return text.way().equals(OnlyIfText.ABOVE)
                    ? limit >= scale.from() && limit < scale.to()
                    : limit > scale.from() && limit <= scale.to();
        }

        private String isBeyond(Quantity limit) {
            return "nothing on the scale of '" + id + "' is " + text.way() + " '" + limit + "'";
        }
    }
}
