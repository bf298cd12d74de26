package wireworthy.record;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assumptions.assumeThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.Objects;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class RecordFileTest {
    private @TempDir Path folder = Path.of("");
    private Path file = Path.of("");

    @BeforeEach
    void nameFile() {
        file = folder.resolve("data/record.sqlite");
    }

    @Test
    void keepsAnswersAndGivesThemBackInOrder() {
        final Answer first = Answers.numbered(1);
        final Answer second = Answers.unreadable(2);
        try (RecordFile record = RecordFile.open(file)) {
            record.keep(first);
            record.keep(second);
            assertThat(record.answers("robin")).containsExactly(first, second);
        }
        try (RecordFile record = RecordFile.open(file)) {
            assertThat(record.answers("robin")).containsExactly(first, second);
            assertThat(record.answers("someone else")).isEmpty();
            assertThat(record.people().codes()).containsExactly("robin");
            assertThat(record.setAside()).isEmpty();
        }
    }

    @Test
    void remembersTheScreensRead() {
        try (RecordFile record = RecordFile.open(file)) {
            record.reading("robin", "drop", 0, true);
            record.reading("robin", "drop", 1, true);
            record.reading("robin", "drop", 0, false);
            record.reading("kim", "fuses", 0, true);

            assertThat(record.screensRead("robin")).containsExactly(new Screen("drop", 1));
        }
    }

    @Test
    void twoProgramsCanWriteAtOnce() throws InterruptedException {
        try (RecordFile one = RecordFile.open(file);
                RecordFile other = RecordFile.open(file)) {
            final Thread thread = new Thread(() -> keep(other, 100, 150));
            thread.start();
            keep(one, 0, 50);
            thread.join();

            assertThat(one.answers("robin")).hasSize(100);
            assertThat(other.answers("robin")).hasSize(100);
        }
    }

    private static void keep(final RecordFile record, final int from, final int to) {
        for (int i = from; i < to; i++) {
            record.keep(Answers.numbered(i));
        }
    }

    @Test
    void setsADamagedFileAsideAndBeginsAnother() throws IOException {
        Files.createDirectories(file.getParent());
        Files.writeString(file, "this was never a record ".repeat(200));
        final byte[] damaged = Files.readAllBytes(file);

        try (RecordFile record = RecordFile.open(file)) {
            record.keep(Answers.numbered(1));

            final Path aside = record.setAside().orElseThrow().file();
            assertThat(aside).hasBinaryContent(damaged).hasFileName("record.sqlite.damaged-1");
            assertThat(record.answers("robin")).hasSize(1);
        }
    }

    @Test
    void noticesDamageInTheMiddleOfTheFile() throws IOException {
        try (RecordFile record = RecordFile.open(file)) {
            keep(record, 0, 200);
        }
        final byte[] bytes = Files.readAllBytes(file);
        java.util.Arrays.fill(bytes, 4096, bytes.length - 4096, (byte) 0x5a);
        Files.write(file, bytes);

        try (RecordFile record = RecordFile.open(file)) {
            final SetAside aside = record.setAside().orElseThrow();
            assertThat(record.answers("robin")).hasSize(aside.saved());
            assertThat(aside.words()).contains("damaged", "kept as record.sqlite.damaged-1");
        }
    }

    @Test
    void saysInPlainWordsWhenTheFolderCannotBeMade() throws IOException {
        Files.writeString(folder.resolve("data"), "a file where the folder belongs");

        assertThatThrownBy(() -> RecordFile.open(file))
                .isInstanceOf(RecordProblem.class)
                .hasMessageStartingWith("The record of your answers can't be opened");
    }

    @Test
    void saysInPlainWordsWhenTheFolderIsReadOnly() throws IOException {
        Files.createDirectories(file.getParent());
        Files.setPosixFilePermissions(
                file.getParent(), PosixFilePermissions.fromString("r-xr-xr-x"));
        // Whoever runs as the superuser may write everywhere.
        assumeThat(Files.isWritable(file.getParent())).isFalse();

        assertThatThrownBy(() -> RecordFile.open(file)).isInstanceOf(RecordProblem.class);
    }

    @Test
    void anAnswerThatCouldNotBeKeptWaitsForTheNext() throws SQLException {
        try (RecordFile record = RecordFile.open(file)) {
            record.keep(Answers.numbered(1));
            execute(
                    "CREATE TRIGGER full BEFORE INSERT ON answer BEGIN SELECT RAISE(FAIL, 'full'); END");
            assertThatThrownBy(() -> record.keep(Answers.numbered(2)))
                    .isInstanceOf(RecordProblem.class)
                    .hasMessage("The record can't be written to");
            assertThat(record.unkept()).containsExactly(Answers.numbered(2));
            assertThat(record.answers("robin")).hasSize(2);

            execute("DROP TRIGGER full");
            record.keep(Answers.numbered(3));
            assertThat(record.unkept()).isEmpty();
        }
        try (RecordFile record = RecordFile.open(file)) {
            assertThat(record.answers("robin"))
                    .containsExactly(Answers.numbered(1), Answers.numbered(2), Answers.numbered(3));
        }
    }

    @Test
    void copiesAnOlderRecordBeforeChangingIt() throws SQLException, IOException {
        Files.createDirectories(file.getParent());
        execute(resource("1.sql"));
        execute("PRAGMA user_version = 1");
        execute("INSERT INTO person (code) VALUES ('robin')");

        try (RecordFile record = RecordFile.open(file)) {
            record.reading("robin", "drop", 0, true);
            assertThat(record.people().codes()).containsExactly("robin");
        }
        final Path copy = file.resolveSibling("record.sqlite.before-2");
        try (Connection old = DriverManager.getConnection("jdbc:sqlite:" + copy);
                Statement statement = old.createStatement()) {
            assertThat(statement.executeQuery("SELECT code FROM person").getString(1))
                    .isEqualTo("robin");
            assertThat(statement.executeQuery("PRAGMA user_version").getInt(1)).isEqualTo(1);
        }
    }

    @Test
    void leavesTheRecordOfANewerProgramAlone() throws SQLException {
        RecordFile.open(file).close();
        execute("PRAGMA user_version = 99");

        assertThatThrownBy(() -> RecordFile.open(file))
                .isInstanceOf(RecordProblem.class)
                .hasMessageContaining("newer");
        assertThat(folder.resolve("data")).isDirectoryNotContaining("glob:**damaged*");
    }

    @Test
    void goesOnWithoutAFile() {
        try (RecordFile record = RecordFile.inMemory()) {
            record.keep(Answers.numbered(1));

            assertThat(record.answers("robin")).containsExactly(Answers.numbered(1));
        }
    }

    @Test
    void textsOfAnyKindComeBackAsTheyWere() {
        final Answer odd = Answers.typed(1, "'; DROP TABLE answer; -- Ω ¼ 🚚");
        try (RecordFile record = RecordFile.open(file)) {
            record.keep(odd);

            assertThat(record.answers("robin")).containsExactly(odd);
        }
    }

    private void execute(final String sql) throws SQLException {
        try (Connection other = DriverManager.getConnection("jdbc:sqlite:" + file);
                Statement statement = other.createStatement()) {
            statement.executeUpdate(sql);
        }
    }

    private static String resource(final String name) throws IOException {
        try (var stream = Objects.requireNonNull(Schema.class.getResourceAsStream(name))) {
            return new String(stream.readAllBytes(), java.nio.charset.StandardCharsets.UTF_8);
        }
    }
}
