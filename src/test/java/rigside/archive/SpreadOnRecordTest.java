package rigside.archive;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
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
