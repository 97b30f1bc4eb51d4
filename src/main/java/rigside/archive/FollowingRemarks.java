package rigside.archive;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** What has to be known of sessions that are followed over time. */
record FollowingRemarks(List<WithValues> sessions, List<Following.Point> points) {

    /** So many protocols are told by title. */
    private static final int NAMED = 5;

    List<String> all() {
        List<String> all = new ArrayList<>();
        Archived first = points.get(0).session();
        if (first.simulated()) {
            all.add("Simulated: every value of these sessions is invented.");
        }
        List<String> protocols =
                points.stream().map(each -> each.session().title()).distinct().toList();
        if (protocols.size() > 1) {
            all.add(
                    "The sessions are of "
                            + protocols.size()
                            + " protocols ("
                            + Names.list(protocols.subList(0, Math.min(NAMED, protocols.size())))
                            + (protocols.size() > NAMED ? " and more" : "")
                            + "), which may measure in their own ways: --protocol takes one of"
                            + " them.");
        }
        int without = sessions.size() - points.size();
        if (without > 0) {
            all.add(
                    Names.count(without, "session has", "sessions have")
                            + " no such value, or measured in another way.");
        }
        if (points.stream().anyMatch(Following.Point::bounded)) {
            all.add(
                    "Means with \"at least\" hold values that the counter only bounded: they, and"
                            + " what is reckoned with them, may be too low.");
        }
        all.addAll(AnsweredUnlike.remarks(points.stream().map(Following.Point::session).toList()));
        wear().ifPresent(all::add);
        return List.copyOf(all);
    }

    private Optional<String> wear() {
        Wear wear = Wear.of(sessions);
        return points.stream()
                .filter(each -> wear.forgotten(each.session(), each.piece()) > 0)
                .findFirst()
                .map(
                        each ->
                                "The protocol of "
                                        + Names.of(each.session())
                                        + " says less often worn of '"
                                        + each.piece()
                                        + "' than earlier sessions left it: counted on from"
                                        + " those. Keep 'worn-before' up to date.");
    }
}
