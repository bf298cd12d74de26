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
            throw new EveningProblem(
                    "It can't be written to " + folder, "Choose another folder, or ask the leader");
        }
        if (!HandInFile.read(file).equals(handIn)) {
            throw new EveningProblem(
                    "What was written to " + folder + " does not read as it should",
                    "Try another folder or another stick");
        }
        return new HandedIn(file, again);
    }

    /** Answers begun at another time are another's: two took the same number. */
    private static void sameAnswers(final Path file, final HandIn handIn) {
        if (readable(file) && !HandInFile.read(file).begun().equals(handIn.begun())) {
            throw new EveningProblem(
                    "Other answers of learner "
                            + handIn.learner()
                            + " lie in that folder, begun at another time or machine",
                    "Ask the leader whose number it is; or choose another folder");
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
