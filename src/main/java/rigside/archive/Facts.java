package rigside.archive;

import java.util.List;
import rigside.protocol.Field;
import rigside.session.Place;
import rigside.session.Slot;
import rigside.session.Stage;
import rigside.session.State;
import rigside.session.Value;

/** What was answered about a session: never concealed. */
final class Facts {
    private static final Place PLACE = new Place(Stage.BEFORE, 0, 0);

    private Facts() {}

    /** In the protocol's order; those without an answer left away. */
    static List<Archived.Fact> of(State state) {
        return state.protocol().facts().stream()
                .flatMap(
                        field ->
                                state
                                        .captured()
                                        .standing(new Slot.Field(PLACE, field.id()))
                                        .map(entry -> words(entry.value()))
                                        .filter(answer -> !answer.isEmpty())
                                        .map(answer -> fact(state, field, answer))
                                        .stream())
                .toList();
    }

    private static Archived.Fact fact(State state, Field field, String answer) {
        return new Archived.Fact(field.id(), field.ask(), answer, state.protocol().subject(field));
    }

    private static String words(Value value) {
        return value.toString().strip();
    }
}
