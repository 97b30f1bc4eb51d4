package rigside.report;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;

/** Round numbers to mark on an axis: 1, 2 and 5 times powers of ten. */
final class Ticks {
    private Ticks() {}

    /** Fewer marks do not make a scale. */
    private static final int FEWEST = 3;

    private static final List<BigDecimal> STEPS =
            Stream.of(1, 2, 5, 10).map(BigDecimal::valueOf).toList();

    /** Beyond these a number is written with a power of ten: labels have little room. */
    private static final BigDecimal LARGE = new BigDecimal("1e7");

    private static final BigDecimal SMALL = new BigDecimal("1e-4");

    /** One mark and what is written at it. */
    record Tick(double value, String label) {}

    /**
     * Evenly spaced round numbers.
     *
     * @param low finite, below {@code high}
     * @param most how many, at least 1; fewer come where the steps do not fit
     */
    static List<Tick> linear(double low, double high, int most) {
        BigDecimal step = step(low, high, most);
        BigDecimal first =
                new BigDecimal(low)
                        .divideToIntegralValue(step, MathContext.UNLIMITED)
                        .multiply(step);
        List<Tick> ticks = new ArrayList<>();
        for (BigDecimal at = first; at.doubleValue() <= high; at = at.add(step)) {
            if (at.doubleValue() >= low) {
                ticks.add(tick(at));
            }
        }
        return List.copyOf(ticks);
    }

    /** The smallest of 1, 2 and 5 times a power of ten that needs no more steps than that. */
    private static BigDecimal step(double low, double high, int most) {
        double least = high / most - low / most;
        int power = (int) Math.floor(Math.log10(least));
        return STEPS.stream()
                .map(each -> each.scaleByPowerOfTen(power))
                .filter(each -> each.doubleValue() >= least)
                .findFirst()
                .orElseThrow();
    }

    /**
     * Round numbers on a logarithmic axis: 1, 2 and 5 times powers of ten; powers alone where that
     * is too many, evenly spaced numbers where it is too few.
     *
     * @param low above 0, below {@code high}
     */
    static List<Tick> log(double low, double high, int most) {
        List<Tick> all = powers(low, high, List.of(1, 2, 5));
        if (all.size() < FEWEST) {
            List<Tick> even = linear(low, high, Math.min(most, 2 * FEWEST));
            return even.size() >= all.size() && even.size() <= most ? even : thinned(all, most);
        }
        if (all.size() <= most) {
            return all;
        }
        return thinned(powers(low, high, List.of(1)), most);
    }

    private static List<Tick> thinned(List<Tick> ticks, int most) {
        int every = Math.max(1, -Math.floorDiv(-ticks.size(), most));
        List<Tick> kept = new ArrayList<>();
        for (int at = 0; at < ticks.size(); at += every) {
            kept.add(ticks.get(at));
        }
        return List.copyOf(kept);
    }

    private static List<Tick> powers(double low, double high, List<Integer> factors) {
        List<Tick> ticks = new ArrayList<>();
        int last = (int) Math.ceil(Math.log10(high));
        for (int power = (int) Math.floor(Math.log10(low)); power <= last; power++) {
            for (int factor : factors) {
                BigDecimal at = BigDecimal.valueOf(factor).scaleByPowerOfTen(power);
                if (at.doubleValue() >= low && at.doubleValue() <= high) {
                    ticks.add(tick(at));
                }
            }
        }
        return List.copyOf(ticks);
    }

    private static Tick tick(BigDecimal value) {
        BigDecimal plain = value.signum() == 0 ? BigDecimal.ZERO : value.stripTrailingZeros();
        return new Tick(plain.doubleValue(), label(plain));
    }

    /** With groups of three digits from 10 000 on, as {@code Digits} writes numbers. */
    private static String label(BigDecimal value) {
        BigDecimal size = value.abs();
        if (value.signum() != 0 && (size.compareTo(LARGE) >= 0 || size.compareTo(SMALL) < 0)) {
            int power = value.precision() - value.scale() - 1;
            return value.scaleByPowerOfTen(-power).stripTrailingZeros().toPlainString()
                    + "E"
                    + power;
        }
        boolean grouped = size.compareTo(BigDecimal.valueOf(10_000)) >= 0 && value.scale() <= 0;
        return grouped
                ? String.format(Locale.ROOT, "%,d", value.toBigInteger()).replace(',', '\u00A0')
                : value.toPlainString();
    }

    /**
     * Whole numbers along an axis, the first and the last always, none so near another that their
     * labels would touch.
     *
     * @param room the length of the axis from first to last
     * @param labelled how long a label is with the space around it
     */
    static List<Tick> whole(int first, int last, double room, double labelled) {
        if (last <= first) {
            return List.of(tick(BigDecimal.valueOf(first)));
        }
        double each = room / (last - first);
        int step =
                Stream.of(1, 2, 5, 10, 20, 50)
                        .filter(one -> one * each >= labelled)
                        .findFirst()
                        .orElse(last - first);
        List<Tick> ticks = new ArrayList<>();
        ticks.add(tick(BigDecimal.valueOf(first)));
        for (int at = step - Math.floorMod(first, step) + first; at < last; at++) {
            boolean clear = (at - first) * each >= labelled && (last - at) * each >= labelled;
            if (at % step == 0 && clear) {
                ticks.add(tick(BigDecimal.valueOf(at)));
            }
        }
        if (room >= labelled) {
            ticks.add(tick(BigDecimal.valueOf(last)));
        }
        return List.copyOf(ticks);
    }
}
