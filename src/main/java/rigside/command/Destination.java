package rigside.command;

import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;

/**
 * A file or folder to write. A hyphen is refused: elsewhere it often means standard output, and
 * whoever means that would find a file of that name.
 */
final class Destination implements ITypeConverter<Path> {
    @Override
    public Path convert(String text) {
        if (text.isBlank() || text.equals("-")) {
            throw new TypeConversionException(
                    "'"
                            + text
                            + "' names no file or folder; files are never written to standard"
                            + " output");
        }
        try {
            return Path.of(text);
        } catch (InvalidPathException wrong) {
            throw new TypeConversionException("'" + text + "' is no name of a file or folder");
        }
    }
}
