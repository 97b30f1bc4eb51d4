package rigside.archive;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import rigside.protocol.Plan;

class SpreadOnRecordTest {

    private static SpreadOnRecord spread(Optional<String> condition, SomeValues... sessions) {
        return SpreadOnRecord.of(
                Stream.of(sessions).map(SomeValues::session).toList(), "breathing", condition);
    }

    @Test
    void theSpreadOfOneValueIsThatOfDifferencesOverTheRootOfTwo() {
        SpreadOnRecord spread =
                spread(Optional.empty(), Expected.THREE, Expected.TWO, Expected.ONE);
        SpreadOnRecord.Found found = spread.differences().orElseThrow();
        Expected.near("value_spread", found.spread());
        Expected.near("upper80", found.upper());
        Expected.near("df", found.freedom());
        Expected.near("donning_spread", spread.donnings().orElseThrow().spread());
        assertEquals(9, found.values());
        assertEquals(3, found.sessions());
        String said = String.join("\n", SpreadOnRecordWords.of(spread));
        assertTrue(said.contains("'expected-spread: 4.2 %' to plan with caution"), said);
        assertTrue(said.contains("or 'expected-spread: 3.0 %' for what was seen"), said);
    }

    /**
     * R 4.2.2: anova(lm(log(x) ~ round + condition)) of the twelve values, residual 6 degrees of
     * freedom; sd * sqrt(6 / qchisq(c(.975, .025), 6)). Twice the difference from one reference
     * would give 0.0323.
     */
    @Test
    void ofThreeConditionsItIsWhatRoundsAndConditionsLeave() {
        SpreadOnRecord.Found found =
                SpreadOnRecord.of(List.of(three()), "breathing", Optional.empty())
                        .differences()
                        .orElseThrow();
        assertEquals(6, found.freedom());
        assertEquals(8, found.values());
        assertEquals(0.0395189496669287, found.spread(), 1e-14);
        assertEquals(0.0254657506537801, found.limits().low(), 1e-13);
        assertEquals(0.0870233398758446, found.limits().high(), 1e-12);
    }

    @Test
    void ofOneConditionAmongThreeItIsTheDifferenceFromTheReference() {
        double[] plain = {6.1, 6.3, 5.9, 6.2};
        double[] part = {6.6, 6.5, 6.9, 6.4};
        assertEquals(
                spread(Optional.empty(), SomeValues.on("2026-03-02", plain, part))
                        .differences()
                        .orElseThrow()
                        .spread(),
                SpreadOnRecord.of(List.of(three()), "breathing", Optional.of("part"))
                        .differences()
                        .orElseThrow()
                        .spread(),
                1e-15);
    }

    /** R 4.2.2: sigma and df.residual of lm as above, the second condition in fewer rounds. */
    @ParameterizedTest
    @CsvSource({"2, 4, 0.0435712355824386", "0, 3, 0.0417365589047045"})
    void aConditionHardlyMeasuredTakesNoRoundsFromOthers(int rounds, int freedom, double spread) {
        WithValues all = three();
        List<WithValues.Value> values =
                all.values().stream()
                        .map(
                                each ->
                                        each.condition().equals("disc") && each.round() > rounds
                                                ? SomeValues.withoutValue(each)
                                                : each)
                        .toList();
        SpreadOnRecord.Found found =
                SpreadOnRecord.of(
                                List.of(new WithValues(all.session(), values)),
                                "breathing",
                                Optional.empty())
                        .differences()
                        .orElseThrow();
        assertEquals(freedom, found.freedom());
        assertEquals(spread, found.spread(), 1e-14);
    }

    private static WithValues three() {
        SomeValues two =
                SomeValues.on(
                        "2026-03-02",
                        new double[] {6.1, 6.3, 5.9, 6.2},
                        new double[] {7.2, 7.9, 7.1, 7.4});
        double[] part = {6.6, 6.5, 6.9, 6.4};
        for (int round = 1; round <= part.length; round++) {
            double value = part[round - 1];
            two = two.with(SomeValues.value("part", round, value, value, false, false));
        }
        return two.session(List.of(new Archived.Worn("part", "With part", "mask A, part", 0)));
    }

    @Test
    void ofTheReferenceAloneThereAreDonningsOnly() {
        SpreadOnRecord spread = spread(Optional.of("plain"), Expected.TWO, Expected.ONE);
        assertTrue(spread.differences().isEmpty());
        assertEquals(7, spread.donnings().orElseThrow().values());
        assertEquals(3, spread.later().size());
    }

    @Test
    void sessionsWithBoundedValuesAreLeftOutAndSaidSo() {
        SomeValues bounded = Expected.TWO.with(SomeValues.value("plain", 5, 6, 12, true, false));
        SpreadOnRecord spread = spread(Optional.empty(), bounded, Expected.ONE);
        assertEquals(1, spread.differences().orElseThrow().sessions());
        assertTrue(spread.remarks().get(0).startsWith("1 session is left out"));
    }

    @Test
    void whatDoesNotVaryHasNoSpreadToPlanWith() {
        double[] same = {6, 6};
        SpreadOnRecord spread = spread(Optional.empty(), SomeValues.on("2026-03-02", same, same));
        assertTrue(spread.planned(Plan.Design.ROUNDS).isEmpty());
        assertEquals(List.of(), spread.later());
        assertTrue(
                SpreadOnRecordWords.of(spread)
                        .get(0)
                        .startsWith("How far it spreads is not known"));
    }
}
