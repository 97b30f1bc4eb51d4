package rigside.screen;

import java.util.Locale;
import rigside.analysis.SlotWords;
import rigside.protocol.Field;
import rigside.session.Amending;
import rigside.session.Entry;
import rigside.session.Procedure;
import rigside.session.Slot;
import rigside.session.Source;

/** What is said while an entry is amended. */
public final class AmendingWords {
    private AmendingWords() {}

    /** What stands there now, unless it is concealed, and what may stand there. */
    public static String now(View view, Entry entry) {
        String value = entry.value().toString();
        String shown =
                view.shown().isOut(entry)
                        ? (value.isEmpty() ? "empty" : value) + ", " + source(entry.source())
                        : "concealed";
        return "entry "
                + entry.number()
                + ", "
                + SlotWords.within(view.state(), entry.slot())
                + ", is "
                + shown
                + choices(view, entry);
    }

    private static String choices(View view, Entry entry) {
        return entry.slot() instanceof Slot.Field slot
                        && Procedure.field(view.state(), slot).answer()
                                instanceof Field.Choice choice
                ? "; choose from: " + String.join(", ", choice.options())
                : "";
    }

    /** What it will be. */
    public static String then(int entry, Amending.Meaning meaning) {
        String will = "entry " + entry + " will be " + meaning.value() + ", typed";
        return meaning instanceof Amending.Meaning.Doubted doubted
                ? will + "; " + doubted.why() + ": Enter alone drops it"
                : will + "; the value before stays on record";
    }

    /** Where a value came from. */
    static String source(Source source) {
        return source == Source.INSTRUMENT
                ? "from the instrument"
                : source == Source.SIMULATED ? "invented" : source.name().toLowerCase(Locale.ROOT);
    }
}
