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

    private static Set<String> taken(String... words) {
        return Rigside.commandLine(words).getSubcommands().keySet();
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

    @Test
    void withoutOneItTakesAll() {
        Set<String> all = taken();
        assertEquals(all, taken("--help"));
        assertEquals(all, taken("sesions"));
        assertEquals(all, taken("--home", "somewhere"));
    }

    @Test
    void whatACommandSaysOfItselfDoesNotDependOnTheOthers() {
        Rigside.commandLine()
                .getSubcommands()
                .keySet()
                .forEach(each -> assertEquals(help(new String[0], each), help(words(each), each)));
    }

    private static String[] words(String command) {
        return new String[] {command, "--help"};
    }

    private static String help(String[] taken, String command) {
        StringWriter out = new StringWriter();
        Rigside.commandLine(taken).setOut(new PrintWriter(out, true)).execute(command, "--help");
        assertTrue(out.toString().contains("Usage: rigside " + command), out.toString());
        return out.toString();
    }
}
