package rigside.command;

import java.io.FilterWriter;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.Writer;
import picocli.CommandLine;
import picocli.CommandLine.ParseResult;
import picocli.CommandLine.RunLast;
import rigside.report.Legible;

/**
 * What commands print, with everything replaced that a terminal obeys, that turns the direction of
 * writing round, or that nobody can see. Journals and protocols come from others; a reason, a name
 * or an unknown word in one of them must not do more than be read.
 */
final class LegibleWriter extends FilterWriter {
    private LegibleWriter(Writer out) {
        super(out);
    }

    /** Runs a command, its output and its complaints legible; help is the program's own. */
    static int run(ParseResult parsed) {
        CommandLine line = parsed.commandSpec().commandLine();
        Integer helped = CommandLine.executeHelpRequest(parsed);
        if (helped != null) {
            return helped;
        }
        line.setOut(legible(line.getOut())).setErr(legible(line.getErr()));
        try {
            return new RunLast().execute(parsed);
        } finally {
            line.getOut().flush();
            line.getErr().flush();
        }
    }

    private static PrintWriter legible(PrintWriter out) {
        return new PrintWriter(new LegibleWriter(out), true);
    }

    @Override
    public void write(int character) throws IOException {
        out.write(shown((char) character));
    }

    @Override
    public void write(char[] text, int from, int length) throws IOException {
        write(new String(text, from, length), 0, length);
    }

    @Override
    public void write(String text, int from, int length) throws IOException {
        StringBuilder legible = new StringBuilder(length);
        text.substring(from, from + length)
                .codePoints()
                .map(LegibleWriter::shown)
                .forEach(legible::appendCodePoint);
        out.write(legible.toString(), 0, legible.length());
    }

    /** Lines and tables are the program's own. */
    private static int shown(int point) {
        boolean laidOut = point == '\t' || point == '\n' || point == '\r';
        return !laidOut && Legible.isUnseen(point) ? Legible.REPLACEMENT : point;
    }
}
