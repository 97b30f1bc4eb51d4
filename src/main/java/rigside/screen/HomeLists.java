package rigside.screen;

import java.util.ArrayList;
import java.util.List;

/** The protocols to start from, and below them the sessions. */
record HomeLists(HomeView view, int columns, Glyphs signs) {

    /** The lists with the selected line in sight. */
    List<Line> lines(int room) {
        List<Line> above = new ArrayList<>();
        above.add(heading("Start from a protocol", view.protocols().size()));
        for (int at = 0; at < view.protocols().size(); at++) {
            above.add(row(at, protocol(view.protocols().get(at))));
        }
        above.add(Line.BLANK);
        above.add(sessions());
        int first = above.size();
        int states = states();
        boolean ofProtocols = view.selected() < view.protocols().size();
        int chosen = view.selected() + (ofProtocols ? 1 : first - view.protocols().size());
        return Scene.around(
                first + view.sessions().size(),
                at -> at < first ? above.get(at) : session(at - first, states),
                chosen,
                room);
    }

    /** The heading of the sessions: whether they are all, and whether they are read. */
    private Line sessions() {
        HomeView.Sought sought = view.sought();
        String aside =
                !sought.progress().isEmpty()
                        ? "   " + sought.progress()
                        : sought.isNarrow()
                                ? "   "
                                        + view.sessions().size()
                                        + " of "
                                        + sought.all()
                                        + " with '"
                                        + sought.words().strip()
                                        + "'"
                                : view.sessions().isEmpty() ? "   none yet" : "";
        return Line.of(Tone.STRONG, " Sessions")
                .plus(Tone.QUIET, aside)
                .cut(columns - 1, signs.cut());
    }

    private Line session(int at, int states) {
        return row(view.protocols().size() + at, session(view.sessions().get(at), states));
    }

    private static Line heading(String words, int count) {
        return Line.of(Tone.STRONG, " " + words).plus(Tone.QUIET, count == 0 ? "   none yet" : "");
    }

    private Line row(int number, Line what) {
        boolean chosen = number == view.selected();
        Line line =
                Line.of(chosen ? " " + signs.here() + " " : "   ")
                        .plus(what)
                        .cut(columns - 1, signs.cut());
        return chosen ? line.in(Tone.INVERSE).padded(columns - 1, Tone.INVERSE) : line;
    }

    private Line protocol(HomeView.ProtocolItem item) {
        int room = room();
        return named(item).cut(room, signs.cut()).padded(room + 2, Tone.PLAIN).plus(right(item));
    }

    private static Line named(HomeView.ProtocolItem item) {
        return Line.of(
                        item.own() ? Tone.STRONG : Tone.QUIET,
                        item.own() ? "own      " : "shipped  ")
                .plus(item.title().isEmpty() ? item.name() : item.title());
    }

    /** Whether there is no room in its line for the whole title of a protocol. */
    boolean cuts(HomeView.ProtocolItem item) {
        return named(item).width() > room();
    }

    /** What of a protocol's line is left of how long its round takes. */
    private int room() {
        return columns
                - view.protocols().stream().mapToInt(each -> right(each).width()).max().orElse(0)
                - 7;
    }

    /** How long a round takes, or that the file has problems. */
    private static Line right(HomeView.ProtocolItem item) {
        return item.problems() == 0
                ? Line.of(Tone.QUIET, item.round())
                : Line.of(Tone.WARN, "! " + Texts.count(item.problems(), "problem"));
    }

    private Line session(HomeView.SessionItem item, int states) {
        String sign = item.open() ? "open  " : "done  ";
        Line name =
                Line.of(item.open() ? Tone.STRONG : Tone.QUIET, sign)
                        .plus(item.when() + "  ")
                        .plus(item.title());
        int room = columns - states - 7;
        return name.cut(room, signs.cut()).padded(room + 2, Tone.PLAIN).plus(item.state());
    }

    /** How wide the widest state is. */
    private int states() {
        return view.sessions().stream()
                .mapToInt(each -> Clean.width(Clean.text(each.state())))
                .max()
                .orElse(0);
    }
}
