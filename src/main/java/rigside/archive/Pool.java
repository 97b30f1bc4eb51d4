package rigside.archive;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import rigside.protocol.Condition;
import rigside.protocol.Measure;
import rigside.protocol.Plan;
import rigside.protocol.Protocol;

/**
 * Sessions of one protocol and one wearer put together, each a block of its own: what they say
 * together, and how far they differ. No verdict: what each session promises covers itself alone.
 *
 * @param sessions the sessions, the earliest first
 * @param comparisons one for each measure compared and each condition but the reference
 * @param remarks what has to be known of them; may be empty
 */
public record Pool(List<Archived> sessions, List<Pooled> comparisons, List<String> remarks) {

    /** The confidence of every interval and limit here. */
    public static final double CONFIDENCE = 0.95;

    /** Said of every pooled interval. */
    public static final String NO_VERDICT =
            "No verdict is given. Each session stopped when its own looks said so, and its promise"
                    + " holds for it alone; these are ordinary 95 % intervals over sessions that"
                    + " stopped when they liked, and no promise covers them. To answer the question"
                    + " anew, write a new plan whose rounds are its own; 'rigside spread' tells the"
                    + " spread to plan with.";

    public Pool {
        sessions = List.copyOf(sessions);
        comparisons = List.copyOf(comparisons);
        remarks = List.copyOf(remarks);
    }

    /**
     * Whether these can be pooled.
     *
     * @param sessions in any order
     */
    public static Optional<Refusal> refusal(List<Chosen> sessions) {
        if (sessions.size() < 2) {
            return Optional.of(
                    new Refusal(
                            "pooling takes two sessions, "
                                    + (sessions.isEmpty() ? "there is none" : "there is one"),
                            "'rigside analyse' tells what one says"));
        }
        return Together.refusal(sessions)
                .or(() -> Together.protocols(sessions))
                .or(() -> design(sessions.get(0).protocol().orElseThrow()));
    }

    private static Optional<Refusal> design(Protocol protocol) {
        if (protocol.purpose() != Protocol.Purpose.COMPARISON) {
            return Optional.of(
                    new Refusal(
                            "these sessions compare nothing",
                            "'rigside spread' puts spreads together, 'rigside follow' one condition"
                                    + " over time"));
        }
        return protocol.plan().design() == Plan.Design.ROUNDS
                ? Optional.empty()
                : Optional.of(
                        new Refusal(
                                "these sessions set no rounds against each other, their values"
                                        + " stand by themselves",
                                "sessions can be pooled by the differences within rounds only"));
    }

    /**
     * Pools them.
     *
     * @param chosen in any order; {@link #refusal} has to be empty
     */
    public static Pool of(List<Chosen> chosen) {
        List<Chosen> sessions =
                chosen.stream()
                        .sorted(Comparator.comparing(Chosen::session, Wear.IN_ORDER))
                        .toList();
        Chosen latest = sessions.get(sessions.size() - 1);
        Protocol protocol = latest.protocol().orElseThrow();
        List<Pooled> comparisons = new ArrayList<>();
        for (Measure measure : protocol.measures()) {
            if (measure.compared().isPresent()) {
                for (Condition condition :
                        protocol.conditions().subList(1, protocol.conditions().size())) {
                    comparisons.add(
                            Pooled.of(
                                    sessions.stream().map(Chosen::values).toList(),
                                    latest.session().measure(measure.id()).orElseThrow(),
                                    measure.resolution(),
                                    latest.session().condition(condition.id()).orElseThrow(),
                                    latest.session().conditions().get(0)));
                }
            }
        }
        return new Pool(
                sessions.stream().map(Chosen::session).toList(), comparisons, remarks(sessions));
    }

    private static List<String> remarks(List<Chosen> sessions) {
        List<String> remarks = new ArrayList<>();
        Chosen first = sessions.get(0);
        if (first.session().simulated()) {
            remarks.add("Simulated: every value of these sessions is invented.");
        }
        if (first.session().wearer().isEmpty()) {
            remarks.add(
                    "No wearer's code is on record: that all were worn by one person is taken for"
                            + " granted.");
        }
        remarks.addAll(AnsweredUnlike.remarks(sessions.stream().map(Chosen::session).toList()));
        LinkedHashSet<String> hashes = new LinkedHashSet<>();
        for (Chosen each : sessions.subList(1, sessions.size())) {
            remarks.addAll(
                    Alike.remarks(
                            first.protocol().orElseThrow(),
                            each.protocol().orElseThrow(),
                            each.name()));
        }
        sessions.forEach(each -> each.session().protocol().ifPresent(p -> hashes.add(p.hash())));
        if (hashes.size() > 1) {
            remarks.add(
                    "The protocols are not the same to the letter, but make the same values; the"
                            + " latest one's words are used.");
        }
        return List.copyOf(remarks);
    }
}
