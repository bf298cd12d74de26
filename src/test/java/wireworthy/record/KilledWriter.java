package wireworthy.record;

import java.nio.file.Path;

/** Keeps answers and prints the number of each one once it is kept, until it is killed. */
final class KilledWriter {
    private KilledWriter() {}

    public static void main(final String[] arguments) {
        try (RecordFile record = RecordFile.open(Path.of(arguments[0]))) {
            for (int i = Integer.parseInt(arguments[1]); ; i++) {
                record.keep(Answers.numbered(i));
                System.out.println(i);
                System.out.flush();
            }
        }
    }
}
