package rigside.desk;

import java.util.List;
import java.util.Optional;
import rigside.archive.Archived;
import rigside.archive.Search;
import rigside.screen.HomeView;
import rigside.screen.HomeView.SessionItem;

/**
 * The sessions of the home page, and the words that are searched for in them.
 *
 * @param all every session, the latest first
 * @param found those in which all the words are found, in the same order
 * @param words as they were typed
 * @param typing whether they are being typed
 * @param progress how far the reading of sessions has come, in words; empty when it is done
 */
record SessionList(
        List<Line> all, List<Line> found, String words, boolean typing, String progress) {
    /** More words than that nobody types to find a session. */
    private static final int LONGEST = 60;

    static final SessionList NONE = new SessionList(List.of(), List.of(), "", false, "");

    /**
     * One session.
     *
     * @param item how the page shows it
     * @param text what words are looked for in
     */
    record Line(Archived session, SessionItem item, String text) {
        static Line of(Archived session) {
            return new Line(session, Items.of(session), Search.text(session));
        }
    }

    static SessionList of(List<Archived> sessions) {
        return NONE.with(lines(sessions));
    }

    static List<Line> lines(List<Archived> sessions) {
        return sessions.stream().map(Line::of).toList();
    }

    /** These sessions, the words still searched for. */
    SessionList with(List<Line> sessions) {
        return new SessionList(sessions, found(sessions, words), words, typing, "");
    }

    SessionList reading(String how) {
        return new SessionList(all, found, words, typing, how);
    }

    /** The words are typed from now on. */
    SessionList asking() {
        return new SessionList(all, found, words, true, progress);
    }

    /** The words stay as they are. */
    SessionList asked() {
        return new SessionList(all, found, words.strip(), false, progress);
    }

    SessionList typed(char next) {
        return words.length() < LONGEST ? searched(words + next, true) : this;
    }

    SessionList erased() {
        return words.isEmpty() ? this : searched(words.substring(0, words.length() - 1), true);
    }

    /** All sessions again. */
    SessionList dropped() {
        return searched("", false);
    }

    private SessionList searched(String now, boolean stillTyping) {
        List<Line> among = now.startsWith(words) ? found : all;
        return new SessionList(all, found(among, now), now, stillTyping, progress);
    }

    private static List<Line> found(List<Line> among, String words) {
        Search search = Search.of(words);
        return search.isForAll()
                ? among
                : among.stream().filter(each -> search.finds(each.text())).toList();
    }

    int size() {
        return found.size();
    }

    Optional<Archived> at(int position) {
        return position >= 0 && position < found.size()
                ? Optional.of(found.get(position).session())
                : Optional.empty();
    }

    /** Where a session stands among those found, by its folder; below 0 when it does not. */
    int position(Archived session) {
        for (int at = 0; at < found.size(); at++) {
            if (found.get(at).session().folder().equals(session.folder())) {
                return at;
            }
        }
        return -1;
    }

    Optional<Archived> latest() {
        return all.stream().findFirst().map(Line::session);
    }

    List<SessionItem> items() {
        return found.stream().map(Line::item).toList();
    }

    HomeView.Sought sought() {
        return new HomeView.Sought(typing, words, all.size(), progress);
    }
}
