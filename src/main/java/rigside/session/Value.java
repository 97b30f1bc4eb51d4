package rigside.session;

import rigside.measure.Quantity;

/** What was entered. */
public sealed interface Value {
    /** A number with its unit. */
    record Measured(Quantity quantity) implements Value {
        @Override
        public String toString() {
            return quantity.toString();
        }
    }

    /** Words, a choice, or nothing at all. */
    record Said(String text) implements Value {
        @Override
        public String toString() {
            return text;
        }
    }
}
