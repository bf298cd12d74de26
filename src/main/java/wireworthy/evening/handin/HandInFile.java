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

    private HandInFile() {}

    /** How the names of all hand-ins begin. */
    static final String BEGINS = "hand-in-";

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
        return begins(mark) + learner + ".json";
    }

    /** How the names of all files of a sheet begin. */
    static String begins(final String mark) {
        return BEGINS + mark + "-";
    }

    /**
     * Reads it.
     *
     * @throws EveningProblem where it is damaged or no hand-in
     */
    public static HandIn read(final Path file) {
        try {
            if (!Files.isRegularFile(file, LinkOption.NOFOLLOW_LINKS)) {
                throw EveningProblem.of("hand-in.no-file");
            }
            return read(file, Files.size(file));
        } catch (final CharacterCodingException e) {
            throw EveningProblem.of("hand-in.encoding");
        } catch (final IOException e) {
            throw EveningProblem.of("hand-in.unread");
        } catch (final JacksonException e) {
            throw EveningProblem.of("hand-in.damaged");
        } catch (final Unfit e) {
            throw new EveningProblem(e.what(), e.remedy());
        }
    }

    private static HandIn read(final Path file, final long size) throws IOException {
        if (size > MOST_BYTES) {
            throw EveningProblem.of("hand-in.large");
        }
        if (size == 0) {
            throw EveningProblem.of("hand-in.empty");
        }
        return HandInText.read(Files.readString(file));
    }
}
