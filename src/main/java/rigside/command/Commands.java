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

    /** Adds all commands. */
    static CommandLine all(CommandLine line) {
        ALL.forEach(line::addSubcommand);
        return line;
    }

    /** Adds the commands that the words name, or all where only that can tell what they mean. */
    static CommandLine meant(CommandLine line, String... words) {
        Map<String, Class<?>> named = new LinkedHashMap<>(ALL);
        named.keySet().retainAll(List.of(words));
        if (named.isEmpty() && !isWhole(line, words)) {
            return all(line);
        }
        named.forEach(line::addSubcommand);
        return line;
    }

    /** Whether nothing is left to be said of the words without any command. */
    private static boolean isWhole(CommandLine line, String... words) {
        try {
            return !line.parseArgs(words).isUsageHelpRequested();
        } catch (ParameterException wrong) {
            return false;
        }
    }
}
