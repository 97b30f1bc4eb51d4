package rigside.archive;

import java.nio.file.Path;
import java.time.ZonedDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import rigside.journal.Damage;
import rigside.protocol.Plan;
import rigside.protocol.Protocol;
import rigside.protocol.Subject;

/** A session made up for a test: open, not begun, without anything, unless it is told otherwise. */
public final class SomeSession {
    private final Path folder;
    private Optional<ZonedDateTime> begun = Optional.empty();
    private boolean closed;
    private boolean simulated;
    private String title = "Disc";
    private String question = "Does it?";
    private String hash = "0";
    private int rounds;
    private List<Archived.Worn> conditions = List.of();
    private final List<Archived.Fact> facts = new ArrayList<>();
    private final List<Archived.Finding> findings = new ArrayList<>();
    private List<Damage> damage = List.of();

    private SomeSession(Path folder) {
        this.folder = folder;
    }

    public static SomeSession in(Path folder) {
        return new SomeSession(folder);
    }

    public SomeSession begun(String when) {
        begun = Optional.of(ZonedDateTime.parse(when));
        return this;
    }

    public SomeSession closed() {
        closed = true;
        return this;
    }

    public SomeSession simulated() {
        simulated = true;
        return this;
    }

    public SomeSession about(String itsTitle, String itsQuestion) {
        title = itsTitle;
        question = itsQuestion;
        return this;
    }

    public SomeSession hash(String itsHash) {
        hash = itsHash;
        return this;
    }

    /** Conditions whose ids are their titles. */
    public SomeSession comparing(String... titles) {
        conditions =
                Stream.of(titles).map(each -> new Archived.Worn(each, each, "mask A", 0)).toList();
        return this;
    }

    public SomeSession rounds(int complete) {
        rounds = complete;
        return this;
    }

    public SomeSession fact(String id, String answer, Subject about) {
        facts.add(new Archived.Fact(id, id + "?", answer, Optional.of(about)));
        return this;
    }

    public SomeSession found(Archived.Finding finding) {
        findings.add(finding);
        return this;
    }

    public SomeSession damaged(List<Damage> itsDamage) {
        damage = itsDamage;
        return this;
    }

    public Archived archived() {
        return new Archived(
                folder,
                Optional.empty(),
                begun,
                begun.filter(each -> closed),
                closed,
                simulated,
                Optional.empty(),
                Optional.of(
                        new Archived.Followed(
                                "disc.yaml",
                                title,
                                question,
                                hash,
                                Protocol.Purpose.COMPARISON,
                                Plan.Design.ROUNDS)),
                facts,
                conditions,
                List.of(),
                rounds,
                findings,
                damage);
    }
}
