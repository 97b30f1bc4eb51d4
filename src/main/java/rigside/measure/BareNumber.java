package rigside.measure;

import java.util.Optional;

/** A number that stands alone in a file, in a unit that is said elsewhere. */
public final class BareNumber {
    private BareNumber() {}

    /**
     * What to write where a unit was written after such a number all the same, in words.
     *
     * @param symbol the unit written after it; unknown ones give no cure
     * @param unit the one it is in
     */
    public static Optional<String> cure(double number, String symbol, Unit unit) {
        if (symbol.isEmpty()) {
            return Optional.empty();
        }
        String in = unit == Unit.ONE ? "'unit', which is none" : "'unit', " + unit.symbol();
        return Unit.of(symbol)
                .map(
                        written ->
                                written.dimension() == unit.dimension()
                                        ? "it is in "
                                                + in
                                                + ": write "
                                                + Numbers.plain(
                                                        new Quantity(number, written)
                                                                .in(unit)
                                                                .value())
                                        : "that is "
                                                + written.words()
                                                + "; it is "
                                                + unit.words()
                                                + " in "
                                                + in
                                                + ": write the number alone");
    }
}
