package rigside.analysis;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;
import rigside.session.Event;
import rigside.session.Story;

/** What moved air and counted particles do to fit factors, in sessions of typed values. */
class AirFlagsTest {
    private static Story session(String exercises, String measure) {
        String text =
                Story.text("/session/small.yaml")
                        .replace("    feeds: fit\n", "    feeds: fit\n" + exercises)
                        .replace("    kind: fit-factor\n", "    kind: fit-factor\n" + measure);
        return Story.opened(
                        new Event.SessionOpened("test", "s.yaml", text, 7, "typed", "", false, 1))
                .goOn()
                .type("W1")
                .type("21")
                .goOn();
    }

    /** A donning whose ambient samples, before and after, are these. */
    private static Story donning(Story story, String before, String after) {
        story.purged()
                .goOn()
                .pass(20)
                .type(before)
                .type("40")
                .goOn()
                .pass(20)
                .type("40")
                .type(after)
                .inhaled(8)
                .pass(30)
                .inhaled(8);
        if (story.activity() instanceof rigside.session.Activity.Filling) {
            story.type("3");
        }
        return story.goOn();
    }

    private static MeasureResult fit(Story story) {
        return Analysis.of(story.state()).measure("fit").orElseThrow();
    }

    private static List<Flag> moved(Story story) {
        return fit(story).flags().stream()
                .filter(flag -> flag.kind() == Flag.Kind.AIR_MOVED)
                .toList();
    }

    @Test
    void airThatKeepsStillIsNotFlagged() {
        // 4000 to 4888 /cm3 is 19.98 % of their mean.
        assertEquals(List.of(), moved(donning(session("", ""), "4000", "4888")));
    }

    @Test
    void airThatMovedByMoreThanAFifthIsFlaggedWithItsDonning() {
        List<Flag> flags = moved(donning(session("", ""), "4000", "6000"));
        assertEquals(1, flags.size());
        assertEquals(List.of(1), flags.get(0).donnings());
        assertEquals(
                "the ambient concentration changed from 4000 /cm3 to 6000 /cm3, by 40 % of their mean,"
                        + " around 'Normal breathing'; the protocol lets 20 % pass. The fit factor"
                        + " there takes their mean and can be off by up to 20 %. See what moves the"
                        + " air: doors, windows, somebody passing.",
                flags.get(0).reason());
    }

    @Test
    void theProtocolSaysHowMuchPasses() {
        assertEquals(
                List.of(),
                moved(donning(session("    ambient-may-move: 50 %\n", ""), "4000", "6000")));
        assertEquals(
                1,
                moved(donning(session("    ambient-may-move: 5 %\n", ""), "4000", "4300")).size());
    }

    @Test
    void whereTheFlowIsKnownCountingLimitsAreCarriedToTheDonning() {
        Story story = donning(session("", "    sample-flow: 0.1 L/min\n"), "4000", "4000");
        DonningValue value = fit(story).values().get(0);
        assertEquals(100, value.value().orElseThrow(), 1e-9);
        // 40 /cm3 for 12 s at 100 cm3/min are 800 particles an exercise, 1600 in all: 1/sqrt(1600)
        // is 2.5 %; the room's 33 333 and 33 333 add next to nothing. So 5 % either way.
        assertEquals(0.05, 1 - value.counting().orElseThrow().low() / 100, 0.004);
        assertEquals(0.05, value.counting().orElseThrow().high().orElseThrow() / 100 - 1, 0.004);
        assertEquals(
                1,
                fit(story).remarks().stream()
                        .filter(remark -> remark.startsWith("Counting particles alone"))
                        .count());
    }

    @Test
    void withoutTheFlowNothingIsSaidOfCounting() {
        DonningValue value = fit(donning(session("", ""), "4000", "4000")).values().get(0);
        assertEquals(true, value.counting().isEmpty());
    }

    @Test
    void concealedValuesCarryNoCountingLimits() {
        Story story = donning(session("", "    sample-flow: 0.1 L/min\n"), "4000", "4000").purged();
        Shown shown = Shown.of(story.state(), Analysis.of(story.state()));
        assertEquals(
                List.of(),
                shown.measures().stream()
                        .flatMap(each -> each.values().stream())
                        .flatMap(value -> value.counting().stream())
                        .toList());
    }
}
