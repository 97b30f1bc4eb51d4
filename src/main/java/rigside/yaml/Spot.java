package rigside.yaml;

/**
 * A place in a file that problems can be noted at.
 *
 * @param problems where they are collected
 * @param line from 1
 * @param column from 1
 * @param label what stands there, as messages call it: {@code 'title'}, {@code item 2 of 'facts'}
 */
record Spot(Problems problems, int line, int column, String label) {
    void note(String what, String help) {
        problems.note(line, column, what, help);
    }

    /** The place of a part below this one. */
    Spot at(Tree tree, String name) {
        return new Spot(problems, tree.line(), tree.column(), name);
    }
}
