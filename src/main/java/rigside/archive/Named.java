package rigside.archive;

import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** Conditions and measures as a tester names them: by id or title, whatever the case. */
final class Named {
    private Named() {}

    private static boolean isNamed(String wanted, String id, String title) {
        String word = wanted.strip().toLowerCase(Locale.ROOT);
        return id.toLowerCase(Locale.ROOT).equals(word)
                || title.toLowerCase(Locale.ROOT).equals(word);
    }

    static Optional<Archived.Worn> worn(Archived session, String wanted) {
        return session.conditions().stream()
                .filter(each -> isNamed(wanted, each.id(), each.title()))
                .findFirst();
    }

    static Optional<Archived.Measured> measured(Archived session, String wanted) {
        return session.measures().stream()
                .filter(each -> isNamed(wanted, each.id(), each.title()))
                .findFirst();
    }

    /** Why a measure cannot be taken from these; empty where one of them has it. */
    static Optional<Refusal> unknownMeasure(List<WithValues> sessions, String wanted) {
        return sessions.stream().anyMatch(each -> measured(each.session(), wanted).isPresent())
                ? Optional.empty()
                : unknown(
                        "measure",
                        wanted,
                        sessions.stream()
                                .flatMap(each -> each.session().measures().stream())
                                .map(Archived.Measured::id)
                                .toList());
    }

    /** Why a condition cannot be taken from these; empty where one of them has it. */
    static Optional<Refusal> unknownCondition(List<WithValues> sessions, String wanted) {
        return sessions.stream().anyMatch(each -> worn(each.session(), wanted).isPresent())
                ? Optional.empty()
                : unknown(
                        "condition",
                        wanted,
                        sessions.stream()
                                .flatMap(each -> each.session().conditions().stream())
                                .map(Archived.Worn::id)
                                .toList());
    }

    private static Optional<Refusal> unknown(String what, String wanted, List<String> there) {
        return Optional.of(
                new Refusal(
                        "none of these sessions has a " + what + " '" + wanted + "'",
                        "they have "
                                + Names.list(
                                        there.stream()
                                                .distinct()
                                                .sorted()
                                                .map(each -> "'" + each + "'")
                                                .toList())));
    }
}
