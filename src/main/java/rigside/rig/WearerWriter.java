package rigside.rig;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.Arrays;
import java.util.Map;
import java.util.TreeMap;
import rigside.measure.Dimension;
import rigside.measure.Unit;
import rigside.rig.Wearer.Level;
import rigside.rig.Wearer.Scatter;

/** Writes an invented wearer as the text of a rig file, which {@link WearerReader} reads. */
public final class WearerWriter {
    private static final MathContext DIGITS = new MathContext(12);

    /** A rig file lists one condition at least: where none is worn, how it is otherwise. */
    private static final String NOTHING_WORN = "nothing-worn";

    private WearerWriter() {}

    /** The text; the wearer has at least one condition. */
    public static String text(Wearer wearer) {
        StringBuilder text = new StringBuilder();
        text.append("format: 1\n")
                .append("title: ")
                .append(quoted(wearer.title()))
                .append('\n')
                .append(wearer.gauge() ? "gauge: yes\n" : "")
                .append("ambient: ")
                .append(plain(wearer.ambient()))
                .append(" /m3\n")
                .append("ambient-varies: ")
                .append(percent(wearer.ambientSpread()))
                .append('\n')
                .append("conditions:\n");
        new TreeMap<>(wearer.conditions()).forEach((id, each) -> condition(text, id, each));
        if (wearer.conditions().isEmpty()) {
            condition(text, NOTHING_WORN, wearer.otherwise());
        }
        return text.toString();
    }

    private static void condition(StringBuilder text, String id, Wearer.Behaviour behaviour) {
        text.append("  - id: ").append(quoted(id)).append('\n');
        text.append("    fit-factor: {").append(level(behaviour.fitFactor())).append("}\n");
        text.append("    inhalation: {").append(level(behaviour.inhalation())).append("}\n");
        text.append("    peak-pressure: {").append(level(behaviour.peak())).append("}\n");
        if (!behaviour.measures().isEmpty()) {
            text.append("    measures:\n");
        }
        for (Map.Entry<String, Level> each : new TreeMap<>(behaviour.measures()).entrySet()) {
            text.append("      - {measure: ")
                    .append(quoted(each.getKey()))
                    .append(", ")
                    .append(level(each.getValue()))
                    .append("}\n");
        }
    }

    private static String level(Level level) {
        return "median: "
                + amount(level.median(), level.dimension())
                + ", between-donnings: "
                + spread(level, level.between())
                + ", within-donning: "
                + spread(level, level.within());
    }

    private static String spread(Level level, double size) {
        return level.scatter() == Scatter.BY_FACTORS
                ? percent(size)
                : amount(size, level.dimension());
    }

    private static String percent(double logSpread) {
        return plain(100 * Math.expm1(logSpread)) + " %";
    }

    private static String amount(double si, Dimension dimension) {
        Unit unit =
                Arrays.stream(Unit.values())
                        .filter(each -> each.dimension() == dimension)
                        .filter(each -> each.toSi(0) == 0 && each.toSi(1) == 1)
                        .findFirst()
                        .orElseThrow();
        return (plain(si) + " " + unit.symbol()).strip();
    }

    private static String plain(double number) {
        return new BigDecimal(number).round(DIGITS).stripTrailingZeros().toPlainString();
    }

    private static String quoted(String text) {
        return "'" + text.replace("'", "''") + "'";
    }
}
