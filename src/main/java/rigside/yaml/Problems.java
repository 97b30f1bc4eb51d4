package rigside.yaml;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** Collects what is wrong with one file. */
final class Problems {
    private final String file;
    private final List<Problem> noted = new ArrayList<>();
    private boolean barred;

    Problems(String file) {
        this.file = file;
    }

    void note(int line, int column, String what, String help) {
        noted.add(new Problem(file, line, column, what, help));
    }

    /**
     * Says that parts of the file are missing from its tree, so that nothing can be built from it;
     * what is there is still read, for its problems.
     */
    void bar() {
        barred = true;
    }

    boolean isBarred() {
        return barred;
    }

    int count() {
        return noted.size();
    }

    /** All, each once, in the order of the file. */
    List<Problem> all() {
        return noted.stream()
                .distinct()
                .sorted(Comparator.comparingInt(Problem::line).thenComparingInt(Problem::column))
                .toList();
    }
}
