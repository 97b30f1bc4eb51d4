package rigside.command;

import java.util.Locale;
import rigside.analysis.Shown;
import rigside.analysis.SlotWords;
import rigside.report.Legible;
import rigside.session.Applicable;
import rigside.session.Entry;
import rigside.session.Source;
import rigside.session.State;

/** One entry on one line, with all that became of it. */
final class EntryLine {
    private static final String CONCEALED = "concealed";

    private EntryLine() {}

    static String of(State state, Shown shown, Entry entry) {
        int donning = entry.slot().place().donning();
        StringBuilder line = new StringBuilder(String.format("%4d  ", entry.number()));
        line.append(donning == 0 ? "" : "donning " + donning + ", ");
        line.append(SlotWords.within(state, entry.slot())).append(": ");
        line.append(value(shown.isOut(entry), entry.value(), entry.source()));
        for (int at = entry.earlier().size() - 1; at >= 0; at--) {
            Entry.Earlier earlier = entry.earlier().get(at);
            line.append("; amended from ");
            line.append(value(shown.isOut(entry, earlier), earlier.value(), earlier.source()));
            line.append(" (").append(Legible.of(earlier.reason())).append(')');
        }
        entry.struck()
                .ifPresent(
                        struck ->
                                line.append("; STRUCK OUT: ").append(Legible.of(struck.reason())));
        if (entry.stands() && Applicable.noLonger(state).contains(entry.number())) {
            line.append("; NOT COUNTED: ").append(Applicable.NO_LONGER);
        }
        return line.toString();
    }

    private static String value(boolean out, Object value, Source source) {
        return (out ? Legible.of(value.toString()) : CONCEALED)
                + ", "
                + source.name().toLowerCase(Locale.ROOT);
    }
}
