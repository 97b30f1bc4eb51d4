package rigside.decide;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.PrintStream;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * What the promise really costs, by simulation from raw normal values: every design of the
 * reference files and five of our own, then striking out, then efficiency. Run as DEVELOPERS.md
 * says; the tables there are what it printed.
 */
public final class CoverageStudy {

    /** Declared before the first run, and not changed after it. */
    static final long SEED = 20_261_125L;

    /** Campaigns a design. */
    static final int CAMPAIGNS = 1_000_000;

    record Design(String name, Schedule schedule, double alpha, double exponent) {}

    private CoverageStudy() {}

    /**
     * Prints all tables.
     *
     * @param args campaigns a design, if another number than {@link #CAMPAIGNS} is wanted
     */
    @SuppressWarnings("SystemOut")
    public static void main(String[] args) {
        int campaigns = args.length == 0 ? CAMPAIGNS : Integer.parseInt(args[0]);
        coverage(System.out, campaigns);
        StrikingStudy.print(System.out, campaigns);
        AmendingStudy.print(System.out, campaigns);
        EfficiencyStudy.print(System.out, campaigns);
    }

    /** All 84 of the reference files, then our own. */
    static List<Design> designs() {
        List<Design> designs = new ArrayList<>();
        for (String kind : List.of("paired", "independent", "unbalanced")) {
            for (JsonNode entry : Reference.read("sequential_t_" + kind + ".json").get("entries")) {
                designs.add(reference(kind, entry));
            }
        }
        designs.addAll(own());
        return designs;
    }

    private static Design reference(String kind, JsonNode entry) {
        double alpha = entry.get("alpha").doubleValue();
        double exponent = entry.get("rho").doubleValue();
        if (kind.equals("unbalanced")) {
            List<Schedule.Arms> arms =
                    Reference.list(entry.get("looks")).stream()
                            .map(n -> new Schedule.Arms(n.get(0).intValue(), n.get(1).intValue()))
                            .toList();
            return new Design(
                    entry.get("name").textValue(), Schedule.independent(arms), alpha, exponent);
        }
        int fewest = entry.get("n_min").intValue();
        int most = entry.get("n_max").intValue();
        return new Design(
                kind + " " + fewest + " to " + most,
                kind.equals("paired")
                        ? Schedule.paired(fewest, most)
                        : Schedule.independent(fewest, most),
                alpha,
                exponent);
    }

    static List<Design> own() {
        return List.of(
                new Design("own: paired 2 to 20", Schedule.paired(2, 20), 0.01, 3),
                new Design(
                        "own: paired, every second round of 4 to 12",
                        Schedule.paired(List.of(4, 6, 8, 10, 12)),
                        0.2,
                        1),
                new Design("own: independent 2 to 12", Schedule.independent(2, 12), 0.001, 2),
                new Design(
                        "own: 8 of A first, then B by twos",
                        Schedule.independent(
                                List.of(
                                        new Schedule.Arms(8, 2),
                                        new Schedule.Arms(8, 4),
                                        new Schedule.Arms(8, 6),
                                        new Schedule.Arms(8, 8))),
                        0.05,
                        2),
                new Design(
                        "own: two of B for one of A",
                        Schedule.independent(
                                List.of(
                                        new Schedule.Arms(2, 4),
                                        new Schedule.Arms(3, 6),
                                        new Schedule.Arms(4, 8),
                                        new Schedule.Arms(5, 10),
                                        new Schedule.Arms(6, 12))),
                        0.1,
                        2));
    }

    /** Counts by kind of {@link PromisePlayer}; each design has the seed of its place. */
    static long[] counts(Design design, int place, int campaigns) {
        return Blocks.count(
                SEED + 1000L * place,
                campaigns,
                PromisePlayer.KINDS,
                () -> new PromisePlayer(design.schedule(), design.alpha(), design.exponent()));
    }

    private static void coverage(PrintStream out, int campaigns) {
        out.println(
                "| design | alpha | rho | missed | z | above | z | peeking | level | boundary |");
        out.println("| --- | --- | --- | --- | --- | --- | --- | --- | --- | --- |");
        double worst = 0;
        List<Design> designs = designs();
        for (int i = 0; i < designs.size(); i++) {
            Design design = designs.get(i);
            long[] counts = counts(design, i, campaigns);
            double z = z(counts[PromisePlayer.MISSED], design.alpha(), campaigns);
            double above = z(counts[PromisePlayer.MISSED_ABOVE], design.alpha() / 2, campaigns);
            worst = Math.max(worst, Math.max(Math.abs(z), Math.abs(above)));
            out.printf(
                    Locale.ROOT,
                    "| %s | %s | %.0f | %.5f | %+.1f | %.5f | %+.1f | %.4f | %.4f | %.4f |%n",
                    design.name(),
                    design.alpha(),
                    design.exponent(),
                    share(counts[PromisePlayer.MISSED], campaigns),
                    z,
                    share(counts[PromisePlayer.MISSED_ABOVE], campaigns),
                    above,
                    share(counts[PromisePlayer.PEEKING], campaigns),
                    share(counts[PromisePlayer.NORMAL_LEVEL], campaigns),
                    share(counts[PromisePlayer.NORMAL_BOUNDARY], campaigns));
        }
        out.printf(Locale.ROOT, "%n%d designs, largest |z| %.2f%n%n", designs.size(), worst);
    }

    /** Distance of a share from the nominal one, in its standard errors. */
    static double z(long count, double nominal, int campaigns) {
        return (share(count, campaigns) - nominal) / Math.sqrt(nominal * (1 - nominal) / campaigns);
    }

    static double share(long count, int campaigns) {
        return (double) count / campaigns;
    }
}
