package rigside.archive;

import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import rigside.protocol.Protocol;

/** Whether sessions may be set beside each other at all. */
final class Together {
    private Together() {}

    /** The first reason against it, of each by itself and of all together. */
    static Optional<Refusal> refusal(List<Chosen> sessions) {
        Set<String> opened = new HashSet<>();
        for (Chosen each : sessions) {
            Optional<Refusal> alone = ofOne(each);
            if (alone.isPresent()) {
                return alone;
            }
            if (!opened.add(each.session().begun().orElseThrow().toInstant() + " " + each.seed())) {
                return refusal(
                        each.name() + " is named twice, or is a copy of another one",
                        "leave one of them out");
            }
        }
        return mixed(sessions).or(() -> wearers(sessions));
    }

    private static Optional<Refusal> ofOne(Chosen each) {
        if (each.protocol().isEmpty() || each.session().begun().isEmpty()) {
            return refusal(
                    each.session().damage().isEmpty()
                            ? each.name() + " holds no session"
                            : each.session().damage().get(0).toString(),
                    "");
        }
        if (!each.session().damage().isEmpty()) {
            return refusal(
                    each.session().damage().get(0).toString(),
                    "a damaged journal is not set beside" + " others");
        }
        return each.session().closed()
                ? Optional.empty()
                : refusal(
                        each.name() + " is still open",
                        "'rigside resume' goes on with it; close it first");
    }

    private static Optional<Refusal> mixed(List<Chosen> sessions) {
        List<Chosen> invented =
                sessions.stream().filter(each -> each.session().simulated()).toList();
        return invented.isEmpty() || invented.size() == sessions.size()
                ? Optional.empty()
                : refusal(
                        "simulated sessions are not set beside real ones: "
                                + Names.list(invented.stream().map(Chosen::name).toList())
                                + (invented.size() == 1 ? " is" : " are")
                                + " invented",
                        "leave them out, or name simulated ones only");
    }

    private static Optional<Refusal> wearers(List<Chosen> sessions) {
        Chosen first = sessions.get(0);
        return sessions.stream()
                .filter(each -> !Whose.same(each.session(), first.session()))
                .findFirst()
                .flatMap(
                        other ->
                                refusal(
                                        "not the same wearer: "
                                                + wearer(first)
                                                + ", "
                                                + wearer(other),
                                        "what one face gives says nothing of another"));
    }

    private static String wearer(Chosen each) {
        return each.session()
                .wearer()
                .map(code -> each.name() + " was worn by '" + code + "'")
                .orElse(each.name() + " names no wearer");
    }

    /** Whether all went by protocols that make the same values. */
    static Optional<Refusal> protocols(List<Chosen> sessions) {
        Protocol first = sessions.get(0).protocol().orElseThrow();
        for (Chosen each : sessions) {
            Optional<String> differs = Alike.difference(first, each.protocol().orElseThrow());
            if (differs.isPresent()) {
                return refusal(
                        sessions.get(0).name()
                                + " and "
                                + each.name()
                                + " are different tests, they differ in "
                                + differs.get(),
                        "sessions can be pooled where conditions, measures and the steps of a"
                                + " donning are the same");
            }
        }
        return Optional.empty();
    }

    private static Optional<Refusal> refusal(String what, String help) {
        return Optional.of(new Refusal(what, help));
    }
}
