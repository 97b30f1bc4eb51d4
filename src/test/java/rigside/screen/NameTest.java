package rigside.screen;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.stream.Collectors;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class NameTest {

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            nullValues = "-",
            textBlock =
                    """
                    Inhalation time | ''                | 30 | Inhalation time
                    Inhalation time | ''                | 10 | Inhalatio~
                    Inhalation time | Thick disc        | 30 | Inhalation time, Thick disc
                    Inhalation time | Thick disc        | 18 | Inhal~, Thick disc
                    Inhalation time | Thick disc        | 14 | Thick disc
                    Inhalation time | Mask with disc A  | 12 | Mask w~isc A
                    Inhalation time | Mask with disc B  | 12 | Mask w~isc B
                    """)
    void whatTellsRowsApartIsKept(String measure, String condition, int columns, String drawn) {
        Line line = new Name(measure, condition).in(columns, "~");
        assertEquals(
                drawn, line.spans().stream().map(Line.Span::text).collect(Collectors.joining()));
    }
}
