package rigside.analysis;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import rigside.session.Event;
import rigside.session.Evolve;
import rigside.session.Look;
import rigside.session.Recorded;
import rigside.session.State;

/**
 * A recorded look, reckoned anew from the events before it.
 *
 * @param event the number of its event in the journal
 * @param round how many rounds were complete
 * @param version the program version that opened the session, or took it up, before it
 * @param differs what comes out otherwise now, in words without numbers; empty when nothing does
 */
public record Relooked(long event, int round, String version, List<String> differs) {
    /** Numbers come from quadrature, whose last digits another processor may round otherwise. */
    private static final double SAME = 1e-9;

    public Relooked {
        differs = List.copyOf(differs);
    }

    /** All looks of a journal, in order. */
    public static List<Relooked> of(List<Recorded> journal) {
        List<Relooked> all = new ArrayList<>();
        State state = State.START;
        String version = "";
        for (Recorded recorded : journal) {
            if (recorded.event() instanceof Event.SessionOpened opened) {
                version = opened.programVersion();
            } else if (recorded.event() instanceof Event.SessionReopened reopened) {
                version = reopened.programVersion();
            } else if (recorded.event() instanceof Event.LookTaken taken) {
                List<String> differs = differences(taken.look(), Looks.due(state));
                all.add(new Relooked(recorded.number(), taken.look().round(), version, differs));
            }
            state = Evolve.step(state, recorded.event(), recorded.at());
        }
        return List.copyOf(all);
    }

    private static List<String> differences(Look recorded, Look now) {
        List<String> differs = new ArrayList<>();
        add(differs, recorded.round() == now.round(), "the number of complete rounds");
        add(differs, recorded.enough() == now.enough(), "whether every question is settled");
        add(differs, recorded.planUsedUp() == now.planUsedUp(), "whether the plan is used up");
        for (Look.Line line : recorded.lines()) {
            Optional<Look.Line> same =
                    now.lines().stream()
                            .filter(each -> each.measure().equals(line.measure()))
                            .filter(each -> each.condition().equals(line.condition()))
                            .findFirst();
            String of = " of " + line.measure() + ", " + line.condition();
            same.ifPresentOrElse(
                    each -> differs.addAll(differences(line, each, of)),
                    () -> differs.add("the comparison" + of));
        }
        add(differs, recorded.lines().size() == now.lines().size(), "the number of comparisons");
        return differs;
    }

    private static List<String> differences(Look.Line one, Look.Line other, String of) {
        List<String> differs = new ArrayList<>();
        add(differs, one.n() == other.n(), "the number of values" + of);
        add(differs, one.entries().equals(other.entries()), "the entries used" + of);
        add(differs, isSame(one.estimate(), other.estimate()), "the estimate" + of);
        add(
                differs,
                isSame(one.low(), other.low()) && isSame(one.high(), other.high()),
                "the interval" + of);
        add(differs, isSame(one.critical(), other.critical()), "the critical value" + of);
        add(
                differs,
                one.verdict().equals(other.verdict()) && one.settled() == other.settled(),
                "the verdict" + of);
        return differs;
    }

    private static void add(List<String> differs, boolean same, String what) {
        if (!same) {
            differs.add(what);
        }
    }

    /** Relative to the larger one; both empty, not a number or the same infinity are the same. */
    private static boolean isSame(OptionalDouble one, OptionalDouble other) {
        if (one.isEmpty() || other.isEmpty()) {
            return one.equals(other);
        }
        double a = one.getAsDouble();
        double b = other.getAsDouble();
        return Double.compare(a, b) == 0
                || Math.abs(a - b) <= SAME * Math.max(Math.abs(a), Math.abs(b));
    }
}
