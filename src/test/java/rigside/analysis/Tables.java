package rigside.analysis;

import java.util.OptionalDouble;
import rigside.protocol.Measure.Compared;
import rigside.protocol.Plan;

/** Tables of values and what they say, for tests. */
final class Tables {

    /** What is fixed beforehand; the plan of the reference values unless changed. */
    record Terms(
            int fewest,
            int most,
            Plan.Design design,
            Compared.Scale scale,
            Compared.Matters matters,
            String meaningful) {

        static final Terms PAIRED =
                new Terms(
                        3,
                        10,
                        Plan.Design.ROUNDS,
                        Compared.Scale.RATIO,
                        Compared.Matters.EITHER,
                        "10 %");

        Terms independent() {
            return new Terms(
                    fewest, most, Plan.Design.INDEPENDENT_DONNINGS, scale, matters, meaningful);
        }

        Terms rounds(int least, int last) {
            return new Terms(least, last, design, scale, matters, meaningful);
        }

        Terms difference(String size) {
            return new Terms(fewest, most, design, Compared.Scale.DIFFERENCE, matters, size);
        }

        Terms matters(Compared.Matters way) {
            return new Terms(fewest, most, design, scale, way, meaningful);
        }

        TableAnalysis of(String rows) {
            ValueTable.Read read =
                    ValueTable.read(
                            "round,condition,value\n" + rows, scale == Compared.Scale.RATIO);
            Meaningful band = Meaningful.parse(meaningful, scale).orElseThrow();
            Compared compared =
                    new Compared(
                            scale,
                            band.low(),
                            band.high(),
                            meaningful,
                            matters,
                            true,
                            OptionalDouble.empty());
            Plan plan =
                    new Plan(
                            fewest,
                            most,
                            0.95,
                            2,
                            design,
                            Plan.Order.AS_LISTED,
                            Plan.Until.SHOWN,
                            Plan.Until.SHOWN,
                            false,
                            false,
                            OptionalDouble.empty(),
                            OptionalDouble.empty());
            return TableAnalysis.of(((ValueTable.Read.Good) read).table(), compared, plan);
        }

        /** The comparison of two conditions with these values, round by round. */
        Comparison of(double[] reference, double[] other) {
            StringBuilder rows = new StringBuilder();
            for (int at = 0; at < reference.length; at++) {
                rows.append(at + 1).append(",plain,").append(reference[at]).append('\n');
            }
            for (int at = 0; at < other.length; at++) {
                rows.append(at + 1).append(",disc,").append(other[at]).append('\n');
            }
            return of(rows.toString()).comparisons().get(0);
        }
    }

    static double[] values(double... values) {
        return values;
    }

    private Tables() {}
}
