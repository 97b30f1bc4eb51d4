package rigside.desk;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import rigside.archive.Archived;
import rigside.screen.HomeView;
import rigside.screen.HomeView.Page;
import rigside.screen.HomeView.Review;
import rigside.screen.View;

/**
 * What the home screen shows, and where the tester is on it.
 *
 * @param protocols the protocols at hand
 * @param sessions the sessions kept, and what is searched for in them
 * @param page what is looked at
 * @param line the selected line of the home page, protocols first, then sessions
 * @param scrolled the first line shown of any other page
 * @param left where the review stood when another page was opened from it
 * @param rig what will answer for the instruments
 * @param review what is read through
 * @param message the last refusal or confirmation, if any
 */
record Desk(
        List<ProtocolFile> protocols,
        SessionList sessions,
        Page page,
        int line,
        int scrolled,
        int left,
        Choice rig,
        Review review,
        Optional<String> message) {

    static Desk of(List<ProtocolFile> protocols, List<Archived> sessions, Choice rig) {
        return new Desk(
                protocols,
                SessionList.of(sessions),
                Page.HOME,
                0,
                0,
                0,
                rig,
                Review.NONE,
                Optional.empty());
    }

    HomeView view(View.Style style) {
        return new HomeView(
                page,
                protocols.stream().map(Items::of).toList(),
                sessions.items(),
                sessions.sought(),
                page == Page.HOME ? line : scrolled,
                rig.shown(),
                review,
                message,
                style);
    }

    /** The protocol chosen, if one is. */
    Optional<ProtocolFile> protocol() {
        return line < protocols.size() ? Optional.of(protocols.get(line)) : Optional.empty();
    }

    /** The session chosen, if one is. */
    Optional<Archived> session() {
        return sessions.at(line - protocols.size());
    }

    /** On a page opened from here; one opened from a review leads back to it. */
    Desk at(Page next) {
        int from = page == Page.REVIEW ? scrolled : left;
        return with(next, line, 0, from, review);
    }

    /** Back to where this page was opened from. */
    Desk back() {
        boolean above = page != Page.REVIEW && !review.equals(Review.NONE);
        return above
                ? with(Page.REVIEW, line, left, 0, review)
                : with(Page.HOME, line, 0, 0, Review.NONE);
    }

    Desk reading(Review lines) {
        return with(Page.REVIEW, line, 0, 0, lines);
    }

    /** The same page with other lines in what is read, still at its first line. */
    Desk nowReading(Review lines) {
        return with(page, line, scrolled, left, lines);
    }

    /** On a protocol, by where it lies; where it is not there, on the same line as before. */
    Desk on(Path own) {
        for (int at = 0; at < protocols.size(); at++) {
            if (protocols.get(at).at().filter(own::equals).isPresent()) {
                return with(page, at, scrolled, left, review);
            }
        }
        return this;
    }

    private Desk with(Page next, int at, int first, int from, Review read) {
        return new Desk(protocols, sessions, next, at, first, from, rig, read, Optional.empty());
    }

    Desk with(Choice changed) {
        return new Desk(
                protocols, sessions, page, line, scrolled, left, changed, review, Optional.empty());
    }

    Desk with(List<ProtocolFile> files, List<Archived> kept) {
        return with(files).with(SessionList.of(kept));
    }

    /** Other protocols; the session that was selected stays so. */
    Desk with(List<ProtocolFile> files) {
        int moved = session().isPresent() ? files.size() - protocols.size() : 0;
        return at(files, sessions, line + moved);
    }

    /** Other sessions; the one that was selected stays so while it is there. */
    Desk with(SessionList kept) {
        int now = session().map(kept::position).orElse(-1);
        return at(protocols, kept, now < 0 ? line : protocols.size() + now);
    }

    /** Other words searched for: the first session found is selected. */
    Desk searching(SessionList found) {
        return at(protocols, found, protocols.size()).silent();
    }

    private Desk at(List<ProtocolFile> files, SessionList kept, int at) {
        int last = Math.max(0, files.size() + kept.size() - 1);
        return new Desk(
                files, kept, page, Math.min(at, last), scrolled, left, rig, review, message);
    }

    /** On a session; where it is not there, on the same line as before. */
    Desk on(Optional<Archived> session) {
        int at = session.map(sessions::position).orElse(-1);
        return at < 0 ? this : with(page, protocols.size() + at, scrolled, left, review);
    }

    Desk saying(String words) {
        return new Desk(
                protocols, sessions, page, line, scrolled, left, rig, review, Optional.of(words));
    }

    Desk silent() {
        return with(page, line, scrolled, left, review);
    }

    /** Moved up or down by some lines, no further than {@code limit}. */
    Desk moved(int by, int limit) {
        int from = page == Page.HOME ? line : scrolled;
        int to = Math.max(0, Math.min(from + by, limit));
        return page == Page.HOME
                ? with(page, to, scrolled, left, review)
                : with(page, line, to, left, review);
    }

    /** On the first line of the other list. */
    Desk inOtherList() {
        int to = line < protocols.size() && sessions.size() > 0 ? protocols.size() : 0;
        return with(page, to, scrolled, left, review);
    }
}
