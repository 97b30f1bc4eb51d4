package rigside.rig;

/**
 * A column of delimited lines, by its position or by its name in a header line.
 *
 * @param number from 1; 0 when it goes by its name
 * @param name as the header line has it; empty when it goes by its number
 */
record Column(int number, String name) {
    /** The column written as a number or else as a name. */
    static Column of(String written) {
        return written.matches("[0-9]{1,4}")
                ? new Column(Integer.parseInt(written), "")
                : new Column(0, written);
    }

    boolean isNamed() {
        return number == 0;
    }

    /** In words for messages. */
    String words() {
        return isNamed() ? "column '" + name + "'" : "column " + number;
    }
}
