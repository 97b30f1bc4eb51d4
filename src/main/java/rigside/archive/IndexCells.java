package rigside.archive;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import rigside.analysis.Standing;
import rigside.decide.Conclusion;
import rigside.decide.Limits;
import rigside.decide.Verdict;
import rigside.journal.Damage;
import rigside.protocol.Measure.Compared.Matters;
import rigside.protocol.Plan.Design;
import rigside.protocol.Protocol.Purpose;
import rigside.protocol.Subject;

/** Reads back what {@link IndexPieces} wrote, cell by cell. */
final class IndexCells {
    private IndexCells() {}

    /**
     * A session, after the cells with its name, its journal and the key of what it has in common
     * with others.
     */
    static Archived session(Path folder, Archived.OnDisk journal, About about, Cells cells) {
        return new Archived(
                folder,
                Optional.of(journal),
                cells.ifAny(Cells::zoned),
                cells.ifAny(Cells::zoned),
                cells.flag(),
                cells.flag(),
                cells.ifAny(IndexCells::paper),
                about.protocol(),
                about.facts(cells.list(Cells::text)),
                about.conditions(),
                about.measures(),
                cells.count(),
                cells.list(IndexCells::finding),
                cells.list(IndexCells::damage));
    }

    static Archived.OnDisk journal(Cells cells) {
        return new Archived.OnDisk(cells.size(), cells.instant());
    }

    /** What sessions have in common, after the cell with its key. */
    static About about(Cells cells) {
        return new About(
                cells.ifAny(IndexCells::protocol),
                cells.list(IndexCells::asked),
                cells.list(IndexCells::worn),
                cells.list(IndexCells::measured));
    }

    static List<WithValues.Value> values(Cells cells) {
        return cells.list(IndexCells::value);
    }

    private static Archived.Paper paper(Cells cells) {
        return new Archived.Paper(
                cells.ifAny(day -> LocalDate.ofEpochDay(day.size())), cells.text());
    }

    private static Archived.Followed protocol(Cells cells) {
        return new Archived.Followed(
                cells.text(),
                cells.text(),
                cells.text(),
                cells.text(),
                cells.word(Purpose.class),
                cells.word(Design.class));
    }

    private static About.Asked asked(Cells cells) {
        return new About.Asked(
                cells.text(), cells.text(), cells.ifAny(about -> about.word(Subject.class)));
    }

    private static Archived.Worn worn(Cells cells) {
        return new Archived.Worn(cells.text(), cells.text(), cells.text(), cells.count());
    }

    private static Archived.Measured measured(Cells cells) {
        return new Archived.Measured(
                cells.text(),
                cells.text(),
                cells.text(),
                cells.text(),
                cells.flag(),
                cells.ifAny(IndexCells::compared));
    }

    private static Archived.Compared compared(Cells cells) {
        return new Archived.Compared(
                cells.text(),
                cells.number(),
                cells.number(),
                cells.word(Matters.class),
                cells.flag());
    }

    private static Archived.Finding finding(Cells cells) {
        return new Archived.Finding(
                cells.text(),
                cells.text(),
                new Conclusion(cells.word(Verdict.class), cells.count()),
                cells.word(Matters.class),
                cells.numberIfAny(),
                cells.ifAny(limits -> new Limits(limits.number(), limits.number())),
                cells.count());
    }

    private static Damage damage(Cells cells) {
        return new Damage(cells.text(), cells.count(), cells.text(), cells.text());
    }

    private static WithValues.Value value(Cells cells) {
        return new WithValues.Value(
                cells.text(),
                cells.text(),
                cells.count(),
                cells.count(),
                cells.instant(),
                cells.count(),
                cells.word(Standing.class),
                cells.numberIfAny(),
                cells.numberIfAny(),
                cells.flag(),
                cells.flag());
    }
}
