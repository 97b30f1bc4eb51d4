package rigside.analysis;

import rigside.protocol.Measure;

/** Between the numbers people read and the scale the statistics are done on. */
enum Scale {
    /** Natural logarithms: differences are logarithms of ratios. */
    RATIO,
    /** The numbers themselves. */
    DIFFERENCE;

    static Scale of(Measure measure) {
        return of(measure.scale());
    }

    static Scale of(Measure.Compared.Scale scale) {
        return switch (scale) {
            case RATIO -> RATIO;
            case DIFFERENCE -> DIFFERENCE;
        };
    }

    /** Between these, squares and ratios of values are far from overflow. */
    private static final double SMALLEST = 1e-100;

    private static final double LARGEST = 1e100;

    /** Whether a value is a number that can be reckoned with; NaN is not. */
    static boolean holds(double value) {
        double size = Math.abs(value);
        return size == 0 || (size >= SMALLEST && size <= LARGEST);
    }

    boolean isRatio() {
        return this == RATIO;
    }

    /**
     * A step of a value as people read it, on the scale of the analysis: relative for a ratio.
     * Where it is finer than numbers of that size can hold, their own step; 0 where none is known.
     */
    double step(double read, double value) {
        double held = read > 0 ? Math.max(read, Math.ulp(value)) : 0;
        return isRatio() ? held / value : held;
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
