package rigside.bench;

import rigside.screen.View.Prompt;
import rigside.session.Input;

/** What is seen on the typed line while a rehearsed tester is about to press a key. */
final class Typing {
    private Typing() {}

    /** With the text and the question it answers, where the key confirms one. */
    static Ui of(Ui ui, Input key) {
        if (key instanceof Input.Typed typed) {
            return ui.typing(typed.text());
        }
        if (key instanceof Input.CheckFailed failed) {
            return asked(ui, Prompt.CHECK_FAILED, failed.what());
        }
        if (key instanceof Input.LeaveOutAsked left) {
            return asked(ui, Prompt.LEAVE_OUT_REASON, left.reason());
        }
        if (key instanceof Input.RetakeAsked again) {
            return asked(ui, Prompt.RETAKE_REASON, again.reason());
        }
        if (key instanceof Input.StrikeAsked struck) {
            return asked(ui, Prompt.STRIKE_REASON, struck.reason());
        }
        if (key instanceof Input.AbandonAsked abandoned) {
            return asked(ui, Prompt.ABANDON_REASON, abandoned.reason());
        }
        return key instanceof Input.EndAsked ended
                ? asked(ui, Prompt.END_REASON, ended.reason())
                : ui;
    }

    private static Ui asked(Ui ui, Prompt prompt, String reason) {
        return ui.asking(prompt, 0).typing(reason);
    }
}
