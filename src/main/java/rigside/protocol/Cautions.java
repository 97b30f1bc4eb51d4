package rigside.protocol;

/** What is to be heeded where a protocol asks for breathing, for those who write one. */
final class Cautions {
    static final String UNWELL =
            "Stop at once and breathe freely at any dizziness, tingling, chest pain, headache,"
                    + " cough or unease: take the mask off, sit down.";
    static final String[] BREATHS = {
        UNWELL,
        "Full breaths in a row wash out carbon dioxide and make light-headed: give each a rest of a"
                + " minute, ask for few, and let the tester sit on a steady chair without wheels.",
        "Not with heart or lung disease, in pregnancy, when told not to strain, when ill, or after"
                + " a recent heart attack, collapsed lung, or eye, chest or abdominal surgery: a doctor"
                + " is asked first."
    };
    static final String[] EXERCISE = {
        UNWELL,
        "Keep the floor clear and tubes taped down where the head is turned or the wearer bends"
                + " over.",
        "Ask for nothing that takes the mask off in bad air: test in clean room air only."
    };

    private Cautions() {}
}
