package rigside.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.function.DoubleUnaryOperator;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import rigside.analysis.Analysis;
import rigside.analysis.Shown;
import rigside.journal.JournalReader;
import rigside.session.Evolve;
import rigside.session.State;

/** Figures of the recorded demonstration, and of sessions no bench has seen. */
class FiguresTest {
    private static final String REQUIRED = "    required: {level: 100, rule: every-exercise}";

    private static List<Figure> demonstration() {
        State state = JournalReader.read(Path.of("demo", "recorded-session")).state();
        return Figures.of(state, Shown.of(state, Analysis.of(state)));
    }

    @Test
    void theDemonstrationHasSixFigures() {
        assertEquals(
                List.of(
                        "seal-looks",
                        "seal-values",
                        "seal-exercises",
                        "breathing-looks",
                        "breathing-values",
                        "breathing-trials"),
                demonstration().stream().map(Figure::name).toList());
    }

    @Test
    void aFigureOfASimulatedSessionSaysSoWhereverItGoes() {
        for (Figure figure : demonstration()) {
            String said = "Simulated: every value is invented.";
            assertTrue(figure.description().startsWith(said), figure::description);
            for (Drawing drawing : List.of(figure.narrow(), figure.wide())) {
                assertTrue(Boxed.all(drawing).stream().anyMatch(each -> each.text().equals(said)));
            }
        }
        Invented real = new Invented(Invented.protocol(2, 20, REQUIRED), 3, at -> 100 + at);
        Figures.of(real.state(), real.shown())
                .forEach(figure -> assertFalse(figure.svg().contains("invented"), figure::svg));
    }

    /** Looked at as pictures, narrow and wide, in the light and in the dark. */
    @Test
    void theDemonstrationsFiguresAreAsApproved() {
        for (Figure figure : demonstration()) {
            Approved.matches("figures/" + figure.name() + ".svg", figure.svg());
            Approved.matches("figures/" + figure.name() + ".txt", figure.description() + "\n");
        }
    }

    private static Stream<Arguments> sessions() {
        return Stream.of(
                session("two conditions, five rounds", 2, 5, at -> 200 + 10 * Math.sin(at)),
                session("ten conditions, fifty rounds", 10, 50, at -> 300 + 250 * Math.sin(at)),
                session("one round", 2, 1, at -> 250),
                session("equal values", 3, 4, at -> 12.5),
                session("huge and tiny values", 3, 9, at -> Math.pow(10, 20 * Math.cos(at))),
                session("next to nothing", 2, 3, at -> 1e-99),
                session("a hair apart", 2, 6, at -> 1000 + 1e-9 * at),
                session("as large as reckoned with", 2, 6, at -> at % 2 == 0 ? 1e-100 : 1e100));
    }

    private static Arguments session(
            String name, int conditions, int rounds, DoubleUnaryOperator number) {
        return Arguments.of(name, conditions, rounds, number);
    }

    private static List<Figure> all(int conditions, int rounds, DoubleUnaryOperator number) {
        Invented invented =
                new Invented(Invented.protocol(conditions, 60, REQUIRED), rounds, number);
        return Figures.of(invented.state(), invented.shown());
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("sessions")
    void noLetterStandsOnAnotherNorBesideTheSheet(
            String name, int conditions, int rounds, DoubleUnaryOperator number) {
        List<Figure> figures = all(conditions, rounds, number);
        assertEquals(6, figures.size(), name);
        figures.forEach(FiguresTest::readable);
    }

    @Test
    void noLetterOfTheDemonstrationStandsOnAnother() {
        demonstration().forEach(FiguresTest::readable);
    }

    static void readable(Figure figure) {
        for (Drawing drawing : List.of(figure.narrow(), figure.wide())) {
            List<Boxed> boxes = Boxed.all(drawing);
            assertTrue(boxes.size() > 3, figure::name);
            for (int at = 0; at < boxes.size(); at++) {
                Boxed one = boxes.get(at);
                assertTrue(one.isWithin(drawing), () -> figure.name() + ": outside: " + one);
                for (Boxed other : boxes.subList(0, at)) {
                    assertFalse(
                            one.touches(other),
                            () -> figure.name() + " " + drawing.width() + ": " + one + other);
                }
            }
        }
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("sessions")
    void everyFigureIsXmlThatNamesItself(
            String name, int conditions, int rounds, DoubleUnaryOperator number) {
        Set<String> names = new HashSet<>();
        for (Figure figure : all(conditions, rounds, number)) {
            Xml.read(figure.svg());
            assertTrue(names.add(figure.name()));
            assertFalse(figure.svg().contains("NaN") || figure.svg().contains("Infinity"), name);
            assertTrue(figure.description().contains("Half mask as it is"), figure::description);
        }
        Block[] blocks =
                all(conditions, rounds, number).stream()
                        .map(Block.Drawn::new)
                        .toArray(Block[]::new);
        String html = new Page("t", "", List.of(blocks)).html();
        Xml.read(html.substring(html.indexOf("<main>"), html.indexOf("</main>") + 7));
    }

    @Test
    void nothingIsDrawnOfWhatIsConcealed() {
        Invented invented = new Invented(Invented.protocol(2, 60, REQUIRED), 5, at -> 200 + at);
        List<String> withoutClock =
                Figures.of(invented.state(), invented.shown(false, true)).stream()
                        .map(Figure::name)
                        .toList();
        assertFalse(withoutClock.contains("breathing-trials"), withoutClock::toString);
        List<String> withoutResult =
                Figures.of(invented.state(), invented.shown(true, false)).stream()
                        .map(Figure::name)
                        .toList();
        assertFalse(withoutResult.contains("breathing-trials"), withoutResult::toString);
    }

    @Test
    void anOpenSessionThatConcealsItsResultHasNoFigures() {
        List<State> states = new ArrayList<>();
        State state = State.START;
        for (var recorded : JournalReader.read(Path.of("demo", "recorded-session")).events()) {
            state = Evolve.step(state, recorded.event(), recorded.at());
            if (state.course().open().isPresent()) {
                states.add(state);
            }
        }
        State last = states.get(states.size() - 1);
        assertEquals(List.of(), Figures.of(last, Shown.of(last, Analysis.of(last))));
    }

    /** A protocol's reader takes no longer ones, and none with hidden characters. */
    @ParameterizedTest
    @ValueSource(
            strings = {
                "<script>alert(1)</script> & \\\" ' ]]> <!--",
                "\u05E9\u05DC\u05D5\u05DD \u6F22\u5B57 \u0E01\u0E33",
                "wordwithoutanyspaceinitthatisfarlongerthanalineofanarrowdrawingcanhold"
            })
    void hostileTitlesAreWords(String title) {
        String text =
                Invented.protocol(3, 60, REQUIRED)
                        .replace("title: Half mask as it is", "title: \"" + title + "\"")
                        .replace("title: Fit factor", "title: \"" + title + "\"");
        Invented invented = new Invented(text, 5, at -> 200 + at);
        for (Figure figure : Figures.of(invented.state(), invented.shown())) {
            Xml.read(figure.svg());
            readable(figure);
            assertFalse(figure.svg().contains("<script"), figure::name);
        }
    }
}
