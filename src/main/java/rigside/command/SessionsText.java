package rigside.command;

import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import rigside.archive.Archived;
import rigside.report.Legible;
import rigside.report.Wrapped;

/**
 * Sessions as a table: when, who, how many rounds, and what it was about, with what came of it and
 * the name of its folder, which every other command takes.
 */
final class SessionsText {
    private static final int WIDTH = 80;
    private static final int LONGEST_WEARER = 12;
    private static final String GAP = "  ";

    private static final int WHEN_WIDTH = 16;
    private static final int ROUNDS_WIDTH = "rounds".length();

    /** Widths of the first columns, and texts in lines: thousands of sessions share a few. */
    private final int wearerWidth;

    private final Map<String, List<String>> wrapped = new HashMap<>();
    private final StringBuilder text = new StringBuilder();

    private SessionsText(int wearerWidth) {
        this.wearerWidth = wearerWidth;
    }

    /**
     * The table and a line with the total.
     *
     * @param all how many sessions there are with those that were not asked for
     */
    static String of(List<Archived> found, int all) {
        String total = total(found, all) + '\n';
        return found.isEmpty() ? total : table(found) + '\n' + total;
    }

    private static String table(List<Archived> found) {
        int wearer =
                found.stream()
                        .map(SessionsText::wearer)
                        .mapToInt(Legible::width)
                        .reduce("wearer".length(), Math::max);
        SessionsText table = new SessionsText(wearer);
        table.line("begun", "wearer", "rounds", "what, and what came of it");
        found.forEach(table::row);
        return table.text.toString();
    }

    private void line(String begun, String wearer, String rounds, String what) {
        text.append(padded(begun, WHEN_WIDTH)).append(GAP);
        text.append(padded(wearer, wearerWidth)).append(GAP);
        text.append(" ".repeat(Math.max(0, ROUNDS_WIDTH - rounds.length())))
                .append(rounds)
                .append(GAP);
        text.append(what).append('\n');
    }

    /**
     * The last line, the folder's name, may be wider than there is room for: it is to be copied.
     */
    private void row(Archived session) {
        int before = WHEN_WIDTH + wearerWidth + ROUNDS_WIDTH + 3 * GAP.length();
        List<String> lines = new ArrayList<>();
        for (String each : texts(session)) {
            lines.addAll(wrapped.computeIfAbsent(each, raw -> Wrapped.of(raw, WIDTH - before)));
        }
        lines.add(Legible.of(session.name()));
        String rounds = Integer.toString(session.completeRounds());
        line(begun(session), wearer(session), rounds, lines.get(0));
        String under = " ".repeat(before);
        for (String each : lines.subList(1, lines.size())) {
            text.append(under).append(each).append('\n');
        }
    }

    private static String begun(Archived session) {
        return session.begun()
                .map(at -> at.toLocalDateTime().truncatedTo(ChronoUnit.MINUTES))
                .map(at -> at.toString().replace('T', ' '))
                .orElse("unknown");
    }

    private static List<String> texts(Archived session) {
        List<String> texts = new ArrayList<>();
        session.protocol().ifPresent(each -> texts.add(each.title() + aside(session)));
        if (!session.damage().isEmpty()) {
            texts.add("damaged: " + session.damage().get(0).what());
        } else if (!session.closed()) {
            texts.add("open");
        }
        for (Archived.Finding each : session.findings()) {
            texts.add(finding(session, each));
        }
        return texts;
    }

    private static String aside(Archived session) {
        String paper = session.paper().isPresent() ? " (from paper)" : "";
        return session.simulated() ? " (simulated)" + paper : paper;
    }

    private static String finding(Archived session, Archived.Finding finding) {
        boolean oneOnly = session.conditions().size() == 2;
        return finding.measure()
                + (oneOnly ? "" : ", " + finding.condition())
                + ": "
                + finding.words();
    }

    private static String total(List<Archived> found, int all) {
        long closed = found.stream().filter(Archived::closed).count();
        String count = found.size() == all ? sessions(all) : found.size() + " of " + sessions(all);
        return found.isEmpty() ? count : count + ", " + closed + " closed";
    }

    private static String sessions(int count) {
        return count + (count == 1 ? " session" : " sessions");
    }

    private static String wearer(Archived session) {
        String code = Legible.of(session.wearer().orElse("-"));
        if (Legible.width(code) <= LONGEST_WEARER) {
            return code;
        }
        StringBuilder cut = new StringBuilder();
        code.codePoints()
                .takeWhile(
                        point -> Legible.width(cut + Character.toString(point)) <= LONGEST_WEARER)
                .forEach(cut::appendCodePoint);
        return cut.toString();
    }

    private static String padded(String text, int width) {
        return text + " ".repeat(Math.max(0, width - Legible.width(text)));
    }
}
