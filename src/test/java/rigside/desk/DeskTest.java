package rigside.desk;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import rigside.archive.Archived;
import rigside.archive.SomeSession;
import rigside.journal.Damage;
import rigside.screen.HomeView;
import rigside.screen.HomeView.Page;
import rigside.screen.View;
import rigside.session.Story;

class DeskTest {
    private static final View.Style PLAIN = new View.Style(View.Colours.NONE, false);

    private final ProtocolFile good =
            ProtocolFile.of("small.yaml", Story.text("/session/small.yaml"), "");
    private final ProtocolFile bad = ProtocolFile.of("bad.yaml", "format: 1\n", "");
    private final Archived session = listed(List.of());
    private final Desk desk = Desk.of(List.of(good, bad), List.of(session), Choice.TYPED);

    private static Archived listed(List<Damage> damage) {
        return SomeSession.in(Path.of("sessions/one"))
                .about("Disc", "Does it?")
                .comparing("plain", "disc")
                .simulated()
                .rounds(1)
                .damaged(damage)
                .archived();
    }

    @Test
    void protocolsComeBeforeSessions() {
        assertEquals(Optional.of(good), desk.protocol());
        assertEquals(Optional.of(bad), desk.moved(1, 2).protocol());
        Desk last = desk.moved(5, 2);
        assertEquals(Optional.empty(), last.protocol());
        assertEquals(Optional.of(session), last.session());
    }

    @Test
    void theOtherListBeginsAtItsFirstLine() {
        Desk sessions = desk.inOtherList();
        assertEquals(Optional.of(session), sessions.session());
        assertEquals(Optional.of(good), sessions.inOtherList().protocol());
    }

    /** As the program begins: protocols are read into an empty page, sessions after them. */
    @Test
    void thePageBeginsOnItsFirstProtocol() {
        Desk begun = Desk.of(List.of(), List.of(), Choice.TYPED).with(List.of(good, bad));
        assertEquals(Optional.of(good), begun.protocol());
        assertEquals(Optional.of(good), begun.with(SessionList.of(List.of(session))).protocol());
    }

    @Test
    void withoutSessionsTheOtherListIsThisOne() {
        Desk none = desk.with(List.of(good, bad), List.of());
        assertEquals(Optional.of(good), none.inOtherList().protocol());
    }

    @Test
    void theSelectionStaysWithinWhatIsThere() {
        Desk last = desk.moved(2, 2).with(List.of(good), List.of());
        assertEquals(Optional.of(good), last.protocol());
    }

    @Test
    void readingScrollsAndComesBackToTheSameLine() {
        Desk reading = desk.moved(1, 2).reading(new HomeView.Review("bad", List.of("a", "b")));
        Desk scrolled = reading.moved(1, 1);
        assertEquals(1, scrolled.view(PLAIN).selected());
        Desk back = scrolled.back();
        assertEquals(Page.HOME, back.page());
        assertEquals(1, back.view(PLAIN).selected());
        assertEquals(Optional.of(bad), back.protocol());
    }

    @Test
    void whatIsOpenedFromAReviewLeadsBackToWhereItStood() {
        HomeView.Review review = new HomeView.Review("bad", List.of("a", "b", "c"));
        Desk reading = desk.reading(review).moved(2, 2);
        for (Page page : List.of(Page.HELP, Page.METHOD, Page.FLAGS)) {
            Desk back = reading.at(page).moved(1, 5).back();
            assertEquals(Page.REVIEW, back.page());
            assertEquals(review, back.review());
            assertEquals(2, back.view(PLAIN).selected());
            assertEquals(Page.HOME, back.back().page());
        }
        Desk twice = reading.at(Page.METHOD).moved(1, 5).at(Page.HELP).back();
        assertEquals(Page.REVIEW, twice.page());
        assertEquals(2, twice.view(PLAIN).selected());
    }

    @Test
    void helpOpenedAtHomeLeadsHomeAfterAReviewToo() {
        Desk home = desk.reading(new HomeView.Review("bad", List.of("a"))).back();
        assertEquals(Page.HOME, home.at(Page.HELP).back().page());
    }

    @Test
    void theCursorStandsOnASessionThatIsAskedFor() {
        assertEquals(Optional.of(session), desk.on(Optional.of(session)).session());
        assertEquals(Optional.of(good), desk.on(Optional.empty()).protocol());
    }

    @Test
    void theCursorStandsOnTheFileThatIsAskedFor() {
        ProtocolFile own = good.at(Path.of("own/small.yaml"));
        Desk both = desk.with(List.of(good, own), List.of());
        assertEquals(Optional.of(own), both.on(Path.of("own/small.yaml")).protocol());
        assertEquals(Optional.of(good), both.on(Path.of("own/other.yaml")).protocol());
        assertTrue(both.view(PLAIN).protocols().get(1).own());
    }

    @Test
    void aBrokenProtocolShowsHowManyProblemsItHas() {
        HomeView view = desk.view(PLAIN);
        assertEquals(0, view.protocols().get(0).problems());
        assertEquals(bad.problems().size(), view.protocols().get(1).problems());
        assertTrue(view.protocols().get(1).problems() > 1);
    }

    @Test
    void theRigChangesBetweenTypedAndSimulatedAndKeepsItsSpeed() {
        assertFalse(desk.view(PLAIN).rig().simulated());
        Desk simulated = desk.with(desk.rig().other(List.of()));
        assertTrue(simulated.view(PLAIN).rig().simulated());
        assertEquals(30, simulated.view(PLAIN).rig().speed());
        assertEquals(120, simulated.rig().faster().speed());
        assertEquals(1, simulated.rig().faster().faster().speed());
        assertEquals(1, desk.rig().effectiveSpeed());
    }

    @Test
    void aDamagedSessionIsShownAsSuchAndCannotBeGoneOnWith() {
        Damage damage = new Damage("one/journal.jsonl", 3, "not a line of a journal", "");
        Desk damaged = desk.with(List.of(), List.of(listed(List.of(damage))));
        HomeView.SessionItem item = damaged.view(PLAIN).sessions().get(0);
        assertEquals("damaged", item.state());
        assertFalse(item.open());
        assertTrue(item.detail().contains(damage.toString()));
    }

    @Test
    void aPlanIsCountedInWhatItCounts() {
        String trials =
                Story.text("/session/small.yaml")
                        .replace("meaningful: 2 times\n", "meaningful: 2 times\n    decides: no\n")
                        .replace(
                                "  most: 4\n",
                                "  most: 8\n  design: independent\n  replicates: trials\n");
        List<String> detail = Items.of(ProtocolFile.of("trials.yaml", trials, "")).detail();
        assertTrue(
                detail.stream()
                        .anyMatch(
                                each ->
                                        each.startsWith(
                                                "2 to 8 values per condition, in rounds of about"
                                                        + " ")),
                detail.toString());
        assertTrue(
                Items.of(good).detail().stream()
                        .anyMatch(each -> each.startsWith("2 to 4 rounds of about ")));
    }
}
