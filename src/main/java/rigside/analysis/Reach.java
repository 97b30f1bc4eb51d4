package rigside.analysis;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import rigside.protocol.Protocol;
import rigside.session.Donning;
import rigside.session.State;

/** What a session's findings do and do not say, in sentences. */
public final class Reach {
    /** Said where earlier plans cannot be found. */
    public static final String EARLIER_UNKNOWN =
            "Whether there were earlier plans on the same question is not known: no wearer's code"
                    + " tells whose they would be.";

    private Reach() {}

    /**
     * How far they reach: on what they rest, and what has to be known of the verdicts, each once
     * whatever measure it was said of. What else came of the donnings is not among it: that is
     * counted beside the verdicts.
     */
    public static List<String> of(State state, Shown shown) {
        List<String> all = new ArrayList<>();
        if (state.protocol().purpose() != Protocol.Purpose.INSTRUMENT_CHECK) {
            all.add(rests(state, shown));
        }
        List<String> outcomes = ComparisonRemarks.outcomes(state, state.protocol().conditions());
        all.addAll(
                once(
                        shown.measures(),
                        each ->
                                each.comparisons().stream()
                                        .flatMap(comparison -> comparison.remarks().stream())
                                        .filter(remark -> !outcomes.contains(remark))));
        if (shown.result()) {
            all.addAll(once(shown.measures(), each -> Stream.of(each.promise())));
        }
        return List.copyOf(all);
    }

    /** What is said of the values of every measure, each once. */
    interface Said {
        Stream<String> of(MeasureResult result);
    }

    /** Each sentence once, with the measures it was said of where it was not said of all. */
    static List<String> once(List<MeasureResult> measures, Said said) {
        Map<String, List<String>> remarks = new LinkedHashMap<>();
        for (MeasureResult result : measures) {
            said.of(result)
                    .filter(remark -> !remark.isEmpty())
                    .distinct()
                    .forEach(
                            remark ->
                                    remarks.computeIfAbsent(remark, key -> new ArrayList<>())
                                            .add(result.measure().title()));
        }
        return remarks.entrySet().stream()
                .map(
                        each ->
                                each.getValue().size() == measures.size()
                                        ? each.getKey()
                                        : String.join(", ", each.getValue()) + ": " + each.getKey())
                .toList();
    }

    private static String rests(State state, Shown shown) {
        int complete =
                (int)
                        state.course().donnings().stream()
                                .filter(each -> each.outcome() == Donning.Outcome.COMPLETE)
                                .count();
        boolean compares = state.protocol().purpose() == Protocol.Purpose.COMPARISON;
        return "It speaks for one wearer, and rests on "
                + Phrases.count(complete, "complete donning", "complete donnings")
                + (compares
                        ? " in "
                                + Phrases.count(
                                        shown.completeRounds(), "complete round", "complete rounds")
                        : "")
                + (state.opening().filter(each -> each.event().simulated()).isPresent()
                        ? ", all of them invented."
                        : ".");
    }

    /**
     * How many plans there were before this one on the same question.
     *
     * @param earlier how many are kept; each had a confidence of its own
     */
    public static String earlier(int earlier) {
        return earlier == 0
                ? "No earlier session of this wearer on the same question is kept."
                : "It is plan number "
                        + (earlier + 1)
                        + " of this wearer on the same question. Each plan uses its own donnings and"
                        + " keeps its own promise; over several the chance of one wrong claim adds"
                        + " up.";
    }

    /** What nothing of this is. */
    public static String noFitTest(Protocol.Purpose purpose) {
        String what =
                switch (purpose) {
                    case COMPARISON -> "This is a comparison by and for one wearer";
                    case REPEATABILITY -> "These are the values of one wearer";
                    case INSTRUMENT_CHECK -> "This is a look at instruments: no calibration";
                };
        return what
                + (purpose == Protocol.Purpose.INSTRUMENT_CHECK ? ", " : ": ")
                + "no certification, no occupational fit test and no proof of protection at work."
                + " Local rules, the maker's instructions and a competent fit tester come first.";
    }
}
