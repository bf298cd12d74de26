package wireworthy.vehicle;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Objects;
import wireworthy.texts.Language;

/** The invented example vehicle: a retired mobile library that is to be a travelling cinema. */
public final class Heron {
    private static final String FILE = "heron.json";

    private Heron() {}

    /** The example as it comes with the program, its names in the language in use. */
    public static Vehicle vehicle() {
        final VehicleRead read = VehicleReader.read(FILE, text());
        if (read instanceof VehicleRead.Whole whole) {
            return whole.vehicle();
        }
        throw new IllegalStateException(((VehicleRead.Refused) read).text());
    }

    private static String text() {
        final String spoken = Language.inUse().code() + "/" + FILE;
        final boolean there = Heron.class.getResource(spoken) != null;
        try (InputStream file = Heron.class.getResourceAsStream(there ? spoken : FILE)) {
            return new String(Objects.requireNonNull(file).readAllBytes(), StandardCharsets.UTF_8);
        } catch (final IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
