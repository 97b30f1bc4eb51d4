package rigside.archive;

import java.io.ByteArrayOutputStream;
import java.io.DataOutputStream;
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
 * Writes the pieces of the index. A session has two: what it is, and the values of its donnings,
 * which few ask for; what it has in common with others by the same protocol is a piece by itself,
 * and is referred to by its key. The cells of a piece are in the order in which {@link IndexCells}
 * reads them; who changes one changes the other, and raises {@link Index#FORM}.
 */
final class IndexPieces {
    private final DataOutputStream out;

    private IndexPieces(DataOutputStream out) {
        this.out = out;
    }

    /**
     * Both pieces of a session.
     *
     * @param about the key of what it has in common with others
     */
    static byte[] of(WithValues session, String about) {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        piece(bytes, pieces -> pieces.session(session.session(), about));
        piece(bytes, pieces -> pieces.all(session.values(), pieces::value));
        return bytes.toByteArray();
    }

    /** What sessions have in common, and its key. */
    static byte[] of(About about, String key) {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        piece(bytes, pieces -> pieces.about(about, key));
        return bytes.toByteArray();
    }

    /** How many things sessions have in common. */
    static byte[] of(int count) {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        piece(bytes, pieces -> pieces.out.writeInt(count));
        return bytes.toByteArray();
    }

    /** Writes the cells of one thing. */
    private interface Cell<T> {
        void write(T what) throws IOException;
    }

    private static void piece(ByteArrayOutputStream bytes, Cell<IndexPieces> what) {
        ByteArrayOutputStream cells = new ByteArrayOutputStream();
        try {
            what.write(new IndexPieces(new DataOutputStream(cells)));
            new DataOutputStream(bytes).writeInt(cells.size());
            cells.writeTo(bytes);
        } catch (IOException nothingCanFailInMemory) {
            throw new UncheckedIOException(nothingCanFailInMemory);
        }
    }

    private void session(Archived session, String about) throws IOException {
        text(session.name());
        Archived.OnDisk journal = session.journal().orElseThrow();
        out.writeLong(journal.size());
        instant(journal.changed());
        text(about);
        ifAny(session.begun(), this::zoned);
        ifAny(session.last(), this::zoned);
        out.writeBoolean(session.closed());
        out.writeBoolean(session.simulated());
        ifAny(session.paper(), this::paper);
        all(session.facts(), fact -> text(fact.answer()));
        out.writeInt(session.completeRounds());
        all(session.findings(), this::finding);
        all(session.damage(), this::damage);
    }

    private void about(About about, String key) throws IOException {
        text(key);
        ifAny(about.protocol(), this::protocol);
        all(about.asked(), this::asked);
        all(about.conditions(), this::worn);
        all(about.measures(), this::measured);
    }

    private void paper(Archived.Paper paper) throws IOException {
        ifAny(paper.on(), day -> out.writeLong(day.toEpochDay()));
        text(paper.words());
    }

    private void protocol(Archived.Followed protocol) throws IOException {
        text(protocol.file());
        text(protocol.title());
        text(protocol.question());
        text(protocol.hash());
        text(protocol.purpose().name());
        text(protocol.design().name());
    }

    private void asked(About.Asked asked) throws IOException {
        text(asked.id());
        text(asked.question());
        ifAny(asked.about(), about -> text(about.name()));
    }

    private void worn(Archived.Worn worn) throws IOException {
        text(worn.id());
        text(worn.title());
        text(worn.piece());
        out.writeInt(worn.wornBefore());
    }

    private void measured(Archived.Measured measured) throws IOException {
        text(measured.id());
        text(measured.title());
        text(measured.kind());
        text(measured.unit());
        out.writeBoolean(measured.ratio());
        ifAny(measured.compared(), this::compared);
    }

    private void compared(Archived.Compared compared) throws IOException {
        text(compared.meaningful());
        out.writeDouble(compared.bandLow());
        out.writeDouble(compared.bandHigh());
        text(compared.matters().name());
        out.writeBoolean(compared.decides());
    }

    private void finding(Archived.Finding finding) throws IOException {
        text(finding.measure());
        text(finding.condition());
        text(finding.conclusion().verdict().name());
        out.writeInt(finding.conclusion().direction());
        text(finding.matters().name());
        ifAny(finding.estimate());
        ifAny(finding.interval(), this::limits);
        out.writeInt(finding.n());
    }

    private void limits(Limits limits) throws IOException {
        out.writeDouble(limits.low());
        out.writeDouble(limits.high());
    }

    private void damage(Damage damage) throws IOException {
        text(damage.file());
        out.writeInt(damage.line());
        text(damage.what());
        text(damage.help());
    }

    private void value(WithValues.Value value) throws IOException {
        text(value.measure());
        text(value.condition());
        out.writeInt(value.donning());
        out.writeInt(value.round());
        instant(value.worn());
        out.writeInt(value.wornBefore());
        text(value.standing().name());
        ifAny(value.number());
        ifAny(value.halved());
        out.writeBoolean(value.bounded());
        out.writeBoolean(value.unresolved());
    }

    private void instant(Instant instant) throws IOException {
        out.writeLong(instant.getEpochSecond());
        out.writeInt(instant.getNano());
    }

    private void zoned(ZonedDateTime when) throws IOException {
        instant(when.toInstant());
        text(when.getZone().getId());
    }

    private void text(String text) throws IOException {
        out.writeInt(text.length());
        out.writeChars(text);
    }

    private void ifAny(OptionalDouble number) throws IOException {
        out.writeBoolean(number.isPresent());
        if (number.isPresent()) {
            out.writeDouble(number.getAsDouble());
        }
    }

    private <T> void ifAny(Optional<T> what, Cell<T> cell) throws IOException {
        out.writeBoolean(what.isPresent());
        if (what.isPresent()) {
            cell.write(what.get());
        }
    }

    private <T> void all(List<T> what, Cell<T> cell) throws IOException {
        out.writeInt(what.size());
        for (T each : what) {
            cell.write(each);
        }
    }
}
