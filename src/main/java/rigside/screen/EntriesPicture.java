package rigside.screen;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import rigside.analysis.SlotWords;
import rigside.analysis.TraceWords;
import rigside.session.Applicable;
import rigside.session.Donning;
import rigside.session.Entry;
import rigside.session.Slot;
import rigside.session.Source;

/** All entries and donnings, one line each, to strike out what was wrong. */
record EntriesPicture(Scene scene, Set<Integer> noLonger) {
    /** Columns before a line, for the sign at the chosen one. */
    private static final int SIGN = 2;

    static List<Line> of(Scene scene) {
        return new EntriesPicture(scene).lines();
    }

    EntriesPicture(Scene scene) {
        this(scene, Applicable.noLonger(scene.state()));
    }

    private List<Line> lines() {
        List<Listing.Row> rows = Listing.of(scene.state());
        List<Line> lines = new ArrayList<>();
        for (int at = 0; at < rows.size(); at++) {
            boolean chosen = at == scene.view().selected();
            Line line = row(rows.get(at));
            Line signed =
                    Line.of(chosen ? scene.signs().here() + " " : "  ")
                            .plus(line)
                            .cut(scene.columns(), scene.signs().cut());
            lines.add(
                    chosen
                            ? signed.in(Tone.INVERSE).padded(scene.columns(), Tone.INVERSE)
                            : signed);
        }
        return rows.isEmpty() ? List.of(Line.of("Nothing is captured yet.")) : List.copyOf(lines);
    }

    /**
     * The chosen line once more, whole, where it is cut in the list. However long somebody's words
     * are, they leave the list and the keys their place.
     */
    static List<Line> chosen(Scene scene) {
        List<Listing.Row> rows = Listing.of(scene.state());
        if (scene.view().selected() >= rows.size()) {
            return List.of();
        }
        Line line = new EntriesPicture(scene).row(rows.get(scene.view().selected()));
        if (line.width() + SIGN <= scene.columns()) {
            return List.of();
        }
        StringBuilder words = new StringBuilder();
        line.spans().forEach(span -> words.append(span.text()));
        List<Line> whole =
                Wrap.hanging(
                        Line.of(scene.signs().here() + " "),
                        Tone.PLAIN,
                        words.toString().strip().replaceAll(" +", " "),
                        scene.columns());
        return Line.stacked(
                List.of(Line.BLANK), Scene.cut(whole, scene.rows() / 2, "'rigside entries'"));
    }

    Line row(Listing.Row row) {
        if (row instanceof Listing.Row.OfDonning line) {
            return donning(line.donning());
        }
        if (row instanceof Listing.Row.OfEntry line) {
            return entry(line.entry());
        }
        if (row instanceof Listing.Row.OfGap line) {
            boolean gate = line.gap().slot() instanceof Slot.Gate;
            return Line.of(Tone.WARN, gate ? "        WENT ON ALL THE SAME" : "        LEFT OUT")
                    .plus(": " + line.gap().reason() + "; ")
                    .plus(SlotWords.of(scene.state(), line.gap().slot()));
        }
        return Line.of(Tone.STRONG, ((Listing.Row.Heading) row).words());
    }

    private Line donning(Donning donning) {
        String outcome =
                switch (donning.outcome()) {
                    case OPEN -> "going on";
                    case COMPLETE -> "complete";
                    case ABANDONED -> "ABANDONED: " + donning.reason();
                    case STRUCK -> "STRUCK OUT: " + donning.reason();
                };
        return Line.of(
                        Tone.STRONG,
                        "donning "
                                + donning.number()
                                + ", round "
                                + donning.round()
                                + "  "
                                + Header.title(scene.state(), donning.condition()))
                .plus("  " + outcome);
    }

    private Line entry(Entry entry) {
        String value = scene.view().shown().isOut(entry) ? entry.value().toString() : "(concealed)";
        Line line =
                Line.of(String.format("  %4d  ", entry.number()))
                        .plus(Tone.STRONG, String.format("%-16s ", value))
                        .plus(SlotWords.of(scene.state(), entry.slot()))
                        .plus(Tone.QUIET, "  " + from(entry));
        if (entry.struck().isPresent()) {
            return marked(entry, "STRUCK OUT " + value, entry.struck().get().reason() + was(entry));
        }
        if (noLonger.contains(entry.number())) {
            return marked(entry, "NOT COUNTED " + value, Applicable.NO_LONGER + was(entry));
        }
        return entry.lastAmendment()
                .map(last -> marked(entry, "AMENDED " + value, last.reason() + was(entry)))
                .orElse(line);
    }

    /** The values before, the last one first, and where each was from; amended is typed. */
    private String was(Entry entry) {
        StringBuilder was = new StringBuilder();
        for (int at = entry.earlier().size() - 1; at >= 0; at--) {
            Entry.Earlier earlier = entry.earlier().get(at);
            String value =
                    scene.view().shown().isOut(entry, earlier)
                            ? earlier.value().toString()
                            : "(concealed)";
            was.append("; before it was ").append(value).append(", ");
            was.append(source(earlier.source()));
        }
        return was.toString();
    }

    private Line marked(Entry entry, String mark, String why) {
        return Line.of(String.format("  %4d  ", entry.number()))
                .plus(Tone.WARN, mark)
                .plus(": " + why + "; ")
                .plus(SlotWords.of(scene.state(), entry.slot()));
    }

    /** What its pressure trace says, or where it is from. */
    private String from(Entry entry) {
        return TraceWords.of(scene.state(), entry, scene.view().shown().isOut(entry))
                .map(
                        words ->
                                entry.source() == Source.SIMULATED
                                        ? words + "; " + source(entry.source())
                                        : words)
                .orElse(
                        entry.untraced().map(why -> why + "; ").orElse("")
                                + source(entry.source()));
    }

    private static String source(Source source) {
        return switch (source) {
            case TYPED -> "typed";
            case TIMED -> "timed";
            case INSTRUMENT -> "from the instrument";
            case SIMULATED -> "invented";
        };
    }
}
