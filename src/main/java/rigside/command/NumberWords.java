package rigside.command;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.OptionalDouble;
import picocli.CommandLine;
import picocli.CommandLine.TypeConversionException;

/** Numbers and days as people type them on a command line, and what is said when one is none. */
final class NumberWords {

    private NumberWords() {}

    /** The same command line, reading numbers this way in all its commands. */
    static CommandLine in(CommandLine command) {
        return command.registerConverter(Integer.class, NumberWords::whole)
                .registerConverter(int.class, NumberWords::whole)
                .registerConverter(Long.class, NumberWords::large)
                .registerConverter(long.class, NumberWords::large)
                .registerConverter(Double.class, NumberWords::decimalOrNot)
                .registerConverter(double.class, NumberWords::decimalOrNot)
                .registerConverter(LocalDate.class, NumberWords::day);
    }

    /** A number with a decimal point or comma; empty for anything else, NaN included. */
    static OptionalDouble decimal(String text) {
        try {
            double number = Double.parseDouble(text.strip().replace(',', '.'));
            return Double.isNaN(number) ? OptionalDouble.empty() : OptionalDouble.of(number);
        } catch (NumberFormatException notANumber) {
            return OptionalDouble.empty();
        }
    }

    private static double decimalOrNot(String text) {
        return decimal(text)
                .orElseThrow(
                        () ->
                                new TypeConversionException(
                                        "'" + text + "' is not a number, such as 0.1"));
    }

    private static int whole(String text) {
        try {
            return Integer.parseInt(text.strip());
        } catch (NumberFormatException notWhole) {
            throw notWhole(text);
        }
    }

    private static long large(String text) {
        try {
            return Long.parseLong(text.strip());
        } catch (NumberFormatException notWhole) {
            throw notWhole(text);
        }
    }

    private static LocalDate day(String text) {
        try {
            return LocalDate.parse(text.strip());
        } catch (DateTimeException notADay) {
            throw new TypeConversionException("'" + text + "' is not a day, such as 2026-11-20");
        }
    }

    private static TypeConversionException notWhole(String text) {
        return new TypeConversionException("'" + text + "' is not a whole number, such as 3");
    }
}
