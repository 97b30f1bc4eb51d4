package rigside.archive;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;

/**
 * The measure of a session that is the same as one of a protocol, whatever it is called there: of
 * the same kind, unit and scale. Numbers that were typed or calculated can be anything, so they
 * have to have the same title too. Where a kind is measured twice, id or title tells which is
 * which, and without that none is taken.
 *
 * @param wanted the measure of the protocol
 * @param beside all measures of the protocol, itself among them
 */
record Counterpart(Archived.Measured wanted, List<Archived.Measured> beside) {
    private static final Set<String> ANYTHING = Set.of("typed-number", "calculated");

    Counterpart {
        beside = List.copyOf(beside);
    }

    Optional<Archived.Measured> in(Archived session) {
        List<Archived.Measured> alike = alike(session.measures());
        return first(alike, each -> each.id().equals(wanted.id()))
                .or(() -> first(alike, this::isTitledSo))
                .or(
                        () ->
                                alike.size() == 1 && alike(beside).size() == 1
                                        ? Optional.of(alike.get(0))
                                        : Optional.empty());
    }

    private List<Archived.Measured> alike(List<Archived.Measured> all) {
        return all.stream()
                .filter(
                        each ->
                                each.kind().equals(wanted.kind())
                                        && each.unit().equals(wanted.unit())
                                        && each.ratio() == wanted.ratio()
                                        && (!ANYTHING.contains(each.kind()) || isTitledSo(each)))
                .toList();
    }

    private boolean isTitledSo(Archived.Measured each) {
        return Folded.of(each.title()).equals(Folded.of(wanted.title()));
    }

    private static Optional<Archived.Measured> first(
            List<Archived.Measured> all, Predicate<Archived.Measured> which) {
        return all.stream().filter(which).findFirst();
    }
}
