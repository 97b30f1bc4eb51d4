package rigside.desk;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import rigside.analysis.Comparison;
import rigside.analysis.ConditionSummary;
import rigside.analysis.MeasureResult;
import rigside.analysis.Shown;
import rigside.measure.Numbers;
import rigside.protocol.Condition;
import rigside.screen.SlotWords;
import rigside.session.Donning;
import rigside.session.Entry;
import rigside.session.Event;
import rigside.session.Recorded;
import rigside.session.State;

/**
 * The lines of a review.
 *
 * @param state where the session stands; opened
 * @param shown what concealment lets out
 * @param events everything recorded, in order
 */
record ReviewLines(State state, Shown shown, List<Recorded> events) {

    List<String> all() {
        List<String> lines = new ArrayList<>(verdict());
        shown.measures().forEach(measure -> lines.addAll(measure(measure)));
        lines.addAll(Happened.of(state));
        lines.addAll(donnings());
        lines.addAll(entries());
        return List.copyOf(lines);
    }

    private List<String> verdict() {
        Event.SessionOpened opened = state.opening().orElseThrow().event();
        List<String> lines = new ArrayList<>();
        if (opened.simulated()) {
            lines.add("simulated: every value is invented");
        }
        lines.add(shown.next());
        if (!shown.concealed().isEmpty()) {
            lines.add(shown.concealed());
        }
        shown.measures().stream()
                .flatMap(result -> result.comparisons().stream())
                .map(Comparison::sentence)
                .forEach(lines::add);
        lines.add("");
        lines.add(state.protocol().question());
        lines.add(
                "begun "
                        + Items.when(events.get(0).wall())
                        + ", last entry "
                        + Items.when(events.get(events.size() - 1).wall())
                        + (state.course().closed() ? ", closed" : ", open")
                        + "; instruments "
                        + opened.rig()
                        + "; seed "
                        + opened.seed());
        return lines;
    }

    private List<String> measure(MeasureResult result) {
        List<String> lines = new ArrayList<>();
        lines.add("");
        lines.add(result.measure().title());
        result.conditions().forEach(each -> lines.add("  " + summary(result, each)));
        Stream.of(
                        result.comparisons().stream().map(Comparison::next),
                        result.comparisons().stream().flatMap(each -> each.remarks().stream()),
                        result.remarks().stream(),
                        Stream.of(result.promise()))
                .flatMap(texts -> texts)
                .filter(text -> !text.isBlank())
                .distinct()
                .forEach(text -> lines.add("  " + text));
        return lines;
    }

    private String summary(MeasureResult result, ConditionSummary each) {
        StringBuilder words = new StringBuilder(title(each.condition()) + ": ");
        words.append(each.n()).append(each.n() == 1 ? " value" : " values");
        each.mean()
                .ifPresent(
                        mean ->
                                words.append(each.geometric() ? ", geometric mean " : ", mean ")
                                        .append(rounded(mean))
                                        .append(unit(result)));
        each.variation()
                .ifPresent(
                        share ->
                                words.append(
                                        String.format(
                                                Locale.ROOT,
                                                ", coefficient of variation %.0f %%",
                                                100 * share)));
        return words.toString();
    }

    private static String unit(MeasureResult result) {
        String symbol = result.measure().unit().symbol();
        return symbol.isEmpty() ? "" : " " + symbol;
    }

    /** Three digits: more would claim a precision that no bench has. */
    private static String rounded(double value) {
        return Numbers.plain(new BigDecimal(value).round(new MathContext(3)).doubleValue());
    }

    private List<String> donnings() {
        List<String> lines = new ArrayList<>(List.of("", "Donnings"));
        for (Donning donning : state.course().donnings()) {
            String reason = donning.reason().isEmpty() ? "" : ": " + donning.reason();
            lines.add(
                    "  "
                            + donning.number()
                            + ", round "
                            + donning.round()
                            + ", "
                            + title(donning.condition())
                            + ", "
                            + donning.outcome().toString().toLowerCase(Locale.ROOT)
                            + reason);
        }
        return lines;
    }

    private List<String> entries() {
        List<String> lines = new ArrayList<>(List.of("", "Entries"));
        for (Entry entry : state.captured().entries()) {
            int donning = entry.slot().place().donning();
            lines.add(
                    "  "
                            + entry.number()
                            + (donning == 0 ? "" : ", donning " + donning)
                            + ", "
                            + SlotWords.of(state, entry.slot())
                            + ": "
                            + (shown.isOut(entry) ? entry.value() : "concealed")
                            + entry.struck()
                                    .map(struck -> ", struck out: " + struck.reason())
                                    .orElse(""));
        }
        return lines;
    }

    private String title(String condition) {
        return state.protocol().condition(condition).map(Condition::title).orElse(condition);
    }
}
