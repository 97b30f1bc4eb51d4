package rigside.report;

import com.fasterxml.jackson.core.StreamWriteFeature;
import com.fasterxml.jackson.dataformat.csv.CsvFactory;
import com.fasterxml.jackson.dataformat.csv.CsvGenerator;
import com.fasterxml.jackson.dataformat.csv.CsvSchema;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Optional;

/**
 * A table as comma-separated values (RFC 4180): UTF-8, a first line with the names of the columns,
 * lines that end with CR LF, double quotes where they are needed and doubled within.
 */
final class Csv {
    static final String END_OF_LINE = "\r\n";

    private static final CsvFactory FACTORY =
            CsvFactory.builder()
                    .enable(CsvGenerator.Feature.STRICT_CHECK_FOR_QUOTING)
                    .disable(StreamWriteFeature.AUTO_CLOSE_TARGET)
                    .build();

    private Csv() {}

    static <R> byte[] bytes(Resource<R> table) {
        CsvSchema.Builder schema = CsvSchema.builder().setUseHeader(true);
        table.columns().forEach(column -> schema.addColumn(column.name()));
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (CsvGenerator out = FACTORY.createGenerator(bytes)) {
            out.setSchema(schema.build().withLineSeparator(END_OF_LINE));
            if (table.rows().isEmpty()) {
                return header(table);
            }
            for (R row : table.rows()) {
                out.writeStartObject();
                for (Column<R> column : table.columns()) {
                    out.writeFieldName(column.name());
                    write(out, column, row);
                }
                out.writeEndObject();
            }
            out.flush();
            return bytes.toByteArray();
        } catch (IOException inMemory) {
            throw new UncheckedIOException(inMemory);
        }
    }

    private static <R> void write(CsvGenerator out, Column<R> column, R row) throws IOException {
        Optional<String> cell = column.cell().apply(row);
        if (cell.isEmpty()) {
            out.writeNull();
        } else if (column.type() == Column.Type.STRING && column.words().isEmpty()) {
            out.writeString(Harmless.text(cell.get()));
        } else {
            out.writeString(cell.get());
        }
    }

    /** The library writes the first line with the first row only. */
    private static byte[] header(Resource<?> table) {
        String names = String.join(",", table.columns().stream().map(Column::name).toList());
        return (names + END_OF_LINE).getBytes(StandardCharsets.UTF_8);
    }
}
