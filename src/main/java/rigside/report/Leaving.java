package rigside.report;

import java.util.EnumMap;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import rigside.protocol.Field;
import rigside.protocol.Step;
import rigside.protocol.Subject;
import rigside.session.Entry;
import rigside.session.Procedure;
import rigside.session.Slot;
import rigside.session.Stage;
import rigside.session.State;
import rigside.session.Value;

/** What of a session is not told to others, and a count of it. */
final class Leaving {
    /** What stands in the place of words that were left out. */
    static final String REASON = "reason left out";

    static final String WORDS = "left out";

    /** Reasons that the program gives. */
    private static final Set<String> OWN =
            Set.of(
                    "left empty",
                    "undone",
                    "the pull was not held",
                    "enough",
                    "the plan is used up",
                    "stopped by the tester",
                    "the session was interrupted");

    private static final String CHECK = "check failed: ";

    private final State state;
    private final CopyToShare.Terms terms;
    private final Map<LeftOut, Integer> leftOut = new EnumMap<>(LeftOut.class);
    private final Set<String> texts = new TreeSet<>();

    /** Why entries were offered for voiding, in the program's words, by their numbers. */
    private final Map<Integer, String> offered = new HashMap<>();

    Leaving(State state, CopyToShare.Terms terms) {
        this.state = state;
        this.terms = terms;
    }

    Map<LeftOut, Integer> leftOut() {
        return leftOut;
    }

    Set<String> texts() {
        return texts;
    }

    void count(LeftOut kind, String text) {
        leftOut.merge(kind, 1, Integer::sum);
        if (!text.isBlank()) {
            texts.add(text.strip());
        }
    }

    String without(LeftOut kind, String text, String instead) {
        if (text.isEmpty() || text.equals(instead)) {
            return text;
        }
        count(kind, text);
        return instead;
    }

    String reason(String typed) {
        if (OWN.contains(typed)) {
            return typed;
        }
        // The text of a check is the protocol's; what follows it in brackets was typed.
        Optional<String> check = checks().filter(typed::startsWith).findFirst();
        if (check.isPresent()) {
            String added = typed.substring(check.get().length()).strip();
            without(LeftOut.REASON, added.replaceAll("^\\(|\\)$", ""), "");
            return check.get();
        }
        return without(LeftOut.REASON, typed, REASON);
    }

    private Stream<String> checks() {
        return Stream.of(Stage.values())
                .flatMap(stage -> Procedure.steps(state.protocol(), stage).stream())
                .filter(Step.Checklist.class::isInstance)
                .flatMap(step -> ((Step.Checklist) step).items().stream())
                .map(item -> CHECK + item.text());
    }

    /** A path's last part. */
    String name(String path) {
        String name = path.substring(path.replace('\\', '/').lastIndexOf('/') + 1);
        if (!name.equals(path)) {
            count(LeftOut.PLACE, path.substring(0, path.length() - name.length() - 1));
        }
        return name;
    }

    /** Why an answer is left out; empty where it is kept. */
    Optional<LeftOut> why(Slot.Field slot) {
        Field field = Procedure.field(state, slot);
        if (terms.kept().contains(field.id())) {
            return Optional.empty();
        }
        Optional<Subject> subject = state.protocol().subject(field);
        if (subject.equals(Optional.of(Subject.WEARER_CODE))) {
            return Optional.of(LeftOut.WEARER_CODE);
        }
        if (subject.equals(Optional.of(Subject.WEARER))) {
            return Optional.of(LeftOut.WEARER);
        }
        boolean isFact = slot.place().stage() == Stage.BEFORE && slot.place().step() == 0;
        if (isFact) {
            return subject.isEmpty() ? Optional.of(LeftOut.UNKNOWN_SUBJECT) : Optional.empty();
        }
        return field.answer() instanceof Field.Words
                ? Optional.of(LeftOut.FREE_WORDS)
                : Optional.empty();
    }

    Value value(Slot slot, Value value) {
        Optional<LeftOut> why = slot instanceof Slot.Field field ? why(field) : Optional.empty();
        if (why.isEmpty()) {
            return value;
        }
        if (!value.toString().isEmpty()) {
            count(why.get(), value.toString());
        }
        return new Value.Said(
                why.get() == LeftOut.WEARER_CODE ? terms.wearerCode().orElse("") : "");
    }

    Optional<Slot> slot(int entry) {
        return state.captured().entry(entry).map(Entry::slot);
    }

    void offered(int entry, String why) {
        offered.put(entry, why);
    }

    /** Whether these are the program's words for why the entry may be implausible. */
    boolean isOffered(int entry, String why) {
        return why.equals(offered.get(entry));
    }
}
