package rigside.yaml;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** Collects what is wrong with one file. */
final class Problems {
    private final String file;
    private final List<Problem> noted = new ArrayList<>();

    Problems(String file) {
        this.file = file;
    }

    void note(int line, int column, String what, String help) {
        noted.add(new Problem(file, line, column, what, help));
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
