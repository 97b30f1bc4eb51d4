package rigside.screen;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.stream.Collectors;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import rigside.analysis.Analysis;
import rigside.analysis.Comparison;

class FlagsPictureTest {

    @ParameterizedTest
    @CsvSource({
        "'  it would say: ', 39, '  it would say: a meaningful difference'",
        "'  it would say: ', 35, '  it would say: /  a meaningful difference'",
        "'* ', 25, '* a meaningful difference'",
        "'* ', 15, '* a meaningful/  difference'"
    })
    void theVerdictIsNeverCut(String head, int columns, String drawn) {
        Comparison found = Analysis.of(Scenes.settled().state()).comparisons().get(1);
        List<Line> lines = FlagsPicture.verdict(Line.of(head), found, columns);
        assertEquals(
                drawn,
                lines.stream()
                        .map(
                                line ->
                                        line.spans().stream()
                                                .map(Line.Span::text)
                                                .collect(Collectors.joining()))
                        .collect(Collectors.joining("/")));
    }
}
