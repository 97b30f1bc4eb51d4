package rigside.desk;

import java.nio.file.Path;
import java.util.Map;
import java.util.Optional;

/**
 * Where things are kept.
 *
 * @param root the folder below which everything is kept; it need not exist
 */
public record Folders(Path root) {
    /** The environment's variable that names the folder. */
    public static final String VARIABLE = "RIGSIDE_HOME";

    /**
     * What was asked for, else what the environment names, else a folder in the tester's own.
     *
     * @param asked what was asked for, if anything
     * @param environment the environment's variables
     * @param userHome the tester's own folder
     */
    public static Folders of(
            Optional<Path> asked, Map<String, String> environment, String userHome) {
        String named = environment.getOrDefault(VARIABLE, "");
        Path otherwise = named.isEmpty() ? Path.of(userHome, "rigside") : Path.of(named);
        return new Folders(asked.orElse(otherwise).toAbsolutePath().normalize());
    }

    /** The folder of all sessions. */
    public Path sessions() {
        return root.resolve("sessions");
    }

    /** The tester's own rig files. */
    public Path rigs() {
        return root.resolve("rigs");
    }

    /** The tester's own protocols. */
    public Path protocols() {
        return root.resolve("protocols");
    }
}
