package rigside.analysis;

import rigside.protocol.Measure;
import rigside.protocol.Protocol;

/** How comparisons share the error, and how many values a round brings. */
final class Sharing {

    private Sharing() {}

    /**
     * What a protocol fixes for one measure. Comparisons of several conditions share the error
     * equally, and, if the plan says so, so do the deciding measures; a measure that does not
     * decide is then held to the same share.
     */
    static Setting setting(Protocol protocol, Measure measure) {
        int comparisons = protocol.conditions().size() - 1;
        int measures = protocol.plan().sharedOverMeasures() ? deciding(protocol) : 1;
        int sharing = comparisons * Math.max(1, measures);
        Setting setting = new Setting(measure, protocol.plan(), sharing, 1);
        return setting.isByTrial()
                ? new Setting(measure, protocol.plan(), sharing, trials(protocol, measure))
                : setting;
    }

    static int deciding(Protocol protocol) {
        return (int)
                protocol.measures().stream()
                        .filter(
                                each ->
                                        each.compared()
                                                .filter(Measure.Compared::decides)
                                                .isPresent())
                        .count();
    }

    /** The trials of a donning of the condition that has fewest. */
    static int trials(Protocol protocol, Measure measure) {
        return Math.max(1, protocol.trials(measure.id()));
    }
}
