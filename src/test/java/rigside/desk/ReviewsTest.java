package rigside.desk;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import rigside.screen.Drawn;
import rigside.screen.HomeView;
import rigside.screen.View;

/** What the review of a session says of it. */
class ReviewsTest {
    @TempDir Path folder;

    @Test
    void aDamagedSessionIsNotSaidToGoOn() throws IOException {
        List<String> lines =
                new ArrayList<>(
                        Files.readAllLines(Path.of("demo/recorded-session/journal.jsonl"))
                                .subList(0, 200));
        lines.addAll(List.of("no line", "nor this"));
        Files.write(folder.resolve("journal.jsonl"), lines);
        String said = Drawn.of(review(), 120, 200).replaceAll("\\s+", " ");
        assertTrue(said.contains("cannot be gone on with: its journal is damaged"), said);
        assertFalse(said.contains("Go on with"), said);
    }

    private HomeView review() {
        return new HomeView(
                HomeView.Page.REVIEW,
                List.of(),
                List.of(),
                0,
                new HomeView.Rig("typed by you", false, 1),
                Reviews.of(folder),
                Optional.empty(),
                new View.Style(View.Colours.NONE, false));
    }
}
