package wireworthy.record;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import tools.jackson.core.JacksonException;

/**
 * Settings as a JSON file. A file that cannot be read is kept aside under the name {@code
 * settings.json.damaged}.
 */
public final class SettingsFile {
    /** Far more than settings ever need; a larger file is not ours. */
    private static final long LARGEST_BYTES = 64 * 1024;

    private final Path file;

    public SettingsFile(final Path file) {
        this.file = file;
    }

    /** The settings last written, or the defaults. */
    public Settings read() {
        if (!Files.exists(file)) {
            return Settings.DEFAULTS;
        }
        try {
            return parse();
        } catch (JacksonException | IOException damaged) {
            keepAside();
            return Settings.DEFAULTS;
        }
    }

    /**
     * Writes the settings to a file beside the old one and then puts it in its place, so that a
     * stop in between loses nothing.
     *
     * @throws UncheckedIOException if the folder cannot be written to
     */
    public void write(final Settings settings) {
        try {
            WholeFile.write(file, SettingsText.of(settings));
        } catch (IOException e) {
            throw new UncheckedIOException("The settings cannot be written to " + file, e);
        }
    }

    private Settings parse() throws IOException {
        if (Files.size(file) > LARGEST_BYTES) {
            throw new IOException("larger than " + LARGEST_BYTES + " bytes");
        }
        return SettingsText.parse(Files.readAllBytes(file));
    }

    private void keepAside() {
        try {
            WholeFile.move(file, file.resolveSibling(file.getFileName() + ".damaged"));
        } catch (IOException e) {
            throw new UncheckedIOException("The damaged " + file + " cannot be set aside", e);
        }
    }
}
