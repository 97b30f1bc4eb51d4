package rigside.archive;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import rigside.analysis.Comparison;
import rigside.analysis.Concluded;
import rigside.decide.Conclusion;
import rigside.journal.Damage;
import rigside.journal.Reading;
import rigside.protocol.Condition;
import rigside.protocol.Measure;
import rigside.protocol.Protocol;
import rigside.session.Event;
import rigside.session.Recorded;
import rigside.session.Schedule;
import rigside.session.State;

/** What is remembered of a session, from its journal. */
final class FromJournal {
    private FromJournal() {}

    /**
     * Of a journal that was read.
     *
     * @param folder the session's folder
     * @param file the journal's file just before it was read
     */
    static WithValues of(Path folder, Optional<Archived.OnDisk> file, Reading reading) {
        State state = reading.state();
        boolean opened = state.opening().isPresent();
        boolean closed = state.course().closed();
        List<Damage> damage = new ArrayList<>(reading.damage());
        List<Concluded> concluded = closed ? concluded(state, folder, damage) : List.of();
        Optional<Event.SessionOpened> opening = state.opening().map(State.Opening::event);
        Archived session =
                new Archived(
                        folder,
                        file,
                        reading.events().stream().findFirst().map(Recorded::wall),
                        reading.last().filter(each -> closed).map(Recorded::wall),
                        closed,
                        opening.filter(Event.SessionOpened::simulated).isPresent(),
                        opening.flatMap(Event.SessionOpened::paper)
                                .map(paper -> new Archived.Paper(paper.on(), paper.words())),
                        opening.map(event -> followed(event, state.protocol())),
                        opened ? Facts.of(state) : List.of(),
                        opened ? worn(state.protocol()) : List.of(),
                        opened ? measures(state.protocol()) : List.of(),
                        opened ? Schedule.completeRounds(state).size() : 0,
                        findings(concluded),
                        damage);
        return new WithValues(session, values(concluded, state, reading.events()));
    }

    /** One session that the program has a fault with must not take all others out of sight. */
    private static List<Concluded> concluded(State state, Path folder, List<Damage> damage) {
        try {
            return Concluded.of(state);
        } catch (RuntimeException fault) {
            String name = folder.getFileName().toString();
            damage.add(
                    new Damage(
                            name,
                            0,
                            "what it came to cannot be told, by a fault of the program",
                            "'rigside analyse " + name + " --debug' tells where"));
            return List.of();
        }
    }

    private static Archived.Followed followed(Event.SessionOpened event, Protocol protocol) {
        return new Archived.Followed(
                event.protocolName(),
                protocol.title(),
                protocol.question(),
                hash(event.protocolText()),
                protocol.purpose(),
                protocol.plan().design());
    }

    static String hash(String text) {
        try {
            MessageDigest digest = MessageDigest.getInstance("SHA-256");
            return HexFormat.of().formatHex(digest.digest(text.getBytes(StandardCharsets.UTF_8)));
        } catch (NoSuchAlgorithmException everyJavaHasIt) {
            throw new IllegalStateException(everyJavaHasIt);
        }
    }

    private static List<Archived.Worn> worn(Protocol protocol) {
        return protocol.conditions().stream().map(FromJournal::worn).toList();
    }

    private static Archived.Worn worn(Condition condition) {
        Condition.Specimen specimen = condition.specimen();
        return new Archived.Worn(
                condition.id(), condition.title(), specimen.piece(), specimen.wornBefore());
    }

    /** The measures of a protocol as they are remembered of its sessions. */
    static List<Archived.Measured> measures(Protocol protocol) {
        return protocol.measures().stream()
                .map(
                        each ->
                                new Archived.Measured(
                                        each.id(),
                                        each.title(),
                                        kind(each.kind()),
                                        each.unit().symbol(),
                                        each.scale() == Measure.Compared.Scale.RATIO,
                                        each.compared().map(FromJournal::compared)))
                .toList();
    }

    /** The word of a protocol file. */
    private static String kind(Measure.Kind kind) {
        return kind.getClass()
                .getSimpleName()
                .replaceAll("(?<=[a-z])(?=[A-Z])", "-")
                .toLowerCase(Locale.ROOT);
    }

    private static Archived.Compared compared(Measure.Compared how) {
        return new Archived.Compared(
                how.meaningful(), how.bandLow(), how.bandHigh(), how.matters(), how.decides());
    }

    private static List<Archived.Finding> findings(List<Concluded> concluded) {
        return concluded.stream()
                .flatMap(each -> each.comparisons().stream())
                .map(
                        each ->
                                new Archived.Finding(
                                        each.measure(),
                                        each.condition(),
                                        conclusion(each),
                                        each.matters(),
                                        each.estimate(),
                                        each.interval(),
                                        each.n()))
                .toList();
    }

    /** A verdict that stays goes the way it went when it settled. */
    private static Conclusion conclusion(Comparison each) {
        if (each.verdict().settled()) {
            return each.settledAt().orElseThrow().conclusion();
        }
        Conclusion now = each.presently();
        return now.verdict() == each.verdict() ? now : new Conclusion(each.verdict(), 0);
    }

    private static List<WithValues.Value> values(
            List<Concluded> concluded, State state, List<Recorded> events) {
        if (concluded.isEmpty()) {
            return List.of();
        }
        Wearings wearings = Wearings.of(state, events);
        List<WithValues.Value> values = new ArrayList<>();
        for (Concluded each : concluded) {
            each.values().stream()
                    .map(
                            value ->
                                    new WithValues.Value(
                                            each.measure().id(),
                                            value.condition(),
                                            value.donning(),
                                            value.round(),
                                            wearings.worn(value.donning()),
                                            wearings.before(value.donning()),
                                            value.standing(),
                                            value.value(),
                                            value.halved(),
                                            value.bounded(),
                                            value.unresolved()))
                    .forEach(values::add);
        }
        return values;
    }
}
