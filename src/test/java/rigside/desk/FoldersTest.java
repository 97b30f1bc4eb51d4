package rigside.desk;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.file.Path;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class FoldersTest {
    private static final Map<String, String> NAMED = Map.of(Folders.VARIABLE, "/named");

    @Test
    void whatIsAskedForGoesFirst() {
        Folders folders = Folders.of(Optional.of(Path.of("/asked")), NAMED, "/own");
        assertEquals(Path.of("/asked"), folders.root());
    }

    @Test
    void thenWhatTheEnvironmentNames() {
        assertEquals(Path.of("/named"), Folders.of(Optional.empty(), NAMED, "/own").root());
    }

    @Test
    void thenAFolderInTheTestersOwn() {
        Folders folders = Folders.of(Optional.empty(), Map.of(Folders.VARIABLE, ""), "/own");
        assertEquals(Path.of("/own/rigside"), folders.root());
        assertEquals(Path.of("/own/rigside/sessions"), folders.sessions());
        assertEquals(Path.of("/own/rigside/protocols"), folders.protocols());
    }
}
