package rigside.command;

import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.Map;
import picocli.CommandLine;

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

    /** Adds the commands named among the words; all of them where none is. */
    static CommandLine addTo(CommandLine line, String... words) {
        boolean isAnyNamed = Arrays.stream(words).anyMatch(ALL::containsKey);
        ALL.forEach(
                (name, command) -> {
                    if (!isAnyNamed || Arrays.asList(words).contains(name)) {
                        line.addSubcommand(name, command);
                    }
                });
        return line;
    }
}
