package rigside.rig;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import rigside.yaml.Words;

/** Reads the lines of one feed, one after another; it remembers the last header line. */
final class LineReader {
    private static final Parsed PASSED = new Parsed.Passed();

    private final LineForm form;
    private List<String> header = List.of();

    LineReader(LineForm form) {
        this.form = form;
    }

    /** What a line is; no text makes this throw. */
    Parsed read(String line) {
        if (line.isBlank()) {
            return PASSED;
        }
        try {
            if (form.passOver().filter(pattern -> finds(pattern, line)).isPresent()) {
                return PASSED;
            }
            return form.shape() instanceof LineForm.Columns columns
                    ? columns(columns, line)
                    : named((LineForm.Named) form.shape(), line);
        } catch (Patience.Lost | StackOverflowError tooMuch) {
            return new Parsed.Nonsense("the pattern takes too long on it");
        }
    }

    private static boolean finds(Pattern pattern, String line) {
        return pattern.matcher(new Patience(line)).find();
    }

    private Parsed named(LineForm.Named shape, String line) {
        Matcher matcher = shape.pattern().matcher(new Patience(line));
        if (!matcher.find()) {
            return new Parsed.Nonsense("it does not match the pattern");
        }
        String value = matcher.group("value");
        if (value == null) {
            return new Parsed.Nonsense("it has no value where the pattern looks for one");
        }
        return number(value.strip(), form.sides().isEmpty() ? "" : matcher.group("side"));
    }

    private Parsed columns(LineForm.Columns shape, String line) {
        List<String> cells = shape.separator().cells(line);
        if (form.needsHeader() && isHeader(shape, cells)) {
            header = List.copyOf(cells);
            return PASSED;
        }
        Optional<String> value = cell(shape.value(), cells);
        if (value.isEmpty()) {
            return missing(shape.value(), cells);
        }
        if (shape.side().isEmpty()) {
            return number(value.get(), "");
        }
        Optional<String> side = cell(shape.side().get(), cells);
        return side.isEmpty()
                ? missing(shape.side().get(), cells)
                : number(value.get(), side.get());
    }

    private static boolean isHeader(LineForm.Columns shape, List<String> cells) {
        return (!shape.value().isNamed() || cells.contains(shape.value().name()))
                && shape.side()
                        .filter(side -> side.isNamed() && !cells.contains(side.name()))
                        .isEmpty();
    }

    private Optional<String> cell(Column column, List<String> cells) {
        int at = column.isNamed() ? header.indexOf(column.name()) : column.number() - 1;
        return at >= 0 && at < cells.size() ? Optional.of(cells.get(at)) : Optional.empty();
    }

    private Parsed missing(Column column, List<String> cells) {
        return new Parsed.Nonsense(
                column.isNamed() && header.isEmpty()
                        ? "no header line with " + column.words() + " has come yet"
                        : "it has no " + column.words() + ", only " + cells.size());
    }

    private Parsed number(String written, String side) {
        OptionalDouble number = Decimal.read(written, form.decimalComma());
        if (number.isEmpty()) {
            return new Parsed.Nonsense(
                    Words.quoted(written)
                            + " is no number"
                            + (form.decimalComma() ? " with a decimal comma" : ""));
        }
        if (form.sides().isEmpty()) {
            return new Parsed.Found(number.getAsDouble(), Optional.empty());
        }
        Signal known = side == null ? null : form.sides().get(side.strip());
        return known == null
                ? new Parsed.Nonsense(sideless(side))
                : new Parsed.Found(number.getAsDouble(), Optional.of(known));
    }

    /** What stands where the side should, and what would be right there. */
    private String sideless(String side) {
        String where =
                form.shape() instanceof LineForm.Columns columns
                        ? columns.side().map(Column::words).orElse("side")
                        : "group 'side'";
        String stands = side == null ? "nothing" : Words.quoted(side.strip());
        return where
                + " says "
                + stands
                + "; "
                + word(Signal.AMBIENT)
                + " (tube on the room) or "
                + word(Signal.MASK)
                + " (on the mask) would be right";
    }

    private String word(Signal side) {
        return form.sides().entrySet().stream()
                .filter(each -> each.getValue() == side)
                .map(each -> Words.quoted(each.getKey()))
                .findFirst()
                .orElse("");
    }
}
