package rigside.desk;

import java.util.List;

/**
 * One question of a draft.
 *
 * @param id by which its answer is known
 * @param ask the question
 * @param why what a usual choice is and what hangs on it; one paragraph each
 * @param kind how it is answered
 * @param usual what Enter takes with nothing typed, or is chosen at first; empty when there is none
 * @param standIn a good answer for as long as there is none, so that what was answered before can
 *     be tried
 * @param mayStayOpen whether it may be left open
 */
record DraftQuestion(
        String id,
        String ask,
        List<String> why,
        Kind kind,
        String usual,
        String standIn,
        boolean mayStayOpen) {
    DraftQuestion {
        why = List.copyOf(why);
    }

    /** How a question is answered. */
    sealed interface Kind {
        /** By a line of text. */
        record Text() implements Kind {}

        /** By choosing one of some. */
        record One(List<Option> options) implements Kind {
            public One {
                options = List.copyOf(options);
            }
        }

        /** By ticking one or more of some. */
        record Several(List<Option> options) implements Kind {
            public Several {
                options = List.copyOf(options);
            }
        }
    }

    /**
     * What can be chosen.
     *
     * @param word the answer
     * @param label what it means
     */
    record Option(String word, String label) {}

    /** A line that has to be typed. */
    static DraftQuestion typed(String id, String ask, String standIn, String... why) {
        return new DraftQuestion(id, ask, List.of(why), new Kind.Text(), "", standIn, false);
    }

    /** A line with a usual answer. */
    static DraftQuestion usually(String id, String ask, String usual, String... why) {
        return new DraftQuestion(id, ask, List.of(why), new Kind.Text(), usual, usual, false);
    }

    /** A line that may stay empty. */
    static DraftQuestion open(String id, String ask, String... why) {
        return new DraftQuestion(id, ask, List.of(why), new Kind.Text(), "", "", true);
    }

    /** One of some, the first of which is usual. */
    static DraftQuestion one(String id, String ask, List<Option> options, String... why) {
        String usual = options.get(0).word();
        return new DraftQuestion(id, ask, List.of(why), new Kind.One(options), usual, usual, false);
    }

    /** Whether the file has it as a bare number. */
    boolean isWhole() {
        return id.startsWith("worn-") || List.of("trials", "fewest", "most").contains(id);
    }

    List<Option> options() {
        if (kind instanceof Kind.One one) {
            return one.options();
        }
        return kind instanceof Kind.Several several ? several.options() : List.of();
    }

    /** The same with something else said about it. */
    DraftQuestion with(List<String> saying) {
        return new DraftQuestion(id, ask, saying, kind, usual, standIn, mayStayOpen);
    }

    /** The same with another usual answer, and more said about it. */
    DraftQuestion with(String otherUsual, List<String> saying) {
        return new DraftQuestion(id, ask, saying, kind, otherUsual, otherUsual, mayStayOpen);
    }
}
