package rigside.rig;

import java.util.OptionalDouble;

/** What answers for the instruments. */
public interface Rig {
    /** What answers, in words for the journal and the screen. */
    String words();

    /** Whether the answers are invented. */
    boolean simulated();

    /** The answer in the SI unit of what is asked; empty when the tester has to type or time it. */
    OptionalDouble answer(Asked asked);

    /** No instrument is attached: everything is typed and timed by the tester. */
    static Rig typed() {
        return new Rig() {
            @Override
            public String words() {
                return "typed";
            }

            @Override
            public boolean simulated() {
                return false;
            }

            @Override
            public OptionalDouble answer(Asked asked) {
                return OptionalDouble.empty();
            }
        };
    }
}
