package rigside.command;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import rigside.archive.SpreadOnRecord;
import rigside.archive.SpreadsForPlan;
import rigside.protocol.Measure;
import rigside.protocol.Plan;
import rigside.protocol.Protocol;

/**
 * The expected spreads a plan goes by, from the archive where it tells them and else from the file.
 *
 * @param measures one for each measure that is compared, in the protocol's order
 * @param design how the plan sets values against each other
 * @param cautious whether a spread is what it is at most, in the place of what was seen
 * @param leftOut which sessions are left out, in one sentence; empty when none is
 */
record SpreadsTaken(
        List<OfMeasure> measures, Plan.Design design, boolean cautious, Optional<String> leftOut) {
    SpreadsTaken {
        measures = List.copyOf(measures);
    }

    /**
     * The spread of one measure.
     *
     * @param measure as the file has it
     * @param onRecord what the archive says; empty where it does not tell it
     */
    record OfMeasure(Measure measure, Optional<SpreadOnRecord> onRecord) {
        /** What the file expects, on the scale of the analysis. */
        OptionalDouble ofFile() {
            return measure.compared().orElseThrow().expectedSpread();
        }
    }

    /**
     * What is taken for a protocol.
     *
     * @param found sessions that were not refused
     */
    static SpreadsTaken of(Protocol protocol, ArchiveOptions.Found found, boolean cautious) {
        List<OfMeasure> measures = new ArrayList<>();
        protocol.measures().stream()
                .filter(each -> each.compared().isPresent())
                .map(
                        each ->
                                new OfMeasure(
                                        each, SpreadsForPlan.of(protocol, each, found.sessions())))
                .forEach(measures::add);
        return new SpreadsTaken(measures, protocol.plan().design(), cautious, found.leftOut());
    }

    /** The measure with the spread taken for it. */
    Measure with(Measure measure) {
        return measures.stream()
                .filter(each -> each.measure().id().equals(measure.id()))
                .flatMap(each -> found(each).stream())
                .findFirst()
                .map(
                        found ->
                                measure.withCompared(
                                        measure.compared()
                                                .orElseThrow()
                                                .withExpectedSpread(size(found))))
                .orElse(measure);
    }

    Optional<SpreadOnRecord.Found> found(OfMeasure each) {
        return each.onRecord().flatMap(spread -> spread.planned(design));
    }

    /** What is taken of a spread on record, on the scale of the analysis. */
    double size(SpreadOnRecord.Found found) {
        return cautious ? found.upper() : found.spread();
    }
}
