package rigside.decide;

import java.util.function.DoubleUnaryOperator;
import org.apache.commons.math3.analysis.integration.gauss.GaussIntegrator;
import org.apache.commons.math3.analysis.integration.gauss.GaussIntegratorFactory;

/** Gauss-Legendre rules on (0, 1), plain and with both ends smoothed. */
final class Quadrature {

    /** For integrands analytic up to both ends. */
    static final Quadrature PLAIN = plain(32);

    /**
     * With x = 3 s^2 - 2 s^3, which turns square-root behaviour at either end into something
     * analytic. 20 nodes: doubling them moves no reference critical value by 1e-9.
     */
    static final Quadrature SMOOTHED = smoothed(20);

    final double[] node;
    final double[] weight;

    private Quadrature(double[] node, double[] weight) {
        this.node = node;
        this.weight = weight;
    }

    static Quadrature plain(int count) {
        GaussIntegrator rule = new GaussIntegratorFactory().legendre(count, 0, 1);
        double[] node = new double[count];
        double[] weight = new double[count];
        for (int i = 0; i < count; i++) {
            node[i] = rule.getPoint(i);
            weight[i] = rule.getWeight(i);
        }
        return new Quadrature(node, weight);
    }

    static Quadrature smoothed(int count) {
        Quadrature plain = plain(count);
        double[] node = new double[count];
        double[] weight = new double[count];
        for (int i = 0; i < count; i++) {
            double s = plain.node[i];
            node[i] = s * s * (3 - 2 * s);
            weight[i] = plain.weight[i] * 6 * s * (1 - s);
        }
        return new Quadrature(node, weight);
    }

    /** The integral of f from low to high. */
    double integrate(double low, double high, DoubleUnaryOperator f) {
        double width = high - low;
        double sum = 0;
        for (int i = 0; i < node.length; i++) {
            sum += weight[i] * f.applyAsDouble(low + width * node[i]);
        }
        return width * sum;
    }
}
