package rigside.archive;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.time.Instant;
import java.time.ZonedDateTime;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import rigside.decide.Limits;
import rigside.journal.Damage;

/**
 * The lines of the index. A session has two: what it is, and the values of its donnings, which few
 * ask for; what it has in common with others by the same protocol is a line by itself, and is
 * referred to by its key. Each line is an array, its cells in the order in which {@link IndexCells}
 * reads them; who changes one changes the other, and raises {@link Index#FORM}.
 */
final class IndexLines {
    private final JsonGenerator out;

    private IndexLines(JsonGenerator out) {
        this.out = out;
    }

    /**
     * Both lines of a session with their ends, in UTF-8.
     *
     * @param about the key of what it has in common with others
     */
    static byte[] of(WithValues session, String about) {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        line(bytes, lines -> lines.session(session.session(), about));
        line(bytes, lines -> lines.all(session.values(), lines::value));
        return bytes.toByteArray();
    }

    /** What sessions have in common, and its key, as a line with its end. */
    static byte[] of(About about, String key) {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        line(bytes, lines -> lines.about(about, key));
        return bytes.toByteArray();
    }

    /** Writes the cells of one thing. */
    private interface Cell<T> {
        void write(T what) throws IOException;
    }

    private static void line(ByteArrayOutputStream bytes, Cell<IndexLines> what) {
        try (JsonGenerator out = Cells.JSON.createGenerator(bytes)) {
            out.writeStartArray();
            what.write(new IndexLines(out));
            out.writeEndArray();
        } catch (IOException nothingCanFailInMemory) {
            throw new UncheckedIOException(nothingCanFailInMemory);
        }
        bytes.write('\n');
    }

    private void session(Archived session, String about) throws IOException {
        out.writeString(session.name());
        Archived.OnDisk journal = session.journal().orElseThrow();
        out.writeNumber(journal.size());
        instant(journal.changed());
        out.writeString(about);
        ifAny(session.begun(), this::zoned);
        ifAny(session.last(), this::zoned);
        out.writeBoolean(session.closed());
        out.writeBoolean(session.simulated());
        ifAny(session.paper(), this::paper);
        all(session.facts(), fact -> out.writeString(fact.answer()));
        out.writeNumber(session.completeRounds());
        all(session.findings(), this::finding);
        all(session.damage(), this::damage);
    }

    private void about(About about, String key) throws IOException {
        out.writeString(key);
        ifAny(about.protocol(), this::protocol);
        all(about.asked(), this::asked);
        all(about.conditions(), this::worn);
        all(about.measures(), this::measured);
    }

    private void paper(Archived.Paper paper) throws IOException {
        ifAny(paper.on(), day -> out.writeNumber(day.toEpochDay()));
        out.writeString(paper.words());
    }

    private void protocol(Archived.Followed protocol) throws IOException {
        out.writeString(protocol.file());
        out.writeString(protocol.title());
        out.writeString(protocol.question());
        out.writeString(protocol.hash());
        out.writeString(protocol.purpose().name());
        out.writeString(protocol.design().name());
    }

    private void asked(About.Asked asked) throws IOException {
        out.writeString(asked.id());
        out.writeString(asked.question());
        ifAny(asked.about(), about -> out.writeString(about.name()));
    }

    private void worn(Archived.Worn worn) throws IOException {
        out.writeString(worn.id());
        out.writeString(worn.title());
        out.writeString(worn.piece());
        out.writeNumber(worn.wornBefore());
    }

    private void measured(Archived.Measured measured) throws IOException {
        out.writeString(measured.id());
        out.writeString(measured.title());
        out.writeString(measured.kind());
        out.writeString(measured.unit());
        out.writeBoolean(measured.ratio());
        ifAny(measured.compared(), this::compared);
    }

    private void compared(Archived.Compared compared) throws IOException {
        out.writeString(compared.meaningful());
        out.writeNumber(compared.bandLow());
        out.writeNumber(compared.bandHigh());
        out.writeString(compared.matters().name());
        out.writeBoolean(compared.decides());
    }

    private void finding(Archived.Finding finding) throws IOException {
        out.writeString(finding.measure());
        out.writeString(finding.condition());
        out.writeString(finding.conclusion().verdict().name());
        out.writeNumber(finding.conclusion().direction());
        out.writeString(finding.matters().name());
        ifAny(finding.estimate());
        ifAny(finding.interval(), this::limits);
        out.writeNumber(finding.n());
    }

    private void limits(Limits limits) throws IOException {
        out.writeNumber(limits.low());
        out.writeNumber(limits.high());
    }

    private void damage(Damage damage) throws IOException {
        out.writeString(damage.file());
        out.writeNumber(damage.line());
        out.writeString(damage.what());
        out.writeString(damage.help());
    }

    private void value(WithValues.Value value) throws IOException {
        out.writeString(value.measure());
        out.writeString(value.condition());
        out.writeNumber(value.donning());
        out.writeNumber(value.round());
        instant(value.worn());
        out.writeNumber(value.wornBefore());
        out.writeString(value.standing().name());
        ifAny(value.number());
        ifAny(value.halved());
        out.writeBoolean(value.bounded());
        out.writeBoolean(value.unresolved());
    }

    private void instant(Instant instant) throws IOException {
        out.writeNumber(instant.getEpochSecond());
        out.writeNumber(instant.getNano());
    }

    private void zoned(ZonedDateTime when) throws IOException {
        instant(when.toInstant());
        out.writeString(when.getZone().getId());
    }

    private void ifAny(OptionalDouble number) throws IOException {
        if (number.isPresent()) {
            out.writeNumber(number.getAsDouble());
        } else {
            out.writeNull();
        }
    }

    private <T> void ifAny(Optional<T> what, Cell<T> cell) throws IOException {
        if (what.isPresent()) {
            each(what.get(), cell);
        } else {
            out.writeNull();
        }
    }

    private <T> void all(List<T> what, Cell<T> cell) throws IOException {
        out.writeStartArray();
        for (T each : what) {
            each(each, cell);
        }
        out.writeEndArray();
    }

    private <T> void each(T what, Cell<T> cell) throws IOException {
        out.writeStartArray();
        cell.write(what);
        out.writeEndArray();
    }
}
