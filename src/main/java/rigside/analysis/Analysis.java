package rigside.analysis;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import rigside.protocol.Measure;
import rigside.protocol.Protocol;
import rigside.session.State;

/**
 * What a session says so far. Only complete donnings that count enter the comparisons; the open
 * donning's values are there too, marked as such.
 *
 * @param readOnly whether the session can be looked at but not gone on with, since its journal is
 *     damaged
 * @param completeRounds rounds in which every condition has a donning that counts
 * @param measures one for each measure of the protocol, in its order
 */
public record Analysis(boolean readOnly, int completeRounds, List<MeasureResult> measures) {

    public Analysis {
        measures = List.copyOf(measures);
    }

    /**
     * The analysis of a session: a pure function of its events. The forecast's random numbers come
     * from the session's seed and the number of rounds.
     *
     * @throws java.util.NoSuchElementException before the session is opened
     */
    public static Analysis of(State state) {
        return of(state, false);
    }

    /**
     * The same of a session that may be damaged.
     *
     * @param readOnly whether it can be looked at but not gone on with
     */
    public static Analysis of(State state, boolean readOnly) {
        Onward onward = Onward.of(state, readOnly);
        return new Analysis(
                readOnly,
                Evidence.of(state).completeRounds().size(),
                state.protocol().measures().stream()
                        .map(measure -> result(state, measure, onward))
                        .toList());
    }

    private static MeasureResult result(State state, Measure measure, Onward onward) {
        List<DonningValue> values = Values.of(Evidence.of(state), measure);
        Optional<Comparisons> compared =
                measure.compared().map(how -> new Comparisons(state, measure, onward));
        List<Comparison> comparisons = compared.map(Comparisons::all).orElse(List.of());
        Optional<Repeatability> study =
                state.protocol().purpose() == Protocol.Purpose.REPEATABILITY
                        ? Optional.of(Repeatability.of(measure, state.protocol().plan(), values))
                        : Optional.empty();
        return new MeasureResult(
                measure,
                values,
                new Summaries(state, measure, values).all(),
                comparisons,
                compared.map(each -> Sentences.promise(state.protocol(), each.setting()))
                        .orElse(""),
                new MeasureRemarks(state, measure, values).all(),
                Stream.concat(
                                new AirFlags(state, measure, values).all().stream(),
                                compared
                                        .map(each -> each.flags(comparisons))
                                        .orElseGet(() -> studied(state, measure, values))
                                        .stream())
                        .toList(),
                compared.map(each -> each.method(comparisons))
                        .or(() -> study.map(StudyMethod::of))
                        .orElseGet(() -> List.of(ValueWords.of(measure))),
                study);
    }

    /** What is worth a second look in a study of one condition; nothing of any other session. */
    private static List<Flag> studied(State state, Measure measure, List<DonningValue> values) {
        Protocol protocol = state.protocol();
        return protocol.purpose() == Protocol.Purpose.REPEATABILITY
                ? Flags.ofStudy(
                        new Watched(
                                new Setting(measure, protocol.plan(), 1, 1),
                                values,
                                Evidence.of(state).completeRounds(),
                                Map.of(protocol.reference().id(), protocol.reference().title())))
                : List.of();
    }

    public Optional<MeasureResult> measure(String id) {
        return measures.stream().filter(each -> each.measure().id().equals(id)).findFirst();
    }

    /** All comparisons, measure by measure. */
    public List<Comparison> comparisons() {
        return measures.stream().flatMap(each -> each.comparisons().stream()).toList();
    }

    /** Whether every deciding comparison has settled. False when none decides. */
    public boolean isEnough() {
        List<Comparison> deciding = comparisons().stream().filter(Comparison::decides).toList();
        return !deciding.isEmpty() && deciding.stream().allMatch(Comparison::isSettled);
    }
}
