package rigside.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import rigside.analysis.SlotWords;
import rigside.analysis.TraceWords;
import rigside.report.Block.Head;
import rigside.session.Applicable;
import rigside.session.Entry;

/** Everything that was captured, struck out or not. */
record ReportEntries(Material of, Set<Integer> noLonger) {

    static List<Block> of(Material of) {
        List<Entry> entries = of.state().captured().entries();
        if (entries.isEmpty()) {
            return List.of();
        }
        ReportEntries all = new ReportEntries(of, Applicable.noLonger(of.state()));
        String count = entries.size() == 1 ? "1 entry" : entries.size() + " entries";
        return List.of(
                new Block.Fold(
                        count + ", in the order they were captured",
                        List.of(
                                new Block.Table(
                                        "Every entry, struck out or not",
                                        List.of(
                                                new Head("No.", false),
                                                new Head("Donning", false),
                                                new Head("What", false),
                                                Head.figures("Value"),
                                                new Head("From", false),
                                                new Head("Beside it", false)),
                                        entries.stream().map(all::row).toList()))));
    }

    private List<Cell> row(Entry entry) {
        int donning = entry.slot().place().donning();
        boolean out = of.shown().isOut(entry);
        return Cell.texts(
                List.of(
                        String.valueOf(entry.number()),
                        donning == 0 ? "-" : String.valueOf(donning),
                        SlotWords.of(of.state(), entry.slot()),
                        out ? entry.value().toString() : "concealed",
                        source(entry),
                        beside(entry, out)));
    }

    private static String source(Entry entry) {
        return switch (entry.source()) {
            case TYPED -> "typed";
            case TIMED -> "timed";
            case INSTRUMENT -> "instrument";
            case SIMULATED -> "invented";
        };
    }

    private String beside(Entry entry, boolean out) {
        List<String> words = new ArrayList<>();
        entry.struck().ifPresent(struck -> words.add("STRUCK OUT: " + struck.reason()));
        if (noLonger.contains(entry.number())) {
            words.add("NOT COUNTED: " + Applicable.NO_LONGER);
        }
        if (entry.isAmended()) {
            words.add("AMENDED");
        }
        TraceWords.of(of.state(), entry, out).ifPresent(words::add);
        entry.untraced().ifPresent(words::add);
        return String.join("; ", words);
    }
}
