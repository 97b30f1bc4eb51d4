package rigside.archive;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import rigside.protocol.Subject;

class AnsweredUnlikeTest {

    private static Archived answering(String size, String room) {
        return SomeSession.in(Path.of("one"))
                .fact("size", size, Subject.MASK)
                .fact("room", room, Subject.ROOM)
                .archived();
    }

    @Test
    void anotherSizeIsToldAndAnotherRoomIsNot() {
        assertEquals(
                List.of(
                        "Not the same mask, it seems: 'size?' was answered 'small' and 'large'."
                                + " Part of what differs may be that."),
                AnsweredUnlike.remarks(
                        List.of(
                                answering("small", "20 degC"),
                                answering("large", "22 degC"),
                                answering("small", "20 degC"))));
    }

    @Test
    void theSameAnswerWrittenOtherwiseIsTheSame() {
        assertEquals(
                List.of(),
                AnsweredUnlike.remarks(List.of(answering("Large", ""), answering("large", ""))));
    }

    @Test
    void whoDidNotAnswerSaysNothing() {
        Archived silent = SomeSession.in(Path.of("two")).archived();
        assertEquals(
                List.of(), AnsweredUnlike.remarks(List.of(answering("small", "20 degC"), silent)));
    }

    @Test
    void ofManyAnswersSomeAreTold() {
        List<Archived> many =
                Stream.of("1", "2", "3", "4", "5", "6").map(each -> answering(each, "")).toList();
        String said = AnsweredUnlike.remarks(many).get(0);
        assertTrue(said.contains("'4', '5' and more."), said);
    }

    @Test
    void poolsDaysAndChartsTellIt() {
        Chosen one = answered(Expected.ONE.session(), "small", 1);
        Chosen two = answered(Expected.TWO.session(), "large", 2);
        String said = "was answered 'small' and 'large'";
        assertTrue(told(Pool.of(List.of(one, two)).remarks(), said));
        assertTrue(told(DaysApart.of(one, "plain", two, "plain", List.of()).remarks(), said));
        List<WithValues> values = List.of(one.values(), two.values());
        assertTrue(told(Following.of(values, "breathing", "plain").remarks(), said));
    }

    private static boolean told(List<String> remarks, String words) {
        return remarks.stream().anyMatch(each -> each.contains(words));
    }

    private static Chosen answered(WithValues made, String size, long seed) {
        Archived each = made.session();
        List<Archived.Fact> facts = new ArrayList<>(each.facts());
        facts.add(new Archived.Fact("size", "Size", size, Optional.of(Subject.MASK)));
        return new Chosen(
                new WithValues(
                        new Archived(
                                each.folder(),
                                each.journal(),
                                each.begun(),
                                each.last(),
                                each.closed(),
                                each.simulated(),
                                each.paper(),
                                each.protocol(),
                                facts,
                                each.conditions(),
                                each.measures(),
                                each.completeRounds(),
                                each.findings(),
                                each.damage()),
                        made.values()),
                Optional.of(Protocols.check()),
                seed);
    }
}
