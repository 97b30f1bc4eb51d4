package rigside.report;

import java.time.ZonedDateTime;
import java.util.ArrayList;
import java.util.List;
import rigside.session.Recorded;

/** What has to be known before anything is read. */
record ReportHead(Material of) {

    static List<Block> of(Material of) {
        return new ReportHead(of).blocks();
    }

    private List<Block> blocks() {
        List<Block> blocks = new ArrayList<>();
        if (of.opened().simulated()) {
            blocks.add(
                    new Block.Caution(
                            "Simulated: every value of this session is invented. Nobody wore"
                                    + " anything; it says nothing about any mask."));
        }
        if (!of.trouble().isEmpty()) {
            blocks.add(
                    new Block.Caution(
                            "The journal of this session is damaged. This is the report of what"
                                    + " comes before the damage."));
            blocks.add(new Block.Points(of.trouble()));
        }
        if (!of.isClosed()) {
            blocks.add(new Block.Caution(open()));
        }
        of.opened()
                .paper()
                .ifPresent(
                        paper ->
                                blocks.add(
                                        new Block.Words(
                                                "E"
                                                        + paper.words().substring(1)
                                                        + ": every time and reading was typed in"
                                                        + " later.")));
        blocks.add(new Block.Words(when()));
        return blocks;
    }

    private String open() {
        String concealed = of.shown().concealed();
        return "This session is not closed: the report is of what there is so far."
                + (concealed.isEmpty() ? "" : " Left out: " + concealed + ".");
    }

    private String when() {
        ZonedDateTime from = of.events().get(0).wall();
        ZonedDateTime to = Recorded.end(of.events()).wall();
        String end =
                !of.hasTimes() || Clock.minute(from).equals(Clock.minute(to))
                        ? ""
                        : " to " + until(from, to);
        return (of.opened().paper().isPresent() ? "Typed in on " : "")
                + Clock.minute(from)
                + end
                + ". "
                + of.shown().next()
                + "."
                + afterwards();
    }

    private String afterwards() {
        Recorded last = of.events().get(of.events().size() - 1);
        return last.equals(Recorded.end(of.events()))
                ? ""
                : " Put right after its close, last on " + Clock.minute(last.wall()) + ".";
    }

    private static String until(ZonedDateTime from, ZonedDateTime to) {
        String last = Clock.minute(to);
        return from.toLocalDate().equals(to.toLocalDate())
                ? last.substring(last.lastIndexOf(' ') + 1)
                : last;
    }
}
