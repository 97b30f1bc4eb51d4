package rigside.analysis;

import java.util.List;

/**
 * What a settled comparison cannot do without: the pieces without any one of which it would say
 * something else.
 *
 * @param piece what is taken out one at a time: "round", "value"
 * @param of in front of one that is named: "round ", "the value of donning "
 * @param ofMany in front of several: "rounds ", "the values of donnings "
 * @param needed what they are called, in order
 * @param all how many there are
 */
record RestsOn(String piece, String of, String ofMany, List<?> needed, int all) {

    /** Nothing is looked for, since it is not settled. */
    static final RestsOn NOTHING = new RestsOn("", "", "", List.of(), 0);

    RestsOn {
        needed = List.copyOf(needed);
    }

    static RestsOn rounds(List<Integer> needed, int all) {
        return new RestsOn("round", "round ", "rounds ", needed, all);
    }

    /** Donnings that each give one value. */
    static RestsOn values(List<Integer> needed, int all) {
        return new RestsOn(
                "value", "the value of donning ", "the values of donnings ", needed, all);
    }

    /** Donnings that each give several. */
    static RestsOn donnings(List<Integer> needed, int all) {
        return new RestsOn("donning", "donning ", "donnings ", needed, all);
    }

    /** Lines of a table, "round 3 of plain". */
    static RestsOn lines(List<String> needed, int all) {
        return new RestsOn("value", "the value of ", "the values of ", needed, all);
    }

    /** What leaving out one piece does, as a sentence about the verdict. */
    String sentence() {
        if (needed.isEmpty()) {
            return "Without any single one of its " + piece + "s it would be the same.";
        }
        if (needed.size() == 1) {
            return "It needs " + of + needed.get(0) + ".";
        }
        return needed.size() == all
                ? "It needs every one of its " + piece + "s."
                : "It needs each of " + ofMany + Phrases.list(needed) + ".";
    }
}
