package rigside.report;

import java.util.ArrayList;
import java.util.List;
import rigside.protocol.BenchTime;
import rigside.protocol.Condition;
import rigside.protocol.Plan;
import rigside.protocol.Protocol;
import rigside.protocol.Step;
import rigside.report.Block.Head;
import rigside.session.Procedure;
import rigside.session.Stage;

/** Bench time: what the steps declare, and what is allowed for everything else. */
record OutlineTimes(Protocol protocol, List<List<Cell>> rows) {

    static List<Block> of(Protocol protocol) {
        OutlineTimes times = new OutlineTimes(protocol, new ArrayList<>());
        times.fill();
        return times.rows.isEmpty()
                ? List.of()
                : List.of(
                        new Block.Table(
                                List.of(
                                        new Head("", false),
                                        Head.figures("Declared"),
                                        Head.figures("Allowed"),
                                        Head.figures("Together")),
                                times.rows),
                        new Block.Words(times.explained()));
    }

    private void fill() {
        outside(Outline.before(protocol), before());
        for (Condition each : protocol.conditions()) {
            double own = BenchTime.declared(protocol, each.id());
            row("Donning: " + each.title(), own, BenchTime.donning(protocol, each.id()));
        }
        if (!protocol.conditions().isEmpty()) {
            double declared = BenchTime.declaredRound(protocol);
            double round = BenchTime.round(protocol);
            PlannedRounds rounds = PlannedRounds.of(protocol);
            row("Round", declared, round);
            rounds(rounds.fewest(), declared, round);
            if (rounds.most() > rounds.fewest()) {
                rounds(rounds.most(), declared, round);
            }
        }
        outside("After the last donning", protocol.after());
    }

    /** The facts are asked first. */
    private List<Step> before() {
        return protocol.facts().isEmpty()
                ? protocol.before()
                : Procedure.steps(protocol, Stage.BEFORE);
    }

    private void rounds(int count, double declared, double round) {
        row(count + (count == 1 ? " round" : " rounds"), count * declared, count * round);
    }

    private void outside(String title, List<Step> steps) {
        if (!steps.isEmpty()) {
            row(title, BenchTime.declared(steps), BenchTime.steps(steps));
        }
    }

    private void row(String title, double declared, double together) {
        rows.add(
                Cell.texts(
                        List.of(
                                title,
                                Lengths.of(declared),
                                BenchTime.words(Math.max(0, together - declared)),
                                "about " + BenchTime.words(together))));
    }

    private String explained() {
        Plan plan = protocol.plan();
        String declared =
                (plan.maskStaysOn()
                                ? "What is done only after putting the mask on comes once a round. "
                                : "")
                        + (protocol.donning().stream()
                                        .anyMatch(step -> step.head().applies().depends())
                                ? "What depends on an answer is counted as if it were done. "
                                : "")
                        + "Declared are countdowns, exercises, gates, lead-ins and rests: so long"
                        + " they run, neither more nor less.";
        if (plan.donningSeconds().isPresent() && plan.trialSeconds().isPresent()) {
            return declared + " What donnings and trials take together is as the plan states it.";
        }
        String allowed =
                " Allowed are 8 s for a check, an answer, a note and the readings of an exercise,"
                        + " and the middle of what is plausible for a pull: own judgement, no source.";
        return declared
                + allowed
                + (plan.donningSeconds().isPresent()
                        ? " What a donning takes without its trials is as the plan states it."
                        : "")
                + (plan.trialSeconds().isPresent()
                        ? " What a trial takes with its rest is as the plan states it."
                        : "");
    }
}
