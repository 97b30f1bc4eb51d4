package rigside.archive;

import java.nio.file.Path;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZonedDateTime;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import rigside.analysis.VerdictWords;
import rigside.decide.Conclusion;
import rigside.decide.Limits;
import rigside.journal.Damage;
import rigside.protocol.Measure.Compared.Matters;
import rigside.protocol.Plan.Design;
import rigside.protocol.Protocol.Purpose;
import rigside.protocol.Subject;

/**
 * One session among all: what it was about, and once it is closed what it came to. Its values are
 * apart from it, see {@link WithValues}.
 *
 * <p>Nothing of an open session is here that its protocol may conceal: findings are those of closed
 * sessions alone, whatever the protocol would let out, so that a list can be read over anybody's
 * shoulder.
 *
 * @param folder its folder
 * @param journal the journal this was read from; empty when there is none to be read
 * @param begun when it was opened, by the wall clock; empty when nothing readable was recorded
 * @param last when the last readable event happened, be it that something was put right after the
 *     close; empty while the session is open, since it tells how long a trial took
 * @param closed whether it is closed
 * @param simulated whether its values are invented
 * @param paper the form it was typed in from; empty when it was run at the bench
 * @param protocol what it went by; empty when nothing readable was recorded
 * @param facts what was answered about the session, in the protocol's order; those without an
 *     answer left away
 * @param conditions what is worn, the reference first
 * @param measures what is measured, in the protocol's order
 * @param completeRounds how many rounds are complete
 * @param findings one for each comparison, measure by measure; empty while the session is open
 * @param damage what is wrong with its journal; empty when nothing is
 */
public record Archived(
        Path folder,
        Optional<OnDisk> journal,
        Optional<ZonedDateTime> begun,
        Optional<ZonedDateTime> last,
        boolean closed,
        boolean simulated,
        Optional<Paper> paper,
        Optional<Followed> protocol,
        List<Fact> facts,
        List<Worn> conditions,
        List<Measured> measures,
        int completeRounds,
        List<Finding> findings,
        List<Damage> damage) {
    public Archived {
        facts = List.copyOf(facts);
        conditions = List.copyOf(conditions);
        measures = List.copyOf(measures);
        findings = List.copyOf(findings);
        damage = List.copyOf(damage);
        if (!closed && (last.isPresent() || !findings.isEmpty())) {
            throw new IllegalArgumentException("more than may be told of an open session");
        }
    }

    /**
     * A journal's file as it was just before it was read.
     *
     * @param size in bytes
     * @param changed when it was last changed, as the file system says
     */
    public record OnDisk(long size, Instant changed) {}

    /**
     * A form filled in by hand.
     *
     * @param on the day it was filled in, if that is known
     * @param words the same in words
     */
    public record Paper(Optional<LocalDate> on, String words) {}

    /**
     * A protocol.
     *
     * @param file the file's name as the tester knew it
     * @param title its title
     * @param question the question it asks
     * @param hash SHA-256 of its exact text in UTF-8, in 64 small hexadecimal digits
     * @param purpose what it is for
     * @param design how values are set against each other
     */
    public record Followed(
            String file,
            String title,
            String question,
            String hash,
            Purpose purpose,
            Design design) {}

    /**
     * An answer about the session.
     *
     * @param id the word it is stored under
     * @param question as it was asked
     * @param answer as it was given, with its unit
     * @param about what it is about; empty when that is not known
     */
    public record Fact(String id, String question, String answer, Optional<Subject> about) {}

    /**
     * A condition.
     *
     * @param piece how the piece worn is marked
     * @param wornBefore how often it was put on before the session, as the protocol says
     */
    public record Worn(String id, String title, String piece, int wornBefore) {}

    /**
     * A measure.
     *
     * @param kind in the word of a protocol file: fit-factor, timed-inhalation, ...
     * @param unit the symbol of the unit its values are shown in; empty for a plain number
     * @param ratio whether values are compared and summarised as ratios, on the scale of their
     *     natural logarithms; else as differences
     * @param compared how conditions are compared by it; empty when it is only recorded
     */
    public record Measured(
            String id,
            String title,
            String kind,
            String unit,
            boolean ratio,
            Optional<Compared> compared) {}

    /**
     * How conditions are compared.
     *
     * @param meaningful the meaningful difference as the protocol words it
     * @param bandLow lower end of what is too small to matter, on the analysis scale: below 0
     * @param bandHigh upper end of what is too small to matter, on the analysis scale: above 0
     * @param matters the direction in which a change matters
     * @param decides whether the session went on until this had settled
     */
    public record Compared(
            String meaningful, double bandLow, double bandHigh, Matters matters, boolean decides) {}

    /**
     * What came of one comparison with the reference.
     *
     * @param measure the measure's id
     * @param condition the id of the condition compared
     * @param conclusion the verdict that holds, and the way it goes
     * @param matters the direction in which a change matters
     * @param estimate the estimated change on the scale people read: a ratio, or a difference in
     *     the measure's unit; empty without a value
     * @param interval holds at all looks together with the promised confidence, on that scale;
     *     empty before the first look
     * @param n complete rounds used; values per condition where each stands for itself
     */
    public record Finding(
            String measure,
            String condition,
            Conclusion conclusion,
            Matters matters,
            OptionalDouble estimate,
            Optional<Limits> interval,
            int n) {
        /** Whether the question was answered. */
        public boolean isSettled() {
            return conclusion.verdict().settled();
        }

        /** The verdict in words that say which way it goes: "a meaningful increase". */
        public String words() {
            return VerdictWords.of(conclusion, matters);
        }
    }

    /** The folder's name: what commands take for the session. */
    public String name() {
        return folder.getFileName().toString();
    }

    /** The protocol's title; the folder's name when there is none. */
    public String title() {
        return protocol.map(Followed::title)
                .filter(title -> !title.isEmpty())
                .orElseGet(this::name);
    }

    /** The protocol's question; empty when there is none. */
    public String question() {
        return protocol.map(Followed::question).orElse("");
    }

    /** Whether it can be gone on with. */
    public boolean isResumable() {
        return begun.isPresent() && !closed && damage.isEmpty();
    }

    /** The wearer's code, if one was answered. */
    public Optional<String> wearer() {
        return facts.stream()
                .filter(fact -> fact.about().equals(Optional.of(Subject.WEARER_CODE)))
                .map(Fact::answer)
                .findFirst();
    }

    /**
     * The day the mask was worn: that of the form when it was typed in later, and where that is not
     * known, or at the bench, the day it was opened.
     */
    public Optional<LocalDate> day() {
        return paper.flatMap(Paper::on).or(() -> begun.map(ZonedDateTime::toLocalDate));
    }

    public Optional<Worn> condition(String id) {
        return conditions.stream().filter(each -> each.id().equals(id)).findFirst();
    }

    public Optional<Measured> measure(String id) {
        return measures.stream().filter(each -> each.id().equals(id)).findFirst();
    }
}
