package rigside.protocol;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import rigside.measure.Calculation;
import rigside.measure.Dimension;
import rigside.measure.Powers;
import rigside.measure.Unit;
import rigside.yaml.Value;

/**
 * Rules between a calculated measure and what it is calculated from.
 *
 * @param steps those of the donning
 * @param before those before the first donning
 */
record CalculatedRules(Known known, List<Step> before, List<Step> steps) {

    void check() {
        for (CalculatedText text : known.calculated) {
            if (text.kind().isPresent() && text.of().get().stream().allMatch(this::isNumber)) {
                check(text, text.function().get(), text.of().get());
            }
        }
    }

    /** Whether an id is that of a number that can be known; noted if not. */
    private boolean isNumber(Value<String> of) {
        Value<String> id = known.answers.refer(of);
        String word = id.orElse("");
        boolean isRead = known.fields.containsKey(word) || known.checks.containsKey(word);
        return isRead
                && id.must(each -> unit(each).isPresent(), CalculatedRules::noNumber, NUMBERS)
                        .must(
                                each -> known.facts.all().contains(each) || isAsked(each),
                                each ->
                                        "'"
                                                + each
                                                + "' is asked neither in a donning nor before"
                                                + " the first",
                                "name a fact, or a field of a step under 'before' or 'donning'")
                        .isPresent();
    }

    private static final String NUMBERS = "name fields with a 'unit' or a 'scale'";

    private static String noNumber(String id) {
        return "'" + id + "' is no number";
    }

    private boolean isAsked(String id) {
        return asking(before, id).size() + asking(steps, id).size() > 0;
    }

    private void check(CalculatedText text, Calculation how, List<Value<String>> of) {
        List<String> ids = of.stream().map(Value::get).toList();
        if (ids.stream().allMatch(id -> asking(steps, id).isEmpty())) {
            text.of()
                    .wrong(
                            "nothing that 'of' names is asked in a donning, so all donnings would"
                                    + " have the same value",
                            "name at least one field of a step under 'donning'");
        } else if (how.takesTwo() && ids.size() != 2) {
            text.of()
                    .wrong(
                            article(how) + " takes two, but 'of' names " + ids.size(),
                            how == Calculation.RATIO
                                    ? "name what is divided, then what it is divided by"
                                    : "name what is taken from, then what is taken away");
        } else if (values(ids) < 2) {
            text.of()
                    .wrong(
                            "there is only one value for " + article(how),
                            "write 'kind: typed-number' with 'field: "
                                    + ids.get(0)
                                    + "' in the place of 'function' and 'of', ask it several times"
                                    + " in a group with 'times', or name more");
        } else if (mustBeAskedOnce(how, of) && haveTrueZeros(how, of)) {
            dimension(text, how, of);
            isAskedForAll(text, of);
        }
    }

    /** Where each number has its own part in the result it must be one number. */
    private boolean mustBeAskedOnce(Calculation how, List<Value<String>> of) {
        boolean each = how.takesTwo() || !how.keepsDimension();
        return of.stream()
                .map(
                        id ->
                                id.must(
                                        word -> !each || most(word) <= 1,
                                        word ->
                                                "'"
                                                        + word
                                                        + "' is asked several times, and "
                                                        + article(how)
                                                        + " takes one value of each",
                                        "ask it once in a donning, outside of a group with"
                                                + " 'times'; to repeat the reading compare the"
                                                + " mean of each by itself"))
                .toList()
                .stream()
                .allMatch(Value::isPresent);
    }

    private boolean haveTrueZeros(Calculation how, List<Value<String>> of) {
        return of.stream()
                .map(
                        id ->
                                id.must(
                                        word ->
                                                !how.needsTrueZero()
                                                        || unit(word).get().hasTrueZero(),
                                        word ->
                                                "'"
                                                        + word
                                                        + "' is in "
                                                        + unit(word).get().symbol()
                                                        + ", whose zero is not nothing, so "
                                                        + article(how)
                                                        + " of it says nothing",
                                        "ask for it in K, or use another function"))
                .toList()
                .stream()
                .allMatch(Value::isPresent);
    }

    private void dimension(CalculatedText text, Calculation how, List<Value<String>> of) {
        List<Dimension> dimensions =
                of.stream().map(id -> unit(id.get()).get().dimension()).toList();
        if (how.keepsDimension() && dimensions.stream().distinct().count() > 1) {
            int other = firstOther(dimensions);
            of.get(other)
                    .wrong(
                            "'"
                                    + of.get(other).get()
                                    + "' is "
                                    + dimensions.get(other).words()
                                    + ", but '"
                                    + of.get(0).get()
                                    + "' is "
                                    + dimensions.get(0).words(),
                            article(how) + " needs numbers of one kind");
            return;
        }
        Powers made = how.powers(dimensions.stream().map(Dimension::powers).toList());
        text.unit()
                .must(
                        unit -> unit.dimension().powers().equals(made),
                        unit ->
                                "'unit' is '"
                                        + unit.symbol()
                                        + "', "
                                        + unit.dimension().words()
                                        + ", must be "
                                        + words(made)
                                        + ": "
                                        + made(how, dimensions),
                        Dimension.of(made)
                                .map(CalculatedRules::symbols)
                                .orElse("no unit here is of that kind; calculate something else"))
                .must(
                        unit -> !how.needsTrueZero() || unit.hasTrueZero(),
                        unit -> "'unit' is '" + unit.symbol() + "', whose zero is not nothing",
                        "write K");
    }

    private static int firstOther(List<Dimension> dimensions) {
        int at = 0;
        while (dimensions.get(at) == dimensions.get(0)) {
            at++;
        }
        return at;
    }

    private static String symbols(Dimension dimension) {
        return dimension == Dimension.NUMBER
                ? "write none, or %"
                : "write one of " + String.join(", ", Unit.symbols(dimension));
    }

    private static String words(Powers powers) {
        return Dimension.of(powers).map(Dimension::words).orElse(powers.toString());
    }

    private static String made(Calculation how, List<Dimension> dimensions) {
        String between = how == Calculation.RATIO ? " over " : " times ";
        return how.keepsDimension()
                ? article(how) + " of " + dimensions.get(0).words()
                : "it is "
                        + dimensions.stream()
                                .map(Dimension::words)
                                .collect(Collectors.joining(between));
    }

    /** What is compared needs its numbers whatever is worn. */
    private void isAskedForAll(CalculatedText text, List<Value<String>> of) {
        for (Value<String> id : of) {
            boolean isOfSession =
                    known.facts.all().contains(id.get()) || !asking(before, id.get()).isEmpty();
            for (String condition : known.conditions.all()) {
                boolean asked =
                        asking(steps, id.get()).stream()
                                .anyMatch(step -> step.appliesTo(condition));
                if (!isOfSession && !asked && known.compared.contains(text.measure().orElse(""))) {
                    id.wrong(
                            "'" + id.get() + "' is not asked for the condition '" + condition + "'",
                            "add the condition to 'only-for' of the step, or delete that line");
                    break;
                }
            }
        }
    }

    private Optional<Unit> unit(String id) {
        return Optional.ofNullable(known.fields.get(id)).flatMap(Field::unit);
    }

    /** How many values of all ids together a donning can bring. */
    private int values(List<String> ids) {
        return ids.stream().mapToInt(id -> Math.max(1, most(id))).sum();
    }

    /** How often a donning asks for something, of the condition that is asked most often. */
    private int most(String id) {
        return known.conditions.all().stream()
                .mapToInt(
                        condition ->
                                (int)
                                        asking(steps, id).stream()
                                                .filter(step -> step.appliesTo(condition))
                                                .count())
                .max()
                .orElse(0);
    }

    private static List<Step> asking(List<Step> steps, String id) {
        return steps.stream().filter(step -> step.asks().contains(id)).toList();
    }

    private static String article(Calculation how) {
        return "a " + how.words();
    }
}
