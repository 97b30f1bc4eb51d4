package rigside.bench;

import static org.junit.jupiter.api.Assertions.assertEquals;

import com.googlecode.lanterna.TerminalSize;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class SttyTest {
    @Test
    void rowsComeBeforeColumns() {
        assertEquals(Optional.of(new TerminalSize(80, 24)), Stty.size("24 80\n"));
    }

    @ParameterizedTest(name = "\"{0}\"")
    @ValueSource(
            strings = {
                "",
                "24",
                "0 0",
                "24 0",
                "0 80",
                "24 80 1",
                "-1 80",
                "rows 80",
                "24.0 80",
                "24 12345"
            })
    void whatIsNoSizeIsNotTaken(String printed) {
        assertEquals(Optional.empty(), Stty.size(printed));
    }
}
