package rigside.command;

import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import rigside.archive.Archived;
import rigside.journal.Damage;
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

    private static final DateTimeFormatter WHEN =
            DateTimeFormatter.ofPattern("uuuu-MM-dd HH:mm", Locale.ROOT);
    private static final int WHEN_WIDTH = 16;

    private SessionsText() {}

    /**
     * The table and a line with the total.
     *
     * @param all how many sessions there are with those that were not asked for
     */
    static String of(List<Archived> found, int all) {
        StringBuilder text = new StringBuilder();
        if (!found.isEmpty()) {
            int wearer =
                    found.stream()
                            .map(SessionsText::wearer)
                            .mapToInt(Legible::width)
                            .reduce("wearer".length(), Math::max);
            String heads = padded("begun", WHEN_WIDTH) + GAP + padded("wearer", wearer) + GAP;
            text.append(heads).append("rounds").append(GAP).append("what, and what came of it\n");
            found.forEach(each -> row(each, wearer, text));
            text.append('\n');
        }
        return text.append(total(found, all)).append('\n').toString();
    }

    private static void row(Archived session, int wearer, StringBuilder text) {
        String begun = session.begun().map(WHEN::format).orElse("unknown");
        String first =
                padded(begun, WHEN_WIDTH)
                        + GAP
                        + padded(wearer(session), wearer)
                        + GAP
                        + String.format("%6d", session.completeRounds())
                        + GAP;
        List<String> lines = lines(session, WIDTH - first.length());
        text.append(first).append(lines.get(0)).append('\n');
        String under = " ".repeat(first.length());
        lines.stream().skip(1).forEach(line -> text.append(under).append(line).append('\n'));
    }

    /** The last one, the folder's name, may be wider than there is room for: it is to be copied. */
    private static List<String> lines(Archived session, int width) {
        List<String> lines = new ArrayList<>();
        texts(session).forEach(each -> lines.addAll(Wrapped.of(each, width)));
        lines.add(Legible.of(session.name()));
        return lines;
    }

    private static Stream<String> texts(Archived session) {
        Stream<String> title =
                session
                        .protocol()
                        .map(Archived.Followed::title)
                        .map(each -> each + aside(session))
                        .stream();
        Stream<String> state = session.closed() ? Stream.of() : Stream.of("open");
        Stream<String> findings = session.findings().stream().map(each -> finding(session, each));
        Stream<String> damage =
                session.damage().stream().limit(1).map(Damage::what).map("damaged: "::concat);
        return Stream.of(title, session.damage().isEmpty() ? state : damage, findings)
                .flatMap(each -> each);
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
