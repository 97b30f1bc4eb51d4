package rigside.report;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalLong;
import java.util.stream.Collectors;
import rigside.measure.Numbers;
import rigside.protocol.Measure;
import rigside.protocol.Plan;
import rigside.protocol.Protocol;
import rigside.report.Block.Head;
import rigside.report.Block.Table;
import rigside.session.Schedule;

/** How often, in which order, and what is concealed meanwhile. */
record OutlinePlan(Protocol protocol, PlannedRounds rounds) {

    static List<Block> of(Protocol protocol, OptionalLong seed) {
        if (protocol.conditions().isEmpty()) {
            return List.of();
        }
        OutlinePlan plan = new OutlinePlan(protocol, PlannedRounds.of(protocol));
        List<Block> blocks = new ArrayList<>(List.of(Table.pairs(plan.rows())));
        if (seed.isPresent()) {
            blocks.addAll(plan.drawn(seed.getAsLong()));
        }
        return List.copyOf(blocks);
    }

    private List<List<String>> rows() {
        Plan plan = protocol.plan();
        if (protocol.purpose() == Protocol.Purpose.REPEATABILITY) {
            return List.of(
                    List.of("How often", rounds.most() + " donnings of the one condition"),
                    List.of("Looks", "none: nothing is compared, so there is no verdict"),
                    List.of("Times of trials", concealed(plan.trialClock())),
                    List.of("Running result", results()));
        }
        return List.of(
                List.of(
                        "How often",
                        rounds.words()
                                + (plan.maskStaysOn()
                                        ? ", each every condition in turn while the mask stays on"
                                        : ", each a donning of every condition")),
                List.of("Set against each other", design()),
                List.of(
                        "Looks",
                        "after each complete round from the "
                                + ordinal(rounds.fewest())
                                + " on; all intervals together hold with "
                                + Numbers.plain(Numbers.rounded(100 * plan.confidence(), 4))
                                + " % confidence"),
                List.of("Order in a round", order()),
                List.of("Times of trials", concealed(plan.trialClock())),
                List.of("Running result", results()),
                List.of(
                        "Order to come",
                        "each condition is named when its turn comes, not earlier"));
    }

    private String design() {
        return switch (protocol.plan().design()) {
            case ROUNDS -> "the donnings of one round";
            case INDEPENDENT_DONNINGS -> "donnings, each a value of its own";
            case INDEPENDENT_TRIALS ->
                    "trials, each a value of its own; speaks for these donnings only";
        };
    }

    private String order() {
        int size = protocol.conditions().size();
        return switch (protocol.plan().order()) {
            case BALANCED ->
                    "balanced: in every "
                            + size
                            + " rounds each condition takes each turn once; otherwise drawn from"
                            + " the session's seed";
            case RANDOM -> "drawn anew for every round from the session's seed";
            case AS_LISTED -> "as listed above, the same in every round";
        };
    }

    /** With what is concealed longer than the others, since the times it is made of are. */
    private String results() {
        Plan.Until first = protocol.firstResult();
        String longer =
                protocol.measures().stream()
                        .filter(each -> protocol.resultOf(each) != first)
                        .map(Measure::title)
                        .collect(Collectors.joining(", "));
        return concealed(first)
                + (longer.isEmpty()
                        ? ""
                        : "; "
                                + longer
                                + ": "
                                + concealed(protocol.plan().trialClock())
                                + ", with the times");
    }

    private static String concealed(Plan.Until until) {
        return switch (until) {
            case SHOWN -> "shown at once";
            case DONNING_ENDS -> "concealed until the donning ends";
            case SESSION_ENDS -> "concealed until the session ends";
        };
    }

    private List<Block> drawn(long seed) {
        List<Head> heads = new ArrayList<>(List.of(Head.figures("Round")));
        for (int turn = 1; turn <= protocol.conditions().size(); turn++) {
            heads.add(new Head(ordinal(turn), false));
        }
        List<List<Cell>> rows = new ArrayList<>();
        for (int round = 1; round <= rounds.most(); round++) {
            List<String> row = new ArrayList<>(List.of(String.valueOf(round)));
            row.addAll(
                    Schedule.order(protocol, seed, round).stream()
                            .map(id -> Outline.title(protocol, id))
                            .collect(Collectors.toList()));
            rows.add(Cell.texts(row));
        }
        return List.of(
                new Block.Words(
                        "The order drawn with seed "
                                + seed
                                + ". Whoever wears the mask does better not to know it"
                                + " beforehand."),
                new Table(heads, rows));
    }

    static String ordinal(int number) {
        return switch (number) {
            case 1 -> "first";
            case 2 -> "second";
            case 3 -> "third";
            default -> {
                boolean teen = number / 10 % 10 == 1;
                yield number + (teen ? "th" : List.of("th", "st", "nd", "rd").get(ending(number)));
            }
        };
    }

    private static int ending(int number) {
        return number % 10 > 3 ? 0 : number % 10;
    }
}
