package wireworthy.evening.handin;

import java.io.IOException;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import tools.jackson.core.JacksonException;
import wireworthy.evening.EveningProblem;
import wireworthy.practice.Unfit;
import wireworthy.record.WholeFile;

/** One hand-in in one small file. */
public final class HandInFile {
    private static final long MOST_BYTES = 200_000;
    private static final String AGAIN = "Ask for it to be handed in again";

    private HandInFile() {}

    /**
     * Writes it whole or not at all, in place of an earlier one of the same learner and sheet.
     *
     * @return the file
     * @throws IOException where it can't be written; the earlier one is left as it was
     */
    public static Path write(final Path folder, final HandIn handIn) throws IOException {
        final Path file = folder.resolve(name(handIn.mark(), handIn.learner()));
        WholeFile.write(file, HandInText.of(handIn).getBytes(StandardCharsets.UTF_8));
        return file;
    }

    /** What the file of a learner and a sheet is called. */
    public static String name(final String mark, final int learner) {
        return "hand-in-" + mark + "-" + learner + ".json";
    }

    /**
     * Reads it.
     *
     * @throws EveningProblem where it is damaged or no hand-in
     */
    public static HandIn read(final Path file) {
        try {
            if (!Files.isRegularFile(file, LinkOption.NOFOLLOW_LINKS)) {
                throw new EveningProblem("this is no file", "Copy the file itself here");
            }
            return read(file, Files.size(file));
        } catch (final CharacterCodingException e) {
            throw new EveningProblem(
                    "the file is not UTF-8 text",
                    "Leave it out, or ask for it to be handed in again");
        } catch (final IOException e) {
            throw new EveningProblem("the file can't be read", "Check that it may be read");
        } catch (final JacksonException e) {
            throw new EveningProblem("the file is cut off or damaged", AGAIN);
        } catch (final Unfit e) {
            throw new EveningProblem(e.what(), e.remedy());
        }
    }

    private static HandIn read(final Path file, final long size) throws IOException {
        if (size > MOST_BYTES) {
            throw new EveningProblem("the file is far larger than a hand-in", "Leave it out");
        }
        if (size == 0) {
            throw new EveningProblem("the file is empty", AGAIN);
        }
        return HandInText.read(Files.readString(file));
    }
}
