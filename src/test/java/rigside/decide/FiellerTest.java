package rigside.decide;

import static org.junit.jupiter.api.Assertions.assertEquals;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Limits for a ratio of two means by Fieller (1954). The program takes ratios on the log scale
 * instead, where the sequence of looks has an exact distribution and the limits are never "all but
 * these": so this stands here only, on the same sums and t quantiles.
 */
class FiellerTest {

    static Stream<Answers> everySet() {
        JsonNode sets = Reference.read("classical.json").at("/fieller/sets");
        List<Answers> all = new ArrayList<>();
        sets.fieldNames().forEachRemaining(name -> all.add(new Answers(name, sets.get(name))));
        return all.stream();
    }

    /** Ratios r with (b - r a)^2 at most t^2 (vb - 2 r vab + r^2 va); R 4.2.2, twelve digits. */
    @ParameterizedTest
    @MethodSource("everySet")
    void limitsAreThoseOfTheReference(Answers set) {
        double[] a = set.numbers("A");
        double[] b = set.numbers("B");
        boolean paired = set.take("paired").booleanValue();
        double meanA = Sample.mean(a);
        double meanB = Sample.mean(b);
        double df = paired ? a.length - 1 : a.length + b.length - 2;
        double t = StudentT.upperQuantile((1 - set.number("confidence")) / 2, df);
        double pooled = (Sample.squares(a) + Sample.squares(b)) / df;
        double va = (paired ? Sample.squares(a) / df : pooled) / a.length;
        double vb = (paired ? Sample.squares(b) / df : pooled) / b.length;
        double vab = paired ? products(a, b) / df / a.length : 0;
        double g = t * t * va / (meanA * meanA);
        set.assertClose("df", df);
        set.assertClose("t", t);
        set.assertClose("g", g);
        set.assertClose("ratio_of_means_B_over_A", meanB / meanA);
        // A quadratic in r: its roots are the limits, or bound what is left out, or do not exist.
        double first = meanA * meanA - t * t * va;
        double middle = meanA * meanB - t * t * vab;
        double rest = middle * middle - first * (meanB * meanB - t * t * vb);
        String kind = rest < 0 ? "everything" : first > 0 ? "bounded" : "outside";
        assertEquals(set.take("kind").textValue(), kind);
        double[] roots = {(middle - Math.sqrt(rest)) / first, (middle + Math.sqrt(rest)) / first};
        Arrays.sort(roots);
        if (!kind.equals("everything")) {
            set.assertClose(kind.equals("bounded") ? "lower" : "at_most", roots[0]);
            set.assertClose(kind.equals("bounded") ? "upper" : "at_least", roots[1]);
        }
        set.close();
    }

    /** With a coefficient of variation of 5 % both ways to a ratio say nearly the same. */
    @Test
    void limitsFromLogarithmsAreNearThoseOfTheRatioOfMeans() {
        JsonNode set = Reference.read("classical.json").at("/fieller/sets/paired");
        double[] a = Reference.doubles(set.get("A"));
        double[] b = Reference.doubles(set.get("B"));
        double[] logs = new double[a.length];
        Arrays.setAll(logs, i -> Math.log(b[i] / a[i]));
        Interval interval = Summary.of(logs).interval(0.95);
        double slack = 0.05 * interval.critical() * interval.standardError();
        assertEquals(Math.log(set.get("lower").doubleValue()), interval.lower(), slack);
        assertEquals(Math.log(set.get("upper").doubleValue()), interval.upper(), slack);
    }

    private static double products(double[] a, double[] b) {
        double meanA = Sample.mean(a);
        double meanB = Sample.mean(b);
        double sum = 0;
        for (int i = 0; i < a.length; i++) {
            sum += (a[i] - meanA) * (b[i] - meanB);
        }
        return sum;
    }
}
