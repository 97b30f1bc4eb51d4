package rigside.rig;

import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import rigside.measure.Dimension;
import rigside.measure.Unit;
import rigside.yaml.Entry;
import rigside.yaml.Fields;
import rigside.yaml.Value;
import rigside.yaml.Words;

/** Reads where the lines of an instrument come from. */
final class OriginReader {
    private static final int USUAL_BAUD = 9600;
    static final int FASTEST_BAUD = 4_000_000;
    static final List<String> KINDS = List.of("serial", "file", "pipe", "replay");
    private static final List<String> SERIAL = List.of("baud", "bits", "parity", "stop-bits");
    private static final List<String> REPLAY = List.of("time-column", "time-unit");

    private OriginReader() {}

    /**
     * The keys of a feed about its origin.
     *
     * @param folder the folder that paths start from
     * @param form how its lines are read, as far as that could be read
     */
    static Value<Origin> read(Fields fields, Path folder, Value<LineForm> form) {
        String kind = fields.oneKeyOf(KINDS).orElse("");
        if (!kind.isEmpty() && !kind.equals("serial")) {
            SERIAL.forEach(
                    key -> fields.refused(key, "goes with 'serial' only", "delete the line"));
        }
        if (!kind.isEmpty() && !kind.equals("replay")) {
            REPLAY.forEach(
                    key -> fields.refused(key, "goes with 'replay' only", "delete the line"));
        }
        Value<Origin> serial = serial(fields);
        Value<Origin> replay = replay(fields, folder, form);
        return switch (kind) {
            case "serial" -> serial;
            case "file" -> path(fields.optional("file"), folder).map(Origin.Appended::new);
            case "pipe" -> path(fields.optional("pipe"), folder).map(Origin.Piped::new);
            default -> replay;
        };
    }

    private static Value<Origin> serial(Fields fields) {
        Value<Integer> baud = fields.optional("baud").whole(50, FASTEST_BAUD);
        Value<Integer> bits = fields.optional("bits").whole(5, 8);
        Value<Origin.Parity> parity = fields.optional("parity").oneOf(Origin.Parity.class);
        Value<Integer> stop = fields.optional("stop-bits").whole(1, 2);
        return fields.optional("serial")
                .line()
                .map(
                        port ->
                                new Origin.Serial(
                                        port,
                                        baud.orElse(USUAL_BAUD),
                                        bits.orElse(8),
                                        parity.orElse(Origin.Parity.NONE),
                                        stop.orElse(1)));
    }

    private static Value<Origin> replay(Fields fields, Path folder, Value<LineForm> form) {
        Entry unitEntry = fields.optional("time-unit");
        Value<String> column = fields.optional("time-column").line();
        Value<Unit> unit = Amounts.unit(unitEntry, Dimension.TIME);
        return path(fields.optional("replay"), folder)
                .map(trace -> new Origin.Replayed(trace, form(column, unit, form)));
    }

    private static TraceForm form(Value<String> column, Value<Unit> unit, Value<LineForm> form) {
        Optional<LineForm> line = form.toOptional();
        Separator separator =
                line.map(LineForm::shape)
                        .filter(LineForm.Columns.class::isInstance)
                        .map(shape -> ((LineForm.Columns) shape).separator())
                        .orElse(Separator.COMMA);
        return new TraceForm(
                column.toOptional().map(Column::of),
                separator,
                line.map(LineForm::decimalComma).orElse(false),
                unit.orElse(Unit.SECOND));
    }

    private static Value<Path> path(Entry entry, Path folder) {
        Value<String> text = entry.line();
        return text.then(
                written -> {
                    try {
                        Path path = folder.resolve(written);
                        return text.map(same -> path);
                    } catch (InvalidPathException wrong) {
                        return text.wrong(
                                text.label()
                                        + " is "
                                        + Words.quoted(written)
                                        + ", which is no path here",
                                "write the path of a file");
                    }
                });
    }
}
