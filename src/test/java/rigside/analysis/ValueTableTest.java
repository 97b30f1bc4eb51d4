package rigside.analysis;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import rigside.protocol.Measure.Compared.Scale;

class ValueTableTest {

    private static final String HEADER = "round,condition,value\n";

    private static ValueTable good(String text) {
        ValueTable.Read read = ValueTable.read(text, true);
        assertTrue(read instanceof ValueTable.Read.Good, () -> problems(text).toString());
        return ((ValueTable.Read.Good) read).table();
    }

    private static List<String> problems(String text) {
        return ((ValueTable.Read.Bad) ValueTable.read(text, true))
                .problems().stream()
                        .map(each -> each.line() + ":" + each.column() + ": " + each.what())
                        .toList();
    }

    @Test
    void aTableIsReadInAnyOrderOfColumnsAndRows() {
        ValueTable table =
                good(
                        "\uFEFFcondition, value ,round\n\"disc, thin\",12.40,2\r\nbare,11,1\n\nbare,1e1,2\n");
        assertEquals(List.of("disc, thin", "bare"), List.copyOf(table.byCondition().keySet()));
        assertEquals(
                List.of(
                        new ValueTable.Row(2, "disc, thin", 12.4, 0.01),
                        new ValueTable.Row(1, "bare", 11, 1),
                        new ValueTable.Row(2, "bare", 10, 1)),
                table.rows());
        assertEquals(
                Map.of("disc, thin", Map.of(2, 12.4), "bare", Map.of(1, 11.0, 2, 10.0)),
                table.byCondition());
        assertEquals(1, table.resolution(), "bare is read to whole numbers");
    }

    @ParameterizedTest
    @CsvSource({
        "0.1, 5.0 5.0 5.0 5.5 5.5 5.51",
        "0.01, 5.00 5.01 5.00 5.5 5.51 5.52",
        "0.1, 10 11 10.5 12 12 13",
        "0.01, 10 11 10.5 12 12.25 13",
        "1, 10 11 10 12 12 13",
        "0.1, 5.00 5.01 5.00 5.5 5.6 5.5",
        "0.01, 5.00 5.01 5.00 5.5 5.62 5.5",
    })
    void theStepIsThatOfMostValuesWhereZerosAreWrittenAndTheFinestWhereNot(
            double step, String values) {
        StringBuilder text = new StringBuilder("round,condition,value\n");
        String[] all = values.split(" ", -1);
        for (int i = 0; i < all.length; i++) {
            text.append(i % 3 + 1).append(i < 3 ? ",a," : ",b,").append(all[i]).append('\n');
        }
        assertEquals(step, good(text.toString()).resolution());
    }

    @Test
    void semicolonsAllowADecimalComma() {
        ValueTable table = good("round;condition;value\n1;bare;12,4\n1;disc;14.1\n");
        assertEquals(12.4, table.rows().get(0).value());
        assertEquals(14.1, table.rows().get(1).value());
    }

    @Test
    void aCommaInAQuotedCellOrBetweenTabsIsADecimalComma() {
        assertEquals(12.4, good(HEADER + "1,bare,\"12,4\"\n1,disc,14\n").rows().get(0).value());
        ValueTable table = good("round\tcondition\tvalue\n1\tbare\t12,4\n1\tdisc\t14.1\n");
        assertEquals(
                List.of(12.4, 14.1), table.rows().stream().map(ValueTable.Row::value).toList());
    }

    @Test
    void valuesWhoseSquaresOverflowAreRefused() {
        assertEquals(
                List.of(
                        "2:8: value '1.1e100' is too large",
                        "3:8: value '9e-101' is too small",
                        "4:8: value '0' has no ratio, it must be above 0"),
                problems(HEADER + "1,bare,1.1e100\n2,bare,9e-101\n3,bare,0\n4,bare,1e100\n"));
    }

    @Test
    void moreConditionsThanAnybodyComparesAreMisspelt() {
        StringBuilder rows = new StringBuilder(HEADER);
        for (int at = 1; at <= 51; at++) {
            rows.append("1,c").append(at).append(",2\n");
        }
        assertEquals(
                List.of("1:1: there are 51 conditions, must be at most 50"),
                problems(rows.toString()));
    }

    @Test
    void everyProblemIsToldAtOnce() {
        assertEquals(
                List.of(
                        "2:8: value 'x' is not a number",
                        "3:1: round '0' is not a whole number from 1",
                        "4:8: value 'NaN' is not a number",
                        "5:8: value '-2' has no ratio, it must be above 0",
                        "6:1: 4 cells, must be 3",
                        "7:3: the condition is missing",
                        "9:1: round 4 has a second value of 'bare'",
                        "10:1: a double quote is opened and not closed",
                        "11:8: value '1e999' is too large"),
                problems(
                        HEADER
                                + "1,bare,x\n0,bare,1\n2,bare,NaN\n3,bare,-2\n1,bare,3,4\n5,,2\n"
                                + "4,bare,1\n4,bare,2\n5,\"bare,3\n6,bare,1e999\n"));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            textBlock =
                    """
                    ''                          | 1:1: the table is empty
                    1,bare,2                    | 1:1: the first line is '1,bare,2', not the names of columns
                    round,condition             | 1:1: the first line is 'round,condition', not the names of columns
                    'round,condition,value'     | 1:1: there is nothing to compare with
                    """)
    void aTableThatIsNoneIsToldSo(String text, String problem) {
        assertEquals(List.of(problem), problems(text));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            textBlock =
                    """
                    10%         | RATIO      | -0.0953101798 | 0.0953101798
                    10 %        | RATIO      | -0.0953101798 | 0.0953101798
                    2 times     | RATIO      | -0.6931471806 | 0.6931471806
                    1.5x        | RATIO      | -0.4054651081 | 0.4054651081
                    0.8 to 1.25 | RATIO      | -0.2231435513 | 0.2231435513
                    25          | DIFFERENCE | -25           | 25
                    -10 to 2,5  | DIFFERENCE | -10           | 2.5
                    """)
    void whatWouldMatterIsRead(String words, Scale scale, double low, double high) {
        Meaningful band = Meaningful.parse(words, scale).orElseThrow();
        assertEquals(low, band.low(), 1e-10);
        assertEquals(high, band.high(), 1e-10);
    }

    @ParameterizedTest
    @CsvSource({
        "0 %,RATIO",
        "-10 %,RATIO",
        "1 times,RATIO",
        "0.5x,RATIO",
        "1.1 to 1.2,RATIO",
        "-1 to 2,RATIO",
        "25,RATIO",
        "10 %,DIFFERENCE",
        "0,DIFFERENCE",
        "5 to 10,DIFFERENCE",
        "much,RATIO",
        "'',DIFFERENCE"
    })
    void whatLeavesNoBandIsRefused(String words, Scale scale) {
        assertTrue(Meaningful.parse(words, scale).isEmpty());
    }
}
