package wireworthy.record;

import java.nio.file.Path;

/**
 * Keeps answers and prints the number of each one once it is kept, until it is killed or can't go
 * on; then it prints what went wrong.
 */
final class KilledWriter {
    private KilledWriter() {}

    public static void main(final String[] arguments) {
        final int first = Integer.parseInt(arguments[1]);
        final int last = first + Integer.parseInt(arguments[2]);
        try (RecordFile record = RecordFile.open(Path.of(arguments[0]))) {
            for (int i = first; i < last; i++) {
                record.keep(Answers.numbered(i));
                System.out.println(i);
                System.out.flush();
            }
        } catch (final RecordProblem e) {
            System.out.println(e.what() + ". " + e.remedy() + ".");
        }
    }
}
