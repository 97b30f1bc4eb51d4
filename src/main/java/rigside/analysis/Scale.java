package rigside.analysis;

import rigside.protocol.Measure;

/** Between the numbers people read and the scale the statistics are done on. */
enum Scale {
    /** Natural logarithms: differences are logarithms of ratios. */
    RATIO,
    /** The numbers themselves. */
    DIFFERENCE;

    /**
     * How a measure's values are summarised and compared. One that is only recorded goes by its
     * kind: fit factors and times by ratios, the others by differences.
     */
    static Scale of(Measure measure) {
        return measure.compared()
                .map(compared -> of(compared.scale()))
                .orElse(
                        measure.kind() instanceof Measure.FitFactor
                                        || measure.kind() instanceof Measure.TimedInhalation
                                ? RATIO
                                : DIFFERENCE);
    }

    static Scale of(Measure.Compared.Scale scale) {
        return switch (scale) {
            case RATIO -> RATIO;
            case DIFFERENCE -> DIFFERENCE;
        };
    }

    boolean isRatio() {
        return this == RATIO;
    }

    /** A step of a value as people read it, on the scale of the analysis: relative for a ratio. */
    double step(double read, double value) {
        return isRatio() ? read / value : read;
    }

    /** A value on the scale of the analysis; a ratio's must be above 0. */
    double inward(double read) {
        return isRatio() ? Math.log(read) : read;
    }

    /** A number of the analysis as people read it. */
    double outward(double analysed) {
        return isRatio() ? Math.exp(analysed) : analysed;
    }
}
