package rigside.analysis;

import rigside.protocol.Measure;

/** How the value of a donning is made from what was captured in it, in a sentence. */
final class ValueWords implements Measure.Kind.Cases<String> {
    private ValueWords() {}

    static String of(Measure measure) {
        return measure.kind().match(new ValueWords());
    }

    @Override
    public String fitFactor(Measure.FitFactor kind) {
        return "Fit factor of an exercise: mean of the ambient concentrations around it over the"
                + " one in the mask; of a donning: exercises over the sum of 1 / fit factor"
                + " (harmonic mean).";
    }

    @Override
    public String timedInhalation(Measure.TimedInhalation kind) {
        return "Value of a donning: the geometric mean of the times of its inhalations.";
    }

    @Override
    public String pressureTrace(Measure.PressureTrace kind) {
        return "Value of a donning: the median of the peak pressures of its exercises.";
    }

    @Override
    public String typedNumber(Measure.TypedNumber kind) {
        return "Value of a donning: the number typed.";
    }

    @Override
    public String calculated(Measure.Calculated kind) {
        return "Value of a donning: "
                + kind.function().words()
                + " of what was typed for "
                + Phrases.list(kind.of())
                + "; its resolution is the one declared.";
    }
}
