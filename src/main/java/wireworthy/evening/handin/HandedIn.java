package wireworthy.evening.handin;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import wireworthy.evening.EveningProblem;

/**
 * A hand-in that was handed in.
 *
 * @param file where it lies
 * @param again whether an earlier one of the same answers lay there
 */
public record HandedIn(Path file, boolean again) {
    /**
     * Hands in to a folder.
     *
     * @throws EveningProblem where it can't be written, or another's answers lie there under the
     *     same number
     */
    public static HandedIn into(final Path folder, final HandIn handIn) {
        final Path file = folder.resolve(HandInFile.name(handIn.mark(), handIn.learner()));
        final boolean again = Files.exists(file);
        if (again) {
            sameAnswers(file, handIn);
        }
        try {
            HandInFile.write(folder, handIn);
        } catch (final IOException e) {
            throw EveningProblem.of("handing-in.unwritten", "folder", folder);
        }
        if (!HandInFile.read(file).equals(handIn)) {
            throw EveningProblem.of("handing-in.differs", "folder", folder);
        }
        return new HandedIn(file, again);
    }

    /** Answers begun at another time are another's: two took the same number. */
    private static void sameAnswers(final Path file, final HandIn handIn) {
        if (readable(file) && !HandInFile.read(file).begun().equals(handIn.begun())) {
            throw EveningProblem.of("handing-in.others", "learner", handIn.learner());
        }
    }

    private static boolean readable(final Path file) {
        try {
            return !HandInFile.read(file).mark().isEmpty();
        } catch (final EveningProblem e) {
            return false;
        }
    }
}
