package wireworthy.record;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assumptions.assumeThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.DisabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;

/** A full disk and a torn file: clear words, and nothing lost that can be read. */
class RecordTroubleTest {
    private static final int ANSWERS = 200;
    private static final int CUTS = 200;

    @TempDir private Path folder;

    @Test
    @DisabledOnOs(OS.WINDOWS)
    void aDiskThatFillsUpIsToldAndNothingKeptIsLost() throws IOException {
        final Path file = folder.resolve("record.sqlite");
        // A shell's limit on the size of files: writing beyond it fails as on a full disk.
        final String[] limited = {"sh", "-c", "ulimit -f 6000; exec \"$@\"", "sh"};
        final List<String> lines;
        try (Writing writing = Writing.start(file, 0, 5000, limited)) {
            lines = writing.out().lines().toList();
        }
        final List<Long> kept =
                lines.subList(0, lines.size() - 1).stream().map(Long::valueOf).toList();

        assertThat(lines.get(lines.size() - 1))
                .startsWith("The record can't be written to. Check that the disk has room");
        try (RecordFile record = RecordFile.open(file)) {
            assertThat(record.setAside()).isEmpty();
            assertThat(kept).hasSizeGreaterThan(50);
            assertThat(record.answers("robin")).extracting(Answer::seed).containsAll(kept);
        }
    }

    @Test
    void whateverIsCutOffTheRestIsSavedAndTheTornFileKept() throws IOException {
        final byte[] whole = whole();
        final Random random = new Random(11);
        long saved = 0;
        for (int cut = 0; cut < CUTS; cut++) {
            final byte[] torn = Arrays.copyOf(whole, random.nextInt(whole.length));
            saved += saved(Files.createDirectory(folder.resolve("cut" + cut)), torn);
        }
        // A cut anywhere leaves half on the average; some pages hold no answers.
        assertThat(saved).isGreaterThan((long) CUTS * ANSWERS / 5);
    }

    @Test
    void whateverIsOverwrittenTheRestIsSaved() throws IOException {
        final byte[] whole = whole();
        final Random random = new Random(12);
        for (int i = 0; i < 20; i++) {
            final byte[] spoilt = whole.clone();
            final int at = 4096 + random.nextInt(whole.length - 2 * 4096);
            for (int k = at; k < at + 4096; k++) {
                spoilt[k] = (byte) random.nextInt();
            }
            saved(Files.createDirectory(folder.resolve("spoilt" + i)), spoilt);
        }
    }

    private byte[] whole() throws IOException {
        final Path file = folder.resolve("whole.sqlite");
        try (RecordFile record = RecordFile.open(file)) {
            record.writing(
                    () -> {
                        for (int i = 0; i < ANSWERS; i++) {
                            record.keep(Answers.numbered(i));
                        }
                    });
            record.standing("robin");
        }
        assumeThat(folder.resolve("whole.sqlite-wal")).doesNotExist();
        return Files.readAllBytes(file);
    }

    /** How many answers are there after opening; each is as it was. */
    private static int saved(final Path folder, final byte[] torn) throws IOException {
        final Path file = folder.resolve("record.sqlite");
        Files.write(file, torn);
        try (RecordFile record = RecordFile.open(file)) {
            final List<Answer> answers =
                    record.people().codes().stream()
                            .flatMap(code -> record.answers(code).stream())
                            .toList();
            final Set<String> words =
                    record.setAside().stream().map(SetAside::words).collect(Collectors.toSet());
            if (torn.length == 0) {
                assertThat(words).as("an empty file is a record not begun").isEmpty();
                return 0;
            }
            record.setAside()
                    .ifPresent(
                            aside -> {
                                assertThat(aside.file()).hasBinaryContent(torn);
                                assertThat(answers).hasSize(aside.saved());
                            });
            assertThat(answers).extracting(Answer::typed).allMatch("0.526 V"::equals);
            record.keep(Answers.numbered(ANSWERS + 1));
            return answers.size();
        }
    }
}
