package rigside.command;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.ZoneOffset;
import java.time.ZonedDateTime;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import rigside.journal.Journal;
import rigside.measure.Dimension;
import rigside.rig.SimulatedRig;
import rigside.rig.Wearer;
import rigside.runner.JournalLedger;
import rigside.runner.Rehearsal;
import rigside.session.Event;

/**
 * Rehearsed sessions of many days kept on disk, each day with an effect of its own on whatever is
 * worn: one that a reader of the archive has to find again.
 *
 * @param sessions the folder of sessions
 * @param text the protocol's text
 * @param real whether they are kept as if they had been measured
 */
public record KeptSessions(Path sessions, String text, boolean real) {
    private static final ZonedDateTime FIRST =
            ZonedDateTime.of(2026, 3, 2, 9, 0, 0, 0, ZoneOffset.UTC);

    /** The demonstration's protocol. */
    public static KeptSessions ofDemo(Path sessions, boolean real) throws IOException {
        return new KeptSessions(
                sessions, Files.readString(Path.of("demo", "prefilter-disc.yaml")), real);
    }

    /**
     * Keeps one session.
     *
     * @param day the day it begins, counted from the first
     * @param seed of its values and of the day's effect
     * @param ofDay the standard deviation of what a day does, natural-log scale
     * @return its folder
     */
    public Path keep(int day, long seed, double ofDay) throws Exception {
        double effect = Math.exp(ofDay * new SplittableRandom(seed).nextGaussian());
        SimulatedRig rig = new SimulatedRig(wearer(effect), seed);
        Event.SessionOpened opening =
                new Event.SessionOpened("test", "disc.yaml", text, seed, rig.words(), "", !real, 1);
        ZonedDateTime start = FIRST.plusDays(day);
        try (Journal journal = Journal.create(sessions, "disc.yaml", start)) {
            Rehearsal.run(new JournalLedger(journal), rig, start, opening);
            return journal.folder();
        }
    }

    private static Wearer wearer(double effect) {
        Wearer plain = Wearer.plain(List.of("plain", "with-disc"));
        return new Wearer(
                "invented, of one day",
                plain.ambient(),
                plain.ambientSpread(),
                Map.of(
                        "plain", behaviour(250 * effect, 6.1 * effect),
                        "with-disc", behaviour(240 * effect, 7.8 * effect)),
                behaviour(250 * effect, 6.1 * effect));
    }

    private static Wearer.Behaviour behaviour(double fitFactor, double seconds) {
        return new Wearer.Behaviour(
                new Wearer.Level(fitFactor, 0.2, 0.15, Dimension.NUMBER),
                new Wearer.Level(seconds, 0.03, 0.04, Dimension.TIME),
                new Wearer.Level(105, 0.05, 0.08, Dimension.PRESSURE));
    }

    /** Makes some to try commands on: the folder, and how many. */
    public static void main(String... args) throws Exception {
        KeptSessions kept = ofDemo(Path.of(args[0]), true);
        for (int i = 0; i < Integer.parseInt(args[1]); i++) {
            System.out.println(kept.keep(7 * i, 100 + i, 0.06));
        }
    }
}
