package wireworthy.vehicle;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;

/** Edits a vehicle without end and prints the number of each change as it is made. */
final class KilledEditor {
    private static final long BETWEEN_MILLIS = 15;

    private KilledEditor() {}

    public static void main(final String[] arguments) throws IOException, InterruptedException {
        // As the program does when a vehicle is opened, before anything can be changed.
        VehicleFile.write(Path.of(arguments[0]), Heron.vehicle().withNotes("0"));
        try (VehicleSaver saver = new VehicleSaver(Path.of(arguments[0]), new Strict())) {
            for (int i = 1; ; i++) {
                System.out.println(i);
                System.out.flush();
                saver.save(Heron.vehicle().withNotes(String.valueOf(i)));
                Thread.sleep(BETWEEN_MILLIS);
            }
        }
    }

    /** No failure passes unseen. */
    private static final class Strict implements VehicleSaver.Watcher {
        @Override
        public void saved() {}

        @Override
        public void failed(final IOException why) {
            throw new UncheckedIOException(why);
        }
    }
}
