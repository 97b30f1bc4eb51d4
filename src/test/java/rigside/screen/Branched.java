package rigside.screen;

import rigside.session.Input;
import rigside.session.Story;

/** Sessions of the protocol with groups, whose steps depend on answers. Invented. */
final class Branched {
    private Branched() {}

    /** The first donning's seal check waits: a no goes on. */
    static Story atSealCheck() {
        return Story.of("/session/groups.yaml").goOn().type("60").type("shaved").goOn();
    }

    /** The seal failed once; the check that is done again waits. */
    static Story sealedAtSecond() {
        return atSealCheck().answer(false).goOn().goOn();
    }

    /** The answer that asked for one entry more was struck out, and given anew. */
    static Story answerStruckOut() {
        Story story = atSealCheck().goOn().goOn().type("50").type("51").type("52");
        story.type("101").type("wet").send(new Input.VoidAsked(6, "misread"));
        return story.type("99");
    }
}
