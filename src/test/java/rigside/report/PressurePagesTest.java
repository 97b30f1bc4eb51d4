package rigside.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import rigside.analysis.DonningValue;

/** How traces are spread over figures. */
class PressurePagesTest {
    private static PressureFollowed one;

    @BeforeAll
    static void aSessionIsRehearsed() throws IOException {
        Material of = Gauged.of(Path.of("demo", "prefilter-disc.yaml"), 7).material();
        Plotting plotting = Plots.of(of.state(), of.shown(), "breathing").orElseThrow();
        one = PressureFollowed.all(of, plotting).get(0);
    }

    private static List<PressureFollowed> worn(int donning, int round, int trials) {
        DonningValue was = one.donning();
        DonningValue now =
                new DonningValue(
                        donning,
                        round,
                        was.condition(),
                        was.standing(),
                        was.value(),
                        was.halved(),
                        was.resolution(),
                        was.bounded(),
                        was.unresolved(),
                        was.level(),
                        was.parts(),
                        was.entries(),
                        was.missing(),
                        was.counting());
        List<PressureFollowed> all = new ArrayList<>();
        for (int trial = 1; trial <= trials; trial++) {
            all.add(new PressureFollowed(one.entry(), now, "trial " + trial, one.trials()));
        }
        return all;
    }

    private static List<Integer> sizes(PressurePages pages) {
        return pages.pages().stream().map(List::size).toList();
    }

    private static List<Integer> rounds(List<PressureFollowed> page) {
        return page.stream().map(each -> each.donning().round()).distinct().toList();
    }

    /** Two conditions, thirty rounds, three trials each: 180 traces. */
    @Test
    void sixtyDonningsFillWholeRoundsAndTheRestIsCounted() {
        List<PressureFollowed> all = new ArrayList<>();
        for (int donning = 1; donning <= 60; donning++) {
            all.addAll(worn(donning, (donning + 1) / 2, 3));
        }
        PressurePages pages = PressurePages.of(all);
        assertEquals(List.of(24, 24, 24, 24), sizes(pages));
        assertEquals(84, pages.left());
        assertEquals(List.of(1, 2, 3, 4), rounds(pages.pages().get(0)));
        assertEquals(List.of(13, 14, 15, 16), rounds(pages.pages().get(3)));
    }

    /** Or a figure "rounds 7 to 10" would be without its round 9. */
    @Test
    void onceARoundDoesNotFitNoneAfterItIsDrawn() {
        List<PressureFollowed> all = new ArrayList<>();
        for (int round = 1; round <= 4; round++) {
            all.addAll(worn(round, round, 20));
        }
        all.addAll(worn(5, 5, 5));
        all.addAll(worn(6, 6, 2));
        PressurePages pages = PressurePages.of(all);
        assertEquals(List.of(20, 20, 20, 20), sizes(pages));
        assertEquals(7, pages.left());
    }

    /** Six conditions with five trials: nothing of the last one would ever be seen. */
    @Test
    void aRoundTooLargeForAFigureGoesOnInTheNextByWholeDonnings() {
        List<PressureFollowed> all = new ArrayList<>();
        for (int donning = 1; donning <= 6; donning++) {
            all.addAll(worn(donning, 1, 5));
        }
        PressurePages pages = PressurePages.of(all);
        assertEquals(List.of(20, 10), sizes(pages));
        assertEquals(0, pages.left());
        assertEquals(all, pages.pages().stream().flatMap(List::stream).toList());
    }

    @Test
    void aDonningTooLargeForAFigureIsCut() {
        PressurePages pages = PressurePages.of(worn(1, 1, 50));
        assertEquals(List.of(24, 24, 2), sizes(pages));
        assertTrue(PressurePages.of(List.of()).pages().isEmpty());
    }
}
