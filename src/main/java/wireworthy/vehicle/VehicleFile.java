package wireworthy.vehicle;

import java.io.IOException;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import wireworthy.record.WholeFile;

/** One vehicle in one file. */
public final class VehicleFile {
    private static final long MOST_BYTES = 8L * 1024 * 1024;
    private static final String BYTE_ORDER_MARK = "\uFEFF";

    private VehicleFile() {}

    /** Reads a file; never throws, never changes it. */
    public static VehicleRead read(final Path file) {
        final String name = String.valueOf(file.getFileName());
        try {
            if (Files.size(file) > MOST_BYTES) {
                return refused(
                        name,
                        "the file is larger than 8 MB",
                        "A vehicle needs far less; choose another file");
            }
            return VehicleReader.read(name, text(file));
        } catch (final NoSuchFileException e) {
            return refused(name, "the file is not there", "Check where it was moved to");
        } catch (final CharacterCodingException e) {
            return refused(name, "the file is not text in UTF-8", "Choose another file");
        } catch (final IOException e) {
            return refused(name, "the file can't be read", "Check that you may read it");
        }
    }

    private static String text(final Path file) throws IOException {
        final String text = Files.readString(file);
        return text.startsWith(BYTE_ORDER_MARK) ? text.substring(1) : text;
    }

    private static VehicleRead refused(
            final String file, final String message, final String remedy) {
        return new VehicleRead.Refused(file, 0, message, remedy);
    }

    /**
     * Writes a vehicle whole or not at all.
     *
     * @throws IOException where the file can't be written; the old one is left as it was
     */
    public static void write(final Path file, final Vehicle vehicle) throws IOException {
        WholeFile.write(file, VehicleWriter.text(vehicle).getBytes(StandardCharsets.UTF_8));
    }
}
