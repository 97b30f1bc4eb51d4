package rigside.archive;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.stream.Stream;
import rigside.protocol.Subject;

/**
 * Which sessions are wanted: all that every part of it lets through. What is empty lets all
 * through.
 *
 * @param search words to be found somewhere in the session
 * @param wearer the wearer's code
 * @param mask words in what was answered about the mask, or in how a piece worn is marked
 * @param protocol words in the protocol's title or its file's name
 * @param condition words in one condition's title, or its id
 * @param from the first day
 * @param to the last day
 * @param verdicts one of these
 * @param closed whether it has to be closed, or open
 * @param simulated whether its values have to be invented, or real
 */
public record Wanted(
        Search search,
        Optional<String> wearer,
        Optional<String> mask,
        Optional<String> protocol,
        Optional<String> condition,
        Optional<LocalDate> from,
        Optional<LocalDate> to,
        List<VerdictAsked> verdicts,
        Optional<Boolean> closed,
        Optional<Boolean> simulated)
        implements Predicate<Archived> {
    public Wanted {
        verdicts = List.copyOf(verdicts);
    }

    @Override
    public boolean test(Archived session) {
        return closed.map(wish -> wish == session.closed()).orElse(true)
                && simulated.map(wish -> wish == session.simulated()).orElse(true)
                && from.map(day -> isOn(session, each -> !each.isBefore(day))).orElse(true)
                && to.map(day -> isOn(session, each -> !each.isAfter(day))).orElse(true)
                && wearer.map(code -> Whose.is(session, code)).orElse(true)
                && isIn(mask, session, Wanted::aboutTheMask)
                && isIn(protocol, session, Wanted::aboutTheProtocol)
                && isIn(condition, session, Wanted::aboutConditions)
                && (verdicts.isEmpty() || verdicts.stream().anyMatch(each -> each.isIn(session)))
                && search.finds(session);
    }

    private static boolean isOn(Archived session, Predicate<LocalDate> wish) {
        return session.day().filter(wish).isPresent();
    }

    /** All the words within one of the texts. */
    private static boolean isIn(
            Optional<String> words, Archived session, Function<Archived, Stream<String>> texts) {
        return words.map(Search::of)
                .map(search -> texts.apply(session).map(Folded::of).anyMatch(search::finds))
                .orElse(true);
    }

    private static Stream<String> aboutTheMask(Archived session) {
        return Stream.concat(
                session.facts().stream()
                        .filter(fact -> fact.about().equals(Optional.of(Subject.MASK)))
                        .map(Archived.Fact::answer),
                session.conditions().stream().map(Archived.Worn::piece));
    }

    private static Stream<String> aboutTheProtocol(Archived session) {
        return session.protocol().stream().flatMap(each -> Stream.of(each.title(), each.file()));
    }

    private static Stream<String> aboutConditions(Archived session) {
        return session.conditions().stream().flatMap(each -> Stream.of(each.title(), each.id()));
    }
}
