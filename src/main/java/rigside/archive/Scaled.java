package rigside.archive;

import java.util.List;
import rigside.analysis.Digits;
import rigside.analysis.SpreadWords;
import rigside.decide.Interval;
import rigside.decide.Limits;

/**
 * Numbers of one measure, between the scale they are analysed on and what people read.
 *
 * @param ratio whether that scale is the natural logarithm, so that differences are ratios
 * @param unit the symbol of the unit; empty for a plain number
 */
public record Scaled(boolean ratio, String unit) {
    /** Beyond these a ratio's figures say no more than that. */
    private static final double LEAST = 1e-3;

    private static final double MOST = 1e3;

    static Scaled of(Archived.Measured measure) {
        return new Scaled(measure.ratio(), measure.unit());
    }

    double inward(double read) {
        return ratio ? Math.log(read) : read;
    }

    /** A step of a value as people read it, on the scale of the analysis. */
    double step(double read, double value) {
        return ratio ? read / value : read;
    }

    /** As people read it. */
    public double outward(double analysed) {
        return ratio ? Math.exp(analysed) : analysed;
    }

    /** The limits of an interval, as people read them. */
    public Limits outward(Interval interval) {
        return new Limits(outward(interval.lower()), outward(interval.upper()));
    }

    /** A value: "153", "12.4 s". */
    public String value(double analysed) {
        return withUnit(Digits.three(outward(analysed)));
    }

    /** Values from one to another: "120 to 190". */
    public String values(double low, double high) {
        return withUnit(Digits.three(outward(low)) + " to " + Digits.three(outward(high)));
    }

    /** A change: "1.20 times", "12 Pa more", "3 Pa less". */
    public String change(double analysed) {
        if (ratio) {
            return figure(analysed) + " times";
        }
        return analysed == 0
                ? "no difference"
                : withUnit(Digits.three(Math.abs(analysed))) + (analysed > 0 ? " more" : " less");
    }

    /** Changes from one to another: "1.05 to 1.38", "-3.1 to 12.0 Pa". */
    public String changes(Interval interval) {
        return changes(interval.lower(), interval.upper());
    }

    /** The same of two limits. */
    public String changes(double low, double high) {
        boolean plain = !ratio || (isPlain(low) && isPlain(high));
        // With as many digits as tell both from no change.
        List<String> digits = Digits.apart(outward(low), outward(high), outward(0));
        String figures =
                plain
                        ? digits.get(0) + " to " + digits.get(1)
                        : figure(low) + " to " + figure(high);
        return ratio ? figures : withUnit(figures);
    }

    /** The same of limits as people read them. */
    public String changesAsRead(Limits read) {
        return changes(inward(read.low()), inward(read.high()));
    }

    /** A spread: "5.2 %", "1.8 times", "12 Pa". */
    public String spread(double size) {
        return SpreadWords.of(ratio, unit, size);
    }

    private String figure(double analysed) {
        double read = outward(analysed);
        if (ratio && !isPlain(analysed)) {
            return read < 1 ? "below 0.001" : "above 1000";
        }
        return Digits.three(read);
    }

    private boolean isPlain(double analysed) {
        double read = outward(analysed);
        return read >= LEAST && read <= MOST;
    }

    private String withUnit(String figures) {
        return (figures + " " + unit).strip();
    }
}
