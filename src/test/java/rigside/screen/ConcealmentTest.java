package rigside.screen;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;

import com.googlecode.lanterna.TerminalSize;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import rigside.analysis.Analysis;
import rigside.analysis.Shown;
import rigside.session.Story;

/**
 * What is concealed is on no page. Two sessions that differ in nothing but what is concealed have
 * to look the same on every page, at every size, wherever one scrolls: so no figure, bar, word or
 * number of lines can give it away.
 */
final class ConcealmentTest {

    private static final List<TerminalSize> SIZES =
            List.of(
                    new TerminalSize(60, 18),
                    new TerminalSize(80, 24),
                    new TerminalSize(120, 36),
                    new TerminalSize(160, 48),
                    new TerminalSize(200, 60));

    private static final String UNTIL_THE_END =
            "  most: 4\n  conceal: {trial-clock: until-session-ends, result: until-session-ends}\n";

    private static final String TIMES_UNTIL_THE_END =
            "  most: 4\n  conceal: {trial-clock: until-session-ends, result: shown}\n";

    private static Story concealed(double disc, double step) {
        return concealed(UNTIL_THE_END, disc, step);
    }

    /** Two rounds, then a donning as far as the rest after its first trial. */
    private static Story concealed(String conceal, double disc, double step) {
        Story story =
                Scenes.atFirstDonning(
                        Story.text("/session/small.yaml").replace("  most: 4\n", conceal), false);
        for (int donning = 0; donning < 4; donning++) {
            story.donning("40", 8 * (Scenes.isDisc(story) ? disc : 1) + step * donning);
        }
        return story.purged().exercised("40").inhaled(7.5 + step);
    }

    /** The same with everything to be seen. */
    private static View open(Story story, View.Page page) {
        Analysis all = Analysis.of(story.state());
        View view = Scenes.page(story, page);
        Shown shown =
                new Shown(true, true, "", all.completeRounds(), false, false, all.measures(), "");
        return Reasons.in(
                new View(
                        view.state(),
                        shown,
                        view.now(),
                        page,
                        0,
                        view.prompt(),
                        "",
                        view.message(),
                        view.style()));
    }

    private static List<String> frames(View view) {
        List<String> frames = new ArrayList<>();
        for (TerminalSize size : SIZES) {
            int limit = SessionScreen.seen(view, size).limit();
            for (int first = 0; first <= limit; first++) {
                View at = Reasons.in(Scenes.selected(view, first));
                frames.add(Drawn.of(at, size.getColumns(), size.getRows()));
            }
        }
        return frames;
    }

    @ParameterizedTest
    @EnumSource(View.Page.class)
    void sessionsThatDifferInWhatIsConcealedAloneLookTheSame(View.Page page) {
        Story alike = concealed(1.02, 0.013);
        Story apart = concealed(1.61, 0.311);
        long now = Math.max(alike.now(), apart.now());
        assertEquals(
                frames(Scenes.at(Scenes.page(alike, page), now)),
                frames(Scenes.at(Scenes.page(apart, page), now - alike.now() + apart.now())),
                page.toString());
    }

    /** What else was measured is seen, and the same in both. */
    @ParameterizedTest
    @EnumSource(
            value = View.Page.class,
            names = {"STEP", "TALLY", "METHOD", "FLAGS"})
    void sessionsThatDifferInTimesAloneLookTheSameWhileThoseAreConcealed(View.Page page) {
        Story alike = concealed(TIMES_UNTIL_THE_END, 1.02, 0.013);
        Story apart = concealed(TIMES_UNTIL_THE_END, 1.61, 0.311);
        long now = Math.max(alike.now(), apart.now());
        assertEquals(
                frames(Scenes.at(Scenes.page(alike, page), now)),
                frames(Scenes.at(Scenes.page(apart, page), now - alike.now() + apart.now())),
                page.toString());
    }

    @ParameterizedTest
    @EnumSource(HomeView.Page.class)
    void theirReviewsLookTheSameToo(HomeView.Page page) {
        HomeView alike = HomeScenes.review(page, concealed(1.02, 0.013));
        HomeView apart = HomeScenes.review(page, concealed(1.61, 0.311));
        for (TerminalSize size : SIZES) {
            assertEquals(
                    Drawn.of(alike, size.getColumns(), size.getRows()),
                    Drawn.of(apart, size.getColumns(), size.getRows()));
        }
    }

    /** Or the tests above would find nothing to be seen anywhere. */
    @Test
    void shownTheyDiffer() {
        Stream.of(View.Page.TALLY, View.Page.METHOD, View.Page.FLAGS, View.Page.ENTRIES)
                .forEach(
                        page ->
                                assertNotEquals(
                                        frames(open(concealed(1.02, 0.013), page)),
                                        frames(open(concealed(1.61, 0.311), page)),
                                        page.toString()));
    }

    /** A donning conceals what earlier ones gave too, and the reasons with it. */
    @ParameterizedTest
    @EnumSource(View.Page.class)
    void whileADonningIsOpenNothingOfTheVerdictsIsOut(View.Page page) {
        Story story = Scenes.rounds(2).purged().exercised("39").inhaled(7.77);
        for (String frame : frames(Scenes.page(story, page))) {
            assertFalse(frame.contains("interval of"), frame);
            assertFalse(frame.contains("times as"), frame);
            assertFalse(frame.contains("7.77"), frame);
            assertFalse(frame.contains("critical"), frame);
            assertFalse(frame.contains("settled"), frame);
        }
    }
}
