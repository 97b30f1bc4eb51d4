package rigside.protocol;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * What a protocol file says, checked and complete: a Protocol that exists can be run.
 *
 * @param title one line that names the comparison
 * @param question the question asked, in words
 * @param about purpose, source and remarks; may be empty
 * @param cautions shown and acknowledged before the first donning; at least one
 * @param facts recorded once per session, before everything else
 * @param conditions the reference first; how many there are is what it is for, see {@link
 *     #purpose()}
 * @param measures the numbers taken from each donning; at least one, none where nothing is worn
 * @param plan how often, in which order, what is concealed; {@link Plan#NONE} where nothing is worn
 * @param before steps before the first donning; at least one where nothing is worn
 * @param donning steps of one donning; at least one, none where nothing is worn
 * @param after steps after the last donning
 */
public record Protocol(
        String title,
        String question,
        String about,
        List<String> cautions,
        List<Field> facts,
        List<Condition> conditions,
        List<Measure> measures,
        Plan plan,
        List<Step> before,
        List<Step> donning,
        List<Step> after) {
    public Protocol {
        cautions = List.copyOf(cautions);
        facts = List.copyOf(facts);
        conditions = List.copyOf(conditions);
        measures = List.copyOf(measures);
        before = List.copyOf(before);
        donning = List.copyOf(donning);
        after = List.copyOf(after);
    }

    /** What a protocol is for: what it wears says it. */
    public enum Purpose {
        /** Two conditions or more, each compared with the reference. */
        COMPARISON,
        /** One condition, again and again: how far its values spread by themselves. */
        REPEATABILITY,
        /** Nothing is worn: only steps that look after the instruments. */
        INSTRUMENT_CHECK
    }

    public Purpose purpose() {
        return switch (conditions.size()) {
            case 0 -> Purpose.INSTRUMENT_CHECK;
            case 1 -> Purpose.REPEATABILITY;
            default -> Purpose.COMPARISON;
        };
    }

    /**
     * Whether values of measures can rest on the answer to a fact or field, by its id: one takes
     * it, or it decides whether a step up to the end of a donning is done.
     */
    public boolean isAnalysed(String answer) {
        return measures.stream().anyMatch(each -> each.kind().takes(answer))
                || Stream.of(before, donning)
                        .flatMap(List::stream)
                        .flatMap(step -> step.head().applies().onlyIf().stream())
                        .anyMatch(each -> each.answer().equals(answer));
    }

    /**
     * Until when what a measure comes to is concealed: what is made of times, as long as they are,
     * since with few trials the mean tells them.
     */
    public Plan.Until resultOf(Measure measure) {
        boolean timesLonger = plan.trialClock().compareTo(plan.result()) > 0;
        return measure.isMadeOfTimes() && timesLonger ? plan.trialClock() : plan.result();
    }

    /** Until when all results are: where every measure is made of times, as long as they are. */
    public Plan.Until firstResult() {
        return measures.stream()
                .map(this::resultOf)
                .min(Comparator.naturalOrder())
                .orElse(plan.result());
    }

    /** The same under another plan. */
    public Protocol withPlan(Plan other) {
        return new Protocol(
                title,
                question,
                about,
                cautions,
                facts,
                conditions,
                measures,
                other,
                before,
                donning,
                after);
    }

    /**
     * The condition the others are compared with, or the only one.
     *
     * @throws IndexOutOfBoundsException where nothing is worn
     */
    public Condition reference() {
        return conditions.get(0);
    }

    public Optional<Condition> condition(String id) {
        return conditions.stream().filter(condition -> condition.id().equals(id)).findFirst();
    }

    public Optional<Measure> measure(String id) {
        return measures.stream().filter(measure -> measure.id().equals(id)).findFirst();
    }

    /** The steps of a donning that apply to one condition, in order. */
    public List<Step> donningOf(String conditionId) {
        return donning.stream().filter(step -> step.appliesTo(conditionId)).toList();
    }

    /**
     * Whom or what a fact or a field is about: what its file says, else what a measure uses it for
     * or its id tells; nothing where nobody knows.
     */
    public Optional<Subject> subject(Field field) {
        if (field.about().isPresent()) {
            return field.about();
        }
        return isVitalCapacity(field.id()) ? Optional.of(Subject.WEARER) : Subject.of(field.id());
    }

    private boolean isVitalCapacity(String id) {
        return measures.stream()
                .map(Measure::kind)
                .anyMatch(
                        kind ->
                                kind instanceof Measure.TimedInhalation timed
                                        && timed.vitalCapacityFact().equals(Optional.of(id)));
    }

    /** How many trials of a measure a donning holds, of the condition that has fewest. */
    public int trials(String measureId) {
        return conditions.stream()
                .mapToInt(
                        condition ->
                                donningOf(condition.id()).stream()
                                        .filter(Step.Trials.class::isInstance)
                                        .map(Step.Trials.class::cast)
                                        .filter(step -> step.measure().equals(measureId))
                                        .mapToInt(Step.Trials::count)
                                        .sum())
                .min()
                .orElse(0);
    }
}
