package wireworthy.record;

import java.nio.file.Path;
import java.util.Locale;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * Where the program keeps what it remembers on this machine: settings, record and log.
 *
 * @param path the folder; it is made when something is first written
 */
public record DataFolder(Path path) {
    private static final String NAME = "wireworthy";

    /** The usual folder of this system for the person who started the program. */
    public static DataFolder standard() {
        return standard(
                System.getProperty("os.name", ""),
                System.getenv(),
                Path.of(System.getProperty("user.home", "")));
    }

    /**
     * The usual folder for a system: {@code %APPDATA%} on Windows, {@code Library/Application
     * Support} on macOS, {@code $XDG_DATA_HOME} or {@code .local/share} elsewhere.
     */
    static DataFolder standard(
            final String system, final Map<String, String> environment, final Path home) {
        final String name = system.toLowerCase(Locale.ROOT);
        if (name.startsWith("windows")) {
            return in(environment.get("APPDATA"), home.resolve("AppData/Roaming"));
        }
        if (name.startsWith("mac")) {
            return new DataFolder(home.resolve("Library/Application Support").resolve(NAME));
        }
        return in(environment.get("XDG_DATA_HOME"), home.resolve(".local/share"));
    }

    /** Where the settings are kept. */
    public Path settings() {
        return path.resolve("settings.json");
    }

    /** What was answered and read. */
    public Path answers() {
        return path.resolve("record.sqlite");
    }

    /** Where people put problem banks of their own; read where it exists. */
    public Path problemBanks() {
        return path.resolve("problem-banks");
    }

    /** Where people put lessons of their own; read where it exists. */
    public Path lessons() {
        return path.resolve("lessons");
    }

    /** Where the vehicles of Check my sums are kept. */
    public Path vehicles() {
        return path.resolve("vehicles");
    }

    /** Where a leader puts evenings of their own; read where it exists. */
    public Path evenings() {
        return path.resolve("evenings");
    }

    /** Where the sheet chosen last is kept, and what is being answered on this machine. */
    public Path sheets() {
        return path.resolve("sheets");
    }

    /** Keeps in which folder something was written last, on a stick or elsewhere. */
    public Path written() {
        return path.resolve("last-folder.txt");
    }

    /** Where unexpected errors are written down. */
    public Path log() {
        return path.resolve("wireworthy.log");
    }

    private static DataFolder in(final @Nullable String named, final Path otherwise) {
        // The XDG specification has relative paths ignored.
        final boolean usable = named != null && Path.of(named).isAbsolute();
        return new DataFolder((usable ? Path.of(named) : otherwise).resolve(NAME));
    }
}
