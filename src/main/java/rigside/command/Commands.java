package rigside.command;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import picocli.CommandLine;
import picocli.CommandLine.ParameterException;

/**
 * The commands by their names, in the order in which they are listed. To describe all of them takes
 * longer than most of them run, so a command line gets those alone that its words may mean.
 */
final class Commands {
    private static final Map<String, Class<?>> ALL = new LinkedHashMap<>();

    static {
        ALL.put("run", Run.class);
        ALL.put("enter", Enter.class);
        ALL.put("resume", Resume.class);
        ALL.put("rehearse", Rehearse.class);
        ALL.put("selftest", Selftest.class);
        ALL.put("check", Check.class);
        ALL.put("draft", Draft.class);
        ALL.put("outline", Outline.class);
        ALL.put("watch", Watching.class);
        ALL.put("feed", Feed.class);
        ALL.put("plan", Plan.class);
        ALL.put("analyse", Analyse.class);
        ALL.put("report", Report.class);
        ALL.put("export", Export.class);
        ALL.put("sessions", ListSessions.class);
        ALL.put("pool", Pool.class);
        ALL.put("compare", Compare.class);
        ALL.put("follow", Follow.class);
        ALL.put("spread", Spread.class);
        ALL.put("share", Share.class);
        ALL.put("entries", Entries.class);
        ALL.put("amend", Amend.class);
        ALL.put("verify", Verify.class);
        ALL.put("explain", Explain.class);
        ALL.put("schema", Schema.class);
    }

    private Commands() {}

    /** The program with all commands. */
    static CommandLine all() {
        CommandLine line = new CommandLine(new Rigside());
        ALL.forEach(line::addSubcommand);
        return line;
    }

    /**
     * The program with the commands that the words name, or with all where those alone leave
     * something to be said: help that lists commands, or what a misspelt one may mean.
     */
    static CommandLine meant(String... words) {
        Map<String, Class<?>> named = new LinkedHashMap<>(ALL);
        named.keySet().retainAll(List.of(words));
        CommandLine few = new CommandLine(new Rigside());
        named.forEach(few::addSubcommand);
        return isWhole(few, words) ? few : all();
    }

    private static boolean isWhole(CommandLine few, String... words) {
        try {
            return !few.parseArgs(words).isUsageHelpRequested();
        } catch (ParameterException wrong) {
            // What is wrong with the words of a command hangs on that command alone.
            return wrong.getCommandLine() != few;
        }
    }
}
