package rigside.archive;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Collectors;

/**
 * Which sessions of the archive are meant: closed ones of one wearer, real or invented but never
 * both.
 *
 * @param protocol words its title or file holds, or the beginning of its hash; any when empty
 * @param wearer the wearer's code; any when empty
 * @param simulated whether invented sessions are meant instead of real ones
 */
public record Among(Optional<String> protocol, Optional<String> wearer, boolean simulated) {

    /** As many digits of a hash are no word by chance. */
    private static final int DIGITS = 8;

    /** Whether a session is meant. */
    public boolean holds(Archived session) {
        return isAskedFor(session)
                && session.closed()
                && session.damage().isEmpty()
                && session.simulated() == simulated;
    }

    /**
     * The folders of those meant, each session once: a copy of another one is passed over.
     *
     * @param all every session
     */
    public Set<Path> meant(List<Archived> all) {
        List<Archived> held = all.stream().filter(this::holds).toList();
        Set<Path> copies = Copies.among(held);
        return held.stream()
                .map(Archived::folder)
                .filter(folder -> !copies.contains(folder))
                .collect(Collectors.toUnmodifiableSet());
    }

    private boolean isAskedFor(Archived session) {
        return session.protocol().filter(this::isProtocol).isPresent()
                && wearer.map(code -> Whose.is(session, code)).orElse(true);
    }

    private boolean isProtocol(Archived.Followed followed) {
        String words = protocol.orElse("").strip().toLowerCase(Locale.ROOT);
        return followed.title().toLowerCase(Locale.ROOT).contains(words)
                || followed.file().toLowerCase(Locale.ROOT).contains(words)
                || (words.length() >= DIGITS && followed.hash().startsWith(words));
    }

    /** What was asked for and is left out all the same, in one sentence; empty when nothing is. */
    public Optional<String> leftOut(List<Archived> all) {
        List<String> parts = new ArrayList<>();
        count(all, each -> !each.closed() && each.damage().isEmpty(), "open", parts);
        count(all, each -> !each.damage().isEmpty(), "damaged", parts);
        count(
                all,
                each -> each.closed() && each.damage().isEmpty() && each.simulated() != simulated,
                simulated ? "real" : "simulated",
                parts);
        Set<Path> copies = Copies.among(all.stream().filter(this::holds).toList());
        if (!copies.isEmpty()) {
            parts.add(Names.count(copies.size(), "copy of another", "copies of others"));
        }
        return parts.isEmpty()
                ? Optional.empty()
                : Optional.of("Left out: " + Names.list(parts) + ".");
    }

    private void count(
            List<Archived> all, Predicate<Archived> which, String word, List<String> parts) {
        int count = (int) all.stream().filter(this::isAskedFor).filter(which).count();
        if (count > 0) {
            parts.add(Names.count(count, word + " session", word + " sessions"));
        }
    }

    /**
     * Why nothing can be said of these, which are meant: there are none, or of several wearers.
     *
     * @param all every session
     */
    public Optional<Refusal> refusal(List<Archived> all) {
        List<Archived> meant = all.stream().filter(this::holds).toList();
        if (meant.isEmpty()) {
            return Optional.of(
                    new Refusal(
                            "there is no closed "
                                    + (simulated ? "simulated " : "")
                                    + "session"
                                    + protocol.map(words -> " of a protocol '" + words + "'")
                                            .orElse("")
                                    + wearer.map(code -> " of the wearer '" + code + "'")
                                            .orElse(""),
                            leftOut(all)
                                    .map(
                                            left ->
                                                    left
                                                            + (simulated
                                                                    ? ""
                                                                    : " --simulated takes invented"
                                                                            + " ones"))
                                    .orElse("'rigside sessions' lists what there is")));
        }
        List<String> wearers = Whose.wearers(meant);
        return wearers.size() < 2
                ? Optional.empty()
                : Optional.of(
                        new Refusal(
                                "these sessions are of several wearers: " + Names.list(wearers),
                                "name one with --wearer CODE"));
    }
}
