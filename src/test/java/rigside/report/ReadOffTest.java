package rigside.report;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import rigside.analysis.Analysis;
import rigside.analysis.Shown;
import rigside.journal.JournalReader;
import rigside.session.State;

/**
 * Who reads the signs of a drawing off its axis gets the values: those of the recorded
 * demonstration, reckoned by {@code figures-reference.py} (Python 3.11.7, standard library).
 */
class ReadOffTest {
    /** The size of signs in a plot of few rounds; those of keys and means are smaller. */
    private static final double SIGN = 3.8;

    @ParameterizedTest
    @CsvSource({
        "seal-values, RING, 265.04751847940867 233.78924463786137 228.86310904872389"
                + " 225.79467680608363 219.51956488895604",
        "seal-values, SQUARE, 245.59230894573898 213.6512923032986 270.25769506084464"
                + " 266.62011173184356 228.26979472140764",
        "breathing-values, RING, 6.119735677403908 6.166550659970455 6.326332103951888"
                + " 6.092141991052982 6.261240814917601",
        "breathing-values, SQUARE, 7.401036638619005 8.04657431208053 7.606364441267503"
                + " 7.892203918208157 7.871907238443785",
    })
    void valuesStandWhereTheAxisSays(String name, Mark.Shape shape, String expected) {
        State state = JournalReader.read(Path.of("demo", "recorded-session")).state();
        Figure figure =
                Figures.of(state, Shown.of(state, Analysis.of(state))).stream()
                        .filter(each -> each.name().equals(name))
                        .findFirst()
                        .orElseThrow();
        for (Drawing drawing : List.of(figure.narrow(), figure.wide())) {
            List<Double> read =
                    drawing.marks().stream()
                            .filter(Mark.Sign.class::isInstance)
                            .map(Mark.Sign.class::cast)
                            .filter(sign -> sign.shape() == shape && sign.size() == SIGN)
                            .sorted(Comparator.comparingDouble(Mark.Sign::x))
                            .map(sign -> read(sign.y(), drawing))
                            .toList();
            List<Double> values =
                    List.of(expected.split(" ")).stream().map(Double::valueOf).toList();
            assertEquals(values.size(), read.size());
            for (int at = 0; at < values.size(); at++) {
                // Places are doubles; only their logarithms are rounded.
                assertEquals(values.get(at), read.get(at), values.get(at) * 1e-12);
            }
        }
    }

    /** By the lowest and the highest number left of the axis, which is logarithmic. */
    private static double read(double y, Drawing drawing) {
        List<Mark.Words> labels =
                drawing.marks().stream()
                        .filter(Mark.Words.class::isInstance)
                        .map(Mark.Words.class::cast)
                        .filter(words -> words.anchor() == Mark.Anchor.END)
                        .filter(words -> words.text().matches("[0-9.]+"))
                        .sorted(Comparator.comparingDouble(Mark.Words::y))
                        .toList();
        Mark.Words upper = labels.get(0);
        Mark.Words lower = labels.get(labels.size() - 1);
        double high = Math.log(Double.parseDouble(upper.text()));
        double low = Math.log(Double.parseDouble(lower.text()));
        double line = y + Sheet.SMALL * 0.36;
        return Math.exp(low + (high - low) * (lower.y() - line) / (lower.y() - upper.y()));
    }
}
