package rigside.protocol;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/** What a fact is about is known of every file, or known to be unknown. */
class SubjectTest {
    private static final Protocol BASE = Shipped.protocol("rigside/protocol/base.yaml");

    @ParameterizedTest(name = "{0}")
    @CsvSource({
        "wearer, WEARER_CODE",
        "mask, MASK",
        "mask-size, MASK",
        "room-temperature, ROOM",
        "counter, INSTRUMENT",
        "gauge, INSTRUMENT",
        "lungs, WEARER",
        "wearer-weight,",
        "room,",
        "counter-2,",
        "colour,"
    })
    void anIdTellsItWhereTheFileDoesNot(String id, Subject subject) {
        assertEquals(Optional.ofNullable(subject), BASE.subject(field(id, Optional.empty())));
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource({"wearer", "mask-size", "lungs", "colour"})
    void whatTheFileSaysHolds(String id) {
        assertEquals(Optional.of(Subject.ROOM), BASE.subject(field(id, Optional.of(Subject.ROOM))));
    }

    @Test
    void aFieldOfAFormMaySayItToo() {
        String text =
                Shipped.text("rigside/protocol/base.yaml")
                        .replace("id: slipping", "id: slipping\n        about: mask");
        Protocol protocol = ((Read.Good) ProtocolReader.read("file.yaml", text)).protocol();
        Step.Observations step = (Step.Observations) protocol.donning().get(5);
        assertEquals(
                Stream.of(Optional.empty(), Optional.of(Subject.MASK)).toList(),
                step.fields().stream().map(protocol::subject).toList());
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("rigside.protocol.Shipped#names")
    void everyFactOfAShippedProtocolSaysWhatItIsAbout(String name) {
        Protocol protocol = Shipped.protocol(name);
        for (Field fact : protocol.facts()) {
            assertEquals(protocol.subject(fact), fact.about(), fact.id());
        }
    }

    private static Field field(String id, Optional<Subject> about) {
        return new Field(id, "Asked", new Field.Words(20), false, about);
    }
}
