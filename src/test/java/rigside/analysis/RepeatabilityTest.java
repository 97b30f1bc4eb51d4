package rigside.analysis;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.InputStream;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import rigside.decide.VarianceParts;
import rigside.measure.Unit;
import rigside.protocol.Measure;
import rigside.protocol.Plan;

class RepeatabilityTest {
    private static final Plan PLAN = Plan.NONE;

    /**
     * R 4.2.2, made-up set of one condition in nested.json; its numbers are taken as logarithms.
     */
    @Test
    void spreadAndItsPartsAreThoseOfTheReference() throws IOException {
        JsonNode one = reference().at("/one_condition/six_donnings_three_trials");
        List<double[]> donnings = new ArrayList<>();
        for (JsonNode donning : one.get("data")) {
            double[] trials = new double[donning.size()];
            Arrays.setAll(trials, at -> donning.get(at).asDouble());
            donnings.add(trials);
        }
        Repeatability found = Repeatability.of(times(), PLAN, values(donnings, 0));
        double meanSquare = one.at("/raw/anova/donning_within_condition/ms").asDouble();
        assertEquals(6, found.n());
        assertEquals(Math.sqrt(meanSquare / 3), found.spread().orElseThrow(), 1e-11);
        VarianceParts parts = found.parts().orElseThrow();
        assertEquals(one.at("/raw/moment/trial").asDouble(), parts.trial(), 1e-11);
        assertEquals(one.at("/raw/moment/donning").asDouble(), parts.donning(), 1e-11);
        assertEquals(3, found.trialsPerDonning());
        double mean = donnings.stream().flatMapToDouble(Arrays::stream).average().orElseThrow();
        assertEquals(mean, Math.log(found.mean().orElseThrow()), 1e-12);
    }

    /** R 4.2.2, qchisq: sqrt(9 / qchisq(0.975, 9)) and sqrt(9 / qchisq(0.025, 9)). */
    @Test
    void limitsAreThoseOfTheChiSquareDistribution() {
        List<double[]> ten = new ArrayList<>();
        for (int i = 0; i < 10; i++) {
            ten.add(new double[] {i % 2 == 0 ? 1.0 : 1.1});
        }
        Repeatability found = Repeatability.of(times(), PLAN, values(ten, 0));
        double spread = found.spread().orElseThrow();
        assertEquals(1.825610183, found.limits().orElseThrow().high() / spread, 1e-9);
        assertEquals(0.687836, found.limits().orElseThrow().low() / spread, 1e-6);
        assertTrue(found.parts().isEmpty(), "one trial a donning tells nothing apart");
    }

    /** R 4.2.2: x = rep(c(1, 1.1), 5); s = sd(x); s * sqrt(9 / qchisq(c(0.975, 0.025), 9)). */
    @Test
    void itsNumbersAreSaidAsTheyWouldBePublished() {
        List<double[]> ten = new ArrayList<>();
        for (int i = 0; i < 10; i++) {
            ten.add(new double[] {i % 2 == 0 ? 1.0 : 1.1});
        }
        assertEquals(
                Optional.of(
                        "Logarithms of values, n = 10: s = 0.0527 (9 degrees of freedom), 95 %"
                                + " limits 0.0363 to 0.0962."),
                Repeatability.of(times(), PLAN, values(ten, 0)).technical());
        assertEquals(
                Optional.empty(),
                Repeatability.of(times(), PLAN, values(ten.subList(0, 1), 0)).technical());
    }

    @Test
    void aLaterPlanSettlesTheMoreTheLongerItIsAndTheLessThingsSpread() {
        List<LaterPlan> plans = LaterPlan.all(Scale.RATIO, 0.06, 0.11);
        for (int at = 0; at < plans.size(); at++) {
            LaterPlan plan = plans.get(at);
            assertTrue(plan.cautious() > plan.meaningful(), plan::toString);
            assertTrue(at == 0 || plan.meaningful() < plans.get(at - 1).meaningful());
            double settled = Math.log(plan.meaningful()) / 0.06;
            assertEquals(
                    LaterPlan.SETTLES,
                    LaterPlan.chance(plan.most(), settled),
                    0.02,
                    plan::toString);
        }
    }

    /**
     * The same road as {@code rigside plan}: its table at the difference found settles as often.
     */
    @Test
    void aLaterPlanAgreesWithThePlanTable() {
        double meaningful = LaterPlan.settled(10) * 0.06;
        Measure.Compared compared =
                new Measure.Compared(
                        Measure.Compared.Scale.RATIO,
                        -meaningful,
                        meaningful,
                        "",
                        Measure.Compared.Matters.EITHER,
                        true,
                        OptionalDouble.empty());
        PlanTable table =
                PlanTable.of(
                        PlanTerms.of(
                                compared,
                                Plan.bare(3, 10, 0.95, 2, Plan.Design.ROUNDS),
                                0.06 * Math.sqrt(2),
                                Optional.empty()),
                        LaterPlan.SETTLES,
                        1);
        double least =
                table.outcomes().stream()
                        .filter(each -> each.multiple() == 0 || each.multiple() == 2)
                        .mapToDouble(each -> 1 - each.unsettled())
                        .min()
                        .orElseThrow();
        // 4000 campaigns against 100 000: one sigma is 0.0065.
        assertEquals(LaterPlan.SETTLES, least, 0.025);
    }

    @Test
    void valuesThatRoundingExplainsTellNoSpread() {
        Repeatability found =
                Repeatability.of(
                        times(),
                        PLAN,
                        values(List.of(new double[] {1}, new double[] {1.001}), 0.01));
        assertTrue(found.spread().isEmpty());
        assertTrue(found.later().isEmpty());
        assertTrue(
                found.sentences().stream().anyMatch(each -> each.contains("rounding explains")),
                () -> found.sentences().toString());
    }

    /** One trial read five times too large: of what putting on adds next to nothing is known. */
    @Test
    void aLimitThatGrowsWithoutBoundIsNoFigure() {
        List<double[]> donnings = new ArrayList<>();
        for (int at = 0; at < 10; at++) {
            double plain = 1.8 + 0.03 * (at % 3);
            donnings.add(new double[] {plain, plain + 0.02, plain - 0.02, plain, plain + 0.01});
        }
        donnings.get(2)[3] += Math.log(5);
        Repeatability found = Repeatability.of(times(), PLAN, values(donnings, 0.01));
        String parts = found.sentences().get(2);
        assertTrue(
                parts.endsWith(
                        "putting the mask on anew adds about 5.7 % (95 % limits: from 2.0 %, with no"
                                + " useful one above, after Satterthwaite)."),
                parts);
    }

    @Test
    void oneDonningHasAMeanAndNoSpread() {
        Repeatability found = Repeatability.of(times(), PLAN, values(List.of(new double[] {0}), 0));
        assertEquals(1, found.mean().orElseThrow(), 1e-12);
        assertTrue(found.spread().isEmpty());
        assertEquals(2, found.sentences().size());
    }

    @Test
    void withoutADonningNothingIsSaid() {
        assertEquals(List.of(), Repeatability.of(times(), PLAN, List.of()).sentences());
    }

    @Test
    void expectedSpreadsAreWordedAsAProtocolTakesThem() {
        assertEquals("6.0 %", RepeatabilityWords.size(Scale.RATIO, Unit.SECOND, Math.log(1.06)));
        assertEquals("1.80 times", RepeatabilityWords.size(Scale.RATIO, Unit.ONE, Math.log(1.8)));
        assertEquals("12 Pa", RepeatabilityWords.size(Scale.DIFFERENCE, Unit.PASCAL, 12.3));
    }

    private static Measure times() {
        return new Measure(
                "breathing",
                "Inhalation time",
                new Measure.TimedInhalation(Optional.empty()),
                Unit.SECOND,
                0.01,
                Optional.empty());
    }

    /** Donnings of trials given as logarithms. */
    private static List<DonningValue> values(List<double[]> donnings, double resolution) {
        List<DonningValue> values = new ArrayList<>();
        for (double[] trials : donnings) {
            int number = values.size() + 1;
            double mean = Math.exp(Arrays.stream(trials).average().orElseThrow());
            List<Part> parts =
                    Arrays.stream(trials)
                            .mapToObj(
                                    log ->
                                            new Part(
                                                    "trial",
                                                    OptionalDouble.of(Math.exp(log)),
                                                    false,
                                                    true,
                                                    Level.NONE,
                                                    List.of(),
                                                    ""))
                            .toList();
            values.add(
                    new DonningValue(
                            number,
                            number,
                            "plain",
                            Standing.COUNTS,
                            OptionalDouble.of(mean),
                            OptionalDouble.of(mean),
                            resolution,
                            false,
                            false,
                            Level.NONE,
                            parts,
                            List.of(),
                            List.of()));
        }
        return values;
    }

    private static JsonNode reference() throws IOException {
        try (InputStream in =
                RepeatabilityTest.class.getResourceAsStream("/rigside/decide/nested.json")) {
            return new ObjectMapper().readTree(in);
        }
    }
}
