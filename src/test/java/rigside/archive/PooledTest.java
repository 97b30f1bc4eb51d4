package rigside.archive;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import rigside.decide.Interval;
import rigside.decide.Limits;
import rigside.decide.RandomEffects;

class PooledTest {

    private static Pooled pooled(SomeValues... sessions) {
        List<WithValues> all = Stream.of(sessions).map(SomeValues::session).toList();
        Archived last = all.get(all.size() - 1).session();
        return Pooled.of(
                all, SomeValues.BREATHING, 0, last.conditions().get(1), last.conditions().get(0));
    }

    @Test
    void sessionsAreBlocksWhoseRatiosArePooledAsMetaforDoes() {
        Pooled pooled = pooled(Expected.ONE, Expected.TWO, Expected.THREE);
        RandomEffects effects = pooled.pooled().orElseThrow().effects().orElseThrow();
        Limits limits = pooled.scale().outward(effects.cautiousInterval(0.95));
        Expected.near("estimate", pooled.scale().outward(effects.mean()));
        Expected.near("low", limits.low());
        Expected.near("high", limits.high());
        Expected.near("tau", effects.spreadBetween());
        Expected.near("q", effects.q());
        Expected.near("p", effects.p());
        Expected.near("within", pooled.pooled().get().within());
        assertEquals(9, pooled.rounds());
        assertEquals(List.of(3, 4, 2), pooled.lines().stream().map(Pooled.Line::n).toList());
    }

    @Test
    void whichIsTheReferenceOnlyInvertsTheRatio() {
        List<WithValues> all =
                Stream.of(Expected.ONE, Expected.TWO).map(SomeValues::session).toList();
        Archived.Worn plain = all.get(0).session().conditions().get(0);
        Archived.Worn disc = all.get(0).session().conditions().get(1);
        Interval one = interval(Pooled.of(all, SomeValues.BREATHING, 0, disc, plain));
        Interval two = interval(Pooled.of(all, SomeValues.BREATHING, 0, plain, disc));
        assertEquals(one.estimate(), -two.estimate(), 1e-14);
        assertEquals(one.lower(), -two.upper(), 1e-12);
    }

    private static Interval interval(Pooled pooled) {
        return pooled.pooled().orElseThrow().interval(0.95);
    }

    @Test
    void aRoundWithoutBothValuesIsNoRound() {
        SomeValues lacking =
                SomeValues.on("2026-03-16", new double[] {6.6, 6.4, 6.5}, new double[] {7.3, 7.5});
        assertEquals(
                interval(pooled(Expected.ONE, Expected.TWO, Expected.THREE)),
                interval(pooled(Expected.ONE, Expected.TWO, lacking)));
    }

    @Test
    void aSessionOfOneRoundIsListedButNotPooled() {
        SomeValues single = SomeValues.on("2026-03-23", new double[] {6}, new double[] {9});
        Pooled pooled = pooled(Expected.ONE, Expected.TWO, Expected.THREE, single);
        Expected.near("q", pooled.pooled().orElseThrow().effects().orElseThrow().q());
        assertEquals(4, pooled.lines().size());
        assertTrue(pooled.lines().get(3).ordinary().isEmpty());
        assertEquals(
                "Nothing is pooled: fewer than two of the sessions have two complete rounds.",
                pooled(Expected.ONE, single).sentences().get(0));
    }

    @Test
    void boundedValuesArePooledBothWays() {
        Pooled pooled =
                pooled(
                        Expected.ONE
                                .with(SomeValues.value("plain", 4, 6, 6, false, false))
                                .with(SomeValues.value("disc", 4, 8, 16, true, true)),
                        Expected.TWO);
        double stated = pooled.pooled().orElseThrow().mean();
        double halved = pooled.halved().orElseThrow().mean();
        assertTrue(halved > stated);
        assertTrue(
                pooled.sentences().stream().anyMatch(each -> each.contains("at half")),
                () -> String.join("\n", pooled.sentences()));
    }

    @Test
    void whatIsBoundedOnBothSidesIsNotPooled() {
        Pooled pooled =
                pooled(
                        Expected.ONE
                                .with(SomeValues.value("plain", 4, 6, 12, true, true))
                                .with(SomeValues.value("disc", 4, 8, 16, true, true)),
                        Expected.TWO);
        assertTrue(pooled.pooled().isEmpty());
        assertTrue(pooled.why().contains("at least"), pooled.why());
    }

    @Test
    void roundsThatDoNotDifferAtAllAreNotPooled() {
        double[] plain = {6, 6};
        double[] disc = {7, 7};
        Pooled pooled =
                pooled(
                        SomeValues.on("2026-03-02", plain, disc),
                        SomeValues.on("2026-03-09", plain, disc));
        assertTrue(pooled.why().contains("do not differ at all"), pooled.why());
    }

    /** By hand: two values read to 0.1 s vary by 0.1 / sqrt(12) s each through rounding alone. */
    @Test
    void belowWhatRoundingExplainsNoSpreadIsBelieved() {
        double[] plain = {5, 5, 5};
        List<WithValues> all =
                Stream.of(
                                SomeValues.on("2026-03-02", plain, new double[] {5, 5, 5.1}),
                                SomeValues.on("2026-03-09", plain, new double[] {5, 5, 5}))
                        .map(SomeValues::session)
                        .toList();
        Archived session = all.get(0).session();
        Pooled pooled =
                Pooled.of(
                        all,
                        SomeValues.BREATHING,
                        0.1,
                        session.conditions().get(1),
                        session.conditions().get(0));
        assertEquals(0.1 / 5 * Math.sqrt(2 / 12.0), pooled.pooled().orElseThrow().within(), 2e-5);
        String said = String.join("\n", pooled.sentences());
        assertTrue(said.contains("what rounding alone gives"), said);
    }

    @Test
    void twoSessionsAreSaidToTellHowLittleTheyTell() {
        String said = String.join("\n", pooled(Expected.ONE, Expected.TWO).sentences());
        assertTrue(said.contains("Two sessions tell next to nothing"), said);
        assertTrue(said.contains("over 2 sessions with 7 rounds: 1.22 times"), said);
        assertFalse(said.contains("meaningful"), said);
    }

    /** F is 0 where sessions find just the same, whatever their rounds spread by. */
    @Test
    void ofSessionsThatFindTheSameNoLimitsOfTheirSpreadAreMadeUp() {
        double[] plain = {6, 6, 6};
        double[] disc = {7, 7.2, 7.1};
        String said =
                String.join(
                        "\n",
                        pooled(
                                        SomeValues.on("2026-03-02", plain, disc),
                                        SomeValues.on("2026-03-09", plain, disc))
                                .sentences());
        assertTrue(said.contains("about 0 (tau). How far that may be from the truth"), said);
        assertTrue(said.contains("with 1 degree of freedom;"), said);
        assertFalse(said.contains("0 to 0"), said);
    }
}
