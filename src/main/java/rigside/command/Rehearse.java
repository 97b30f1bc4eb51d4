package rigside.command;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.time.ZonedDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.ParentCommand;
import picocli.CommandLine.Spec;
import rigside.bench.Playing;
import rigside.bench.Settings;
import rigside.bench.Wall;
import rigside.desk.Choice;
import rigside.desk.Openings;
import rigside.desk.ProtocolFile;
import rigside.desk.RigOnDisk;
import rigside.journal.NotOpened;
import rigside.protocol.Protocol;
import rigside.report.Material;
import rigside.report.SessionReport;
import rigside.rig.RigFile;
import rigside.runner.Faults;
import rigside.runner.Rehearsal;
import rigside.runner.Rehearsals;
import rigside.runner.Rigs;
import rigside.runner.Tester;
import rigside.runner.Truth;
import rigside.session.State;

/** {@code rigside rehearse PROTOCOL}: whole sessions without a tester. */
@Command(
        name = "rehearse",
        description =
                "Run a whole session by itself with a simulated rig: every value is invented."
                        + " Without a rig file nothing differs and values spread as the protocol"
                        + " expects.")
final class Rehearse implements Callable<Integer> {
    /** How wide the answer is printed. */
    private static final int WIDTH = 80;

    private static final int MOST_TIMES = 100_000;

    @Spec private CommandSpec spec;
    @ParentCommand private Rigside rigside;

    @Parameters(
            paramLabel = "PROTOCOL",
            description = "a protocol file, or the name of one, such as breathing-only")
    private String protocol;

    @Option(
            names = "--seed",
            paramLabel = "NUMBER",
            description = "the same seed gives the same session; drawn unless given, and told")
    private Optional<Long> seed = Optional.empty();

    @Option(
            names = "--into",
            paramLabel = "FOLDER",
            converter = Destination.class,
            description =
                    "the folder the session's folder is made in (a temporary one, which is told)")
    private Optional<Path> into = Optional.empty();

    @Option(
            names = "--rig",
            paramLabel = "FILE",
            description = "a rig file with the simulated wearer that answers")
    private Optional<String> rig = Optional.empty();

    @Option(
            names = "--times",
            paramLabel = "N",
            description =
                    "N sessions with the seeds that follow, and a table of what they came to;"
                            + " nothing of them is kept")
    private Optional<Integer> times = Optional.empty();

    @Option(
            names = "--screens",
            description =
                    "played by itself in the screens of a session before the analysis is printed;"
                            + " q or Esc stops it")
    private boolean screens;

    @Option(
            names = "--speed",
            paramLabel = "TIMES",
            description = "with --screens: how much faster time runs than at the bench (20)")
    private Optional<Double> speed = Optional.empty();

    @Option(names = "--json", description = "print JSON instead of sentences")
    private boolean json;

    @Option(
            names = "--report",
            paramLabel = "FILE",
            converter = Destination.class,
            description =
                    "write the whole report, too: to FILE.html or FILE.md; one that is there is left"
                            + " as it is")
    private Optional<Path> report = Optional.empty();

    @Mixin private RehearseOptions options;

    /** All that a rehearsal is made of. */
    private record Plan(
            ProtocolFile file,
            Protocol protocol,
            Optional<RigOnDisk> rig,
            RehearseOptions.Asked asked) {
        Openings.Rehearsed opened(long seed) {
            return Openings.rehearsed(file, protocol, rig, asked.assumed(), seed, Version.number());
        }

        Faults faults(long seed) {
            return Faults.of(protocol, asked.faults(), seed);
        }
    }

    @Override
    public Integer call() throws IOException {
        checkOptions();
        checkReport();
        checkScreens();
        Optional<Plan> plan = plan();
        if (plan.isEmpty()) {
            return Exit.PROBLEMS;
        }
        long first = seed.orElseGet(Openings::anySeed);
        try {
            return times.isPresent()
                    ? many(plan.get(), first, times.get())
                    : once(plan.get(), first);
        } catch (NotOpened notOpened) {
            return wrong(notOpened.getMessage() + "\n    " + notOpened.help());
        } catch (IllegalStateException stuck) {
            return wrong("the rehearsal with seed " + first + " stopped: " + stuck.getMessage());
        }
    }

    private void checkOptions() {
        if (times.isPresent() && (times.get() < 1 || times.get() > MOST_TIMES)) {
            throw new ParameterException(
                    spec.commandLine(),
                    "--times is '" + times.get() + "', must be from 1 to " + MOST_TIMES);
        }
        if (times.isPresent() && into.isPresent()) {
            throw new ParameterException(
                    spec.commandLine(),
                    "--into keeps one session, and of many nothing is kept: leave out one of them");
        }
    }

    private void checkReport() {
        if (report.isPresent() && ReportFiles.form(report.get()).isEmpty()) {
            throw new ParameterException(
                    spec.commandLine(),
                    "--report '" + report.get() + "' must end with .html or .md");
        }
        if (report.isPresent() && times.isPresent()) {
            throw new ParameterException(
                    spec.commandLine(),
                    "--report is of one session and --times plays many: leave out one of them");
        }
    }

    private void checkScreens() {
        if (screens && times.isPresent()) {
            throw new ParameterException(
                    spec.commandLine(),
                    "--screens plays one session and --times many: leave out one of them");
        }
        if (speed.isPresent() && !screens) {
            throw new ParameterException(
                    spec.commandLine(), "--speed goes with --screens only: nobody waits without");
        }
        if (!(times() > 0 && times() <= Choice.FASTEST)) {
            throw new ParameterException(
                    spec.commandLine(), "speed '" + times() + "' is not above 0 and at most 1000");
        }
    }

    /** Empty when something is wrong; it was printed then. */
    private Optional<Plan> plan() {
        Optional<RigOnDisk> named =
                rig.flatMap(word -> RigFiles.sound(word, rigside.folders(), err()));
        if (rig.isPresent() && named.isEmpty()) {
            return Optional.empty();
        }
        if (named.flatMap(RigOnDisk::file).filter(RigFile.Attached.class::isInstance).isPresent()) {
            wrong(
                    "the rig file '"
                            + rig.get()
                            + "' declares instruments; nobody breathes in a rehearsal\n    name a"
                            + " rig file with a simulated wearer, or none");
            return Optional.empty();
        }
        return Protocols.sound(protocol, true, rigside.folders(), err())
                .flatMap(
                        file -> {
                            Protocol read = file.protocol().orElseThrow();
                            return options.read(read, err())
                                    .map(asked -> new Plan(file, read, named, asked));
                        });
    }

    private int once(Plan plan, long seed) throws IOException, NotOpened {
        Faults faults = plan.faults(seed);
        RehearsedOnce once =
                new RehearsedOnce(into, plan.protocol(), plan.opened(seed), faults, Wall.now());
        if (!screens) {
            return tell(once, once.play(Rehearse::playOut), faults);
        }
        Settings settings = rigside.settings();
        List<RehearsedOnce.Played> played = new ArrayList<>();
        int exit =
                AtTerminal.run(
                        spec,
                        console -> {
                            played.add(
                                    once.play(
                                            rehearsal ->
                                                    Playing.run(
                                                            console, rehearsal, times(),
                                                            settings)));
                            return Exit.DONE;
                        });
        return played.isEmpty() ? exit : tell(once, played.get(0), faults);
    }

    private static void playOut(Rehearsal rehearsal) throws IOException {
        while (!rehearsal.isOver()) {
            rehearsal.next();
        }
    }

    private int tell(RehearsedOnce once, RehearsedOnce.Played played, Faults faults) {
        PrintWriter aside = json ? err() : out();
        once.told(played).forEach(aside::println);
        State state = played.state();
        Material material = Material.of(state, played.events());
        out().print(
                        json
                                ? AnalysisJson.of(state, material.shown())
                                : "\n" + SessionReport.answer(material).text(WIDTH));
        out().flush();
        if (report.isPresent() && !ReportFiles.write(report.get(), material, spec.commandLine())) {
            return Exit.PROBLEMS;
        }
        return played.isWhole() ? missed(faults) : Exit.DONE;
    }

    private double times() {
        return speed.orElse(Playing.USUAL_SPEED);
    }

    private int missed(Faults faults) {
        faults.missed()
                .forEach(
                        each ->
                                wrong(
                                        "the fault '"
                                                + each
                                                + "' did not happen: the session had no such"
                                                + " moment\n"
                                                + "    name an earlier donning, or another seed"));
        return faults.missed().isEmpty() ? Exit.DONE : Exit.PROBLEMS;
    }

    private int many(Plan plan, long first, int count) throws IOException {
        Openings.Rehearsed one = plan.opened(first);
        ZonedDateTime start = Wall.now();
        Rehearsals all =
                Rehearsals.play(
                        plan.protocol(),
                        Truth.of(plan.protocol(), one.wearer()),
                        first,
                        count,
                        seed -> {
                            Openings.Rehearsed opened = plan.opened(seed);
                            Faults faults = plan.faults(seed);
                            Tester tester =
                                    new Tester(Rigs.of(opened.opening(), plan.protocol()), faults);
                            return Rehearsals.forgotten(tester, faults, start, opened.opening());
                        });
        if (json) {
            out().print(RehearsedJson.of(all, first));
        } else {
            RehearsedText.truths(plan.protocol(), one.wearer()).forEach(out()::println);
            RehearsedText.many(plan.protocol(), all, first).forEach(out()::println);
        }
        out().flush();
        return all.missed() == 0
                ? Exit.DONE
                : wrong(all.missed() + " of the faults asked for did not happen");
    }

    private int wrong(String words) {
        err().println("rigside: " + words);
        return Exit.PROBLEMS;
    }

    private PrintWriter out() {
        return spec.commandLine().getOut();
    }

    private PrintWriter err() {
        return spec.commandLine().getErr();
    }
}
