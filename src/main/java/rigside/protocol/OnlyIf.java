package rigside.protocol;

import rigside.measure.Quantity;

/**
 * An earlier answer that decides whether a step is done. What counts is the answer given last
 * before the step; where it was left out, the step is not done.
 *
 * @param answer the id of the fact, field or check
 * @param test what the answer has to be
 * @param back how many steps before its own the step looks back from: its place in the group where
 *     it was the use of a group that depends on the answer, so that the group is done whole or not
 *     at all; 0 otherwise
 */
public record OnlyIf(String answer, Test test, int back) {

    /** What an answer has to be. */
    public sealed interface Test {
        /** Whether a word, or a check's yes or no, is it. */
        boolean isMetBy(String word);

        /** Whether a number is it. */
        boolean isMetBy(Quantity number);

        /** What it asks, to follow the answer's name. */
        String words();
    }

    /** A choice, or a check's yes or no. */
    public record Is(String word) implements Test {
        @Override
        public boolean isMetBy(String given) {
            return given.equals(word);
        }

        @Override
        public boolean isMetBy(Quantity number) {
            return false;
        }

        @Override
        public String words() {
            return "is " + word;
        }
    }

    /** A number above a limit, the limit itself left out. */
    public record Above(Quantity limit) implements Test {
        @Override
        public boolean isMetBy(String given) {
            return false;
        }

        @Override
        public boolean isMetBy(Quantity number) {
            return number.si() > limit.si();
        }

        @Override
        public String words() {
            return "is above " + limit;
        }
    }

    /** A number below a limit, the limit itself left out. */
    public record Below(Quantity limit) implements Test {
        @Override
        public boolean isMetBy(String given) {
            return false;
        }

        @Override
        public boolean isMetBy(Quantity number) {
            return number.si() < limit.si();
        }

        @Override
        public String words() {
            return "is below " + limit;
        }
    }
}
