package rigside.measure;

/** Conditions on numbers handed in, each written so that NaN fails it. */
final class Check {
    private Check() {}

    /**
     * The value, if it is a finite number above 0.
     *
     * @throws IllegalArgumentException otherwise, with the name and the value
     */
    static double positive(String name, double value) {
        if (!(value > 0 && value <= Double.MAX_VALUE)) {
            throw refused(name, value, "must be a finite number above 0");
        }
        return value;
    }

    /**
     * The value, if it is a finite number, 0 or above.
     *
     * @throws IllegalArgumentException otherwise, with the name and the value
     */
    static double notNegative(String name, double value) {
        if (!(value >= 0 && value <= Double.MAX_VALUE)) {
            throw refused(name, value, "must be a finite number, 0 or above");
        }
        return value;
    }

    /**
     * The value, if it is a finite number.
     *
     * @throws IllegalArgumentException otherwise, with the name and the value
     */
    static double finite(String name, double value) {
        if (!(Math.abs(value) <= Double.MAX_VALUE)) {
            throw refused(name, value, "must be a finite number");
        }
        return value;
    }

    static IllegalArgumentException refused(String name, double value, String condition) {
        return new IllegalArgumentException(name + " " + Numbers.plain(value) + ", " + condition);
    }
}
