package rigside.desk;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rigside.desk.DraftQuestion.Kind;
import rigside.screen.DraftAction;
import rigside.screen.DraftView;
import rigside.screen.DraftView.Mode;
import rigside.screen.View;

/**
 * What is seen of a draft, and where the tester is in it: at a question, at what the choices bring,
 * at the file's name, or about to leave.
 *
 * @param draft the answers and the question
 * @param result what the choices bring, once it is known
 * @param first the first line shown of it
 * @param naming whether the name of the file is asked
 * @param name the name typed so far
 * @param leaving whether leaving is asked about
 * @param message the last refusal, if any
 */
record DraftDesk(
        Draft draft,
        Optional<List<String>> result,
        int first,
        boolean naming,
        String name,
        boolean leaving,
        Optional<String> message) {
    /** The name of the question for the file's name. */
    private static final DraftQuestion NAME =
            DraftQuestion.typed(
                    "file",
                    "Under which name is it saved?",
                    "protocol",
                    "A file among your own protocols, on the home screen from then on. Letters,"
                            + " digits and hyphens; nothing is ever written over.");

    private static final String ENDING = ".yaml";

    static DraftDesk begin() {
        return at(Draft.begin());
    }

    private static DraftDesk at(Draft draft) {
        return new DraftDesk(draft, Optional.empty(), 0, false, "", false, Optional.empty());
    }

    /** Whether all is answered, and what it brings is not known yet. */
    boolean awaitsResult() {
        return draft.question().isEmpty() && result.isEmpty();
    }

    DraftDesk with(List<String> lines) {
        return new DraftDesk(draft, Optional.of(lines), 0, naming, name, leaving, message);
    }

    /** The same once the sessions on record are read. */
    DraftDesk with(DraftRecord record) {
        return new DraftDesk(draft.with(record), result, first, naming, name, leaving, message);
    }

    String typed() {
        return naming ? name : draft.typed();
    }

    DraftDesk typing(String text) {
        return naming
                ? new DraftDesk(draft, result, first, true, text, false, Optional.empty())
                : at(draft.typing(text));
    }

    DraftDesk saying(String words) {
        return new DraftDesk(draft, result, first, naming, name, leaving, Optional.of(words));
    }

    /** Whether the name is one that a file may have. */
    boolean isNamed() {
        return naming && !leaving && !DraftAnswers.id(bareName()).isEmpty();
    }

    /** The name of the file: what was typed, or made from the title, as far as it may be one. */
    String fileName() {
        return DraftAnswers.id(bareName()) + ENDING;
    }

    private String bareName() {
        String typed = name.strip();
        return typed.isEmpty()
                ? usualName()
                : typed.endsWith(ENDING)
                        ? typed.substring(0, typed.length() - ENDING.length())
                        : typed;
    }

    private String usualName() {
        String ofTitle = DraftAnswers.id(draft.answers().of("title"));
        return ofTitle.isEmpty() ? NAME.standIn() : ofTitle;
    }

    DraftDesk act(DraftAction action, View.Seen seen) {
        return switch (action) {
            case LEAVE, LEAVE_NOW -> leaving(true);
            case STAY -> leaving(false);
            case CLEAR -> typing("");
            case ERASE -> typing(erased(typed()));
            case TAKE -> take();
            case BACK -> back();
            case TICK -> at(draft.ticking());
            case UP -> moved(-1, seen);
            case DOWN -> moved(1, seen);
            case PAGE_UP -> moved(-seen.page(), seen);
            case PAGE_DOWN -> moved(seen.page(), seen);
        };
    }

    private DraftDesk take() {
        if (naming) {
            return saying("the name has no letter in it that a file's name may begin with");
        }
        return draft.question().isEmpty()
                ? new DraftDesk(draft, result, first, true, "", false, Optional.empty())
                : at(draft.take());
    }

    private DraftDesk back() {
        return naming
                ? new DraftDesk(draft, result, first, false, "", false, Optional.empty())
                : at(draft.back());
    }

    private DraftDesk moved(int by, View.Seen seen) {
        if (draft.question().isPresent()) {
            return at(draft.choosing(by));
        }
        int to = Math.max(0, Math.min(first + by, seen.limit()));
        return new DraftDesk(draft, result, to, naming, name, leaving, Optional.empty());
    }

    private DraftDesk leaving(boolean asked) {
        return new DraftDesk(draft, result, first, naming, name, asked, Optional.empty());
    }

    /** Without its last character, which may be a pair. */
    private static String erased(String text) {
        return text.isEmpty()
                ? text
                : text.substring(0, text.offsetByCodePoints(text.length(), -1));
    }

    DraftView view(View.Style style) {
        if (leaving) {
            return page(Mode.LEAVING, "Leave? What was answered is lost.", List.of(), style);
        }
        if (naming) {
            return asked(NAME, Mode.LINE, usualName(), style);
        }
        Optional<DraftQuestion> question = draft.question();
        if (question.isEmpty()) {
            return page(
                    result.isPresent() ? Mode.RESULT : Mode.WORKING,
                    "What these choices bring",
                    result.orElse(
                            List.of("checking, playing the plan, and rehearsing it once ...")),
                    style);
        }
        Kind kind = question.get().kind();
        Mode mode =
                kind instanceof Kind.Text
                        ? Mode.LINE
                        : kind instanceof Kind.One ? Mode.ONE : Mode.SEVERAL;
        return asked(question.get(), mode, question.get().usual(), style);
    }

    private DraftView asked(DraftQuestion question, Mode mode, String usual, View.Style style) {
        return new DraftView(
                mode,
                notice(),
                question.ask(),
                question.why(),
                question.options().stream()
                        .map(
                                each ->
                                        new DraftView.Option(
                                                each.label(), draft.ticked().contains(each.word())))
                        .toList(),
                draft.chosen(),
                typed(),
                usual,
                answered(),
                message.or(draft::message).orElse(""),
                !naming && !draft.offer().answers().isEmpty(),
                style);
    }

    private DraftView page(Mode mode, String heading, List<String> lines, View.Style style) {
        return new DraftView(
                mode,
                notice(),
                heading,
                lines,
                List.of(),
                first,
                "",
                "",
                List.of(),
                message.orElse(""),
                false,
                style);
    }

    private String notice() {
        int given = draft.answers().all().size();
        return draft.question().isEmpty()
                ? "[all answered]"
                : "[question " + (given + 1) + " of " + draft.total() + "]";
    }

    private List<String> answered() {
        List<String> lines = new ArrayList<>();
        draft.answers()
                .all()
                .forEach((id, answer) -> lines.add(id + ": " + (answer.isEmpty() ? "-" : answer)));
        return lines;
    }
}
