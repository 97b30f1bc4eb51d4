package rigside.command;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.Properties;
import picocli.CommandLine.IVersionProvider;

/** The version of the program, as it was built. */
public final class Version implements IVersionProvider {
    private static final String FILE = "/rigside/version.properties";

    /** The version alone, as it is written into journals. */
    public static String number() {
        Properties properties = new Properties();
        try (InputStream in = Version.class.getResourceAsStream(FILE)) {
            properties.load(in);
        } catch (IOException broken) {
            throw new UncheckedIOException("the program's own files cannot be read", broken);
        }
        return properties.getProperty("version");
    }

    @Override
    public String[] getVersion() {
        return new String[] {"rigside " + number()};
    }
}
