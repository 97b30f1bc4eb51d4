package rigside.journal;

import java.util.Arrays;
import java.util.Optional;
import java.util.function.Function;
import rigside.session.Source;
import rigside.session.Stage;

/** The written words of the session's enums; never the names of their constants. */
final class Words {
    private Words() {}

    static String of(Stage stage) {
        return switch (stage) {
            case BEFORE -> "before";
            case DONNING -> "donning";
            case AFTER -> "after";
        };
    }

    static String of(Source source) {
        return switch (source) {
            case TYPED -> "typed";
            case TIMED -> "timed";
            case INSTRUMENT -> "instrument";
            case SIMULATED -> "simulated";
        };
    }

    static Optional<Stage> stage(String word) {
        return find(Stage.values(), Words::of, word);
    }

    static Optional<Source> source(String word) {
        return find(Source.values(), Words::of, word);
    }

    private static <E> Optional<E> find(E[] all, Function<E, String> wordOf, String word) {
        return Arrays.stream(all).filter(each -> wordOf.apply(each).equals(word)).findFirst();
    }
}
