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

    static Optional<Refusal> unknown(
            boolean known, String what, String wanted, List<String> there) {
        return known
                ? Optional.empty()
                : Optional.of(
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
