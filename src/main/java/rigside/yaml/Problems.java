package rigside.yaml;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * Collects what is wrong with one file: so many problems as a person can mend in one go, since a
 * file of another kind can hold tens of thousands.
 */
final class Problems {
    private final String file;
    private final Set<Problem> noted = new LinkedHashSet<>();
    private final Map<String, List<Problem>> strangers = new HashMap<>();
    private final Map<String, List<Lack>> lacking = new HashMap<>();
    private Optional<Problem> leftOut = Optional.empty();
    private int count;
    private boolean barred;

    Problems(String file) {
        this.file = file;
    }

    /** A key that is missing, and the label of the group that lacks it. */
    private record Lack(Problem problem, String group) {}

    void note(int line, int column, String what, String help) {
        count++;
        if (noted.size() < Document.MOST_PROBLEMS) {
            noted.add(problem(line, column, what, help));
        } else if (leftOut.isEmpty()) {
            leftOut =
                    Optional.of(
                            problem(
                                    line,
                                    column,
                                    "here and elsewhere is more that is not listed",
                                    "mend what is listed, then check the file again"));
        }
    }

    /** A problem of this file, not noted. */
    Problem problem(int line, int column, String what, String help) {
        return new Problem(file, line, column, what, help);
    }

    /** The same of a key nobody asked for. */
    void noteStranger(String key, Problem problem) {
        strangers.computeIfAbsent(key, none -> new ArrayList<>()).add(problem);
        note(problem.line(), problem.column(), problem.what(), problem.help());
    }

    /** The same of a key that a group lacks. */
    void noteLack(String key, String group, Problem problem) {
        lacking.computeIfAbsent(key, none -> new ArrayList<>()).add(new Lack(problem, group));
        note(problem.line(), problem.column(), problem.what(), problem.help());
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

    /** Whether more would not be listed, so that looking for it is of no use. */
    boolean isFull() {
        return leftOut.isPresent();
    }

    /** How often something was noted, listed or not. */
    int count() {
        return count;
    }

    /** Each once, in the order of the file; that there is more comes last. */
    List<Problem> all() {
        List<Problem> all = new ArrayList<>(noted);
        strangers.forEach(
                (key, strange) -> {
                    List<Lack> lacks = lacking.getOrDefault(key, List.of());
                    if (strange.size() == 1 && lacks.size() == 1) {
                        join(all, strange.get(0), lacks.get(0));
                    }
                });
        all.sort(Comparator.comparingInt(Problem::line).thenComparingInt(Problem::column));
        leftOut.ifPresent(all::add);
        return all;
    }

    /** A key that one group lacks and another has no use for stands in the wrong one. */
    private static void join(List<Problem> all, Problem stranger, Lack lack) {
        if (all.remove(lack.problem())) {
            all.replaceAll(
                    each ->
                            each.equals(stranger)
                                    ? new Problem(
                                            each.file(),
                                            each.line(),
                                            each.column(),
                                            each.what(),
                                            "move it into " + lack.group() + ", which lacks it")
                                    : each);
        }
    }
}
