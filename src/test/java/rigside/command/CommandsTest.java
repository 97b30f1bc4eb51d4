package rigside.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;
import picocli.CommandLine;
import picocli.CommandLine.Command;

class CommandsTest {

    private static CommandLine line(String... words) {
        return Commands.meant(words);
    }

    private static Set<String> taken(String... words) {
        return line(words).getSubcommands().keySet();
    }

    @Test
    void everyCommandIsFoundByTheNameItSaysItHas() {
        Map<String, CommandLine> all = Rigside.commandLine().getSubcommands();
        assertTrue(all.size() > 20, all.keySet().toString());
        all.forEach(
                (name, line) -> {
                    Class<?> command = line.getCommandSpec().userObject().getClass();
                    assertEquals(name, command.getAnnotation(Command.class).name());
                });
    }

    @Test
    void aCommandLineTakesTheCommandsItNames() {
        assertEquals(Set.of("sessions"), taken("sessions", "w03", "--home", "somewhere"));
        assertEquals(Set.of("report"), taken("--home", "somewhere", "report", "one"));
        assertEquals(Set.of("report", "sessions"), taken("sessions", "report"));
    }

    /** A list of all, and what a misspelt word may mean. */
    @Test
    void itTakesAllWhereTheyHaveToBeTold() {
        Set<String> all = Rigside.commandLine().getSubcommands().keySet();
        assertEquals(all, taken("--help"));
        assertEquals(all, taken("sesions"));
        assertEquals(all, taken("--hoem", "somewhere"));
        assertEquals(all, taken("--bounce", "long"));
    }

    /** Though a word of the line is a command's name. */
    @Test
    void itTakesAllWhereHelpListsThemOrAMisspeltOneStandsBeforeAnother() {
        Set<String> all = Rigside.commandLine().getSubcommands().keySet();
        assertEquals(all, taken("--help", "report"));
        assertEquals(all, taken("sesions", "pool"));
        assertEquals(all, taken("--home", "report", "sesions"));
        assertEquals(Set.of("report"), taken("report", "--help"));
        assertEquals(Set.of("report"), taken("report", "--hmtl"));
    }

    @Test
    void theHomeScreenNeedsNone() {
        assertEquals(Set.of(), taken());
        assertEquals(Set.of(), taken("--home", "somewhere", "--ascii"));
        assertEquals(Set.of(), taken("--version"));
    }

    @Test
    void whatACommandSaysOfItselfDoesNotDependOnTheOthers() {
        for (String each : Rigside.commandLine().getSubcommands().keySet()) {
            assertEquals(help(Rigside.commandLine(), each), help(line(each), each));
        }
    }

    private static String help(CommandLine line, String command) {
        StringWriter out = new StringWriter();
        NoEffect.hidden(line).setOut(new PrintWriter(out, true)).execute(command, "--help");
        assertTrue(out.toString().contains("Usage: rigside " + command), out.toString());
        return out.toString();
    }
}
