package wireworthy.record;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.List;
import java.util.Optional;
import org.sqlite.SQLiteConfig;
import org.sqlite.SQLiteErrorCode;

/** Opens the SQLite file of a record, set so that a commit is on disk when it returns. */
final class Database {
    private static final int BUSY_MILLISECONDS = 5000;
    private static final int MOST_ASIDE = 1000;
    private static final long LONG_BYTES = 16L << 20;

    private Database() {}

    /** A connection, and what became of a damaged file, if there was one. */
    record Opened(Connection connection, Optional<SetAside> aside) {}

    static Connection inMemory() throws SQLException {
        final Connection connection = config().createConnection("jdbc:sqlite::memory:");
        Schema.bring(connection, Optional.empty());
        return connection;
    }

    static Opened open(final Path file) throws SQLException, IOException {
        Files.createDirectories(file.toAbsolutePath().getParent());
        try {
            return new Opened(sound(file), Optional.empty());
        } catch (final SQLException e) {
            if (!damage(e)) {
                throw e;
            }
            final Path aside = setAside(file);
            Files.deleteIfExists(mark(file));
            final Connection fresh = sound(file);
            return new Opened(fresh, Optional.of(new SetAside(aside, Salvage.of(aside, fresh))));
        }
    }

    private static SQLiteConfig config() {
        final SQLiteConfig config = new SQLiteConfig();
        config.setJournalMode(SQLiteConfig.JournalMode.WAL);
        config.setSynchronous(SQLiteConfig.SynchronousMode.FULL);
        config.enforceForeignKeys(true);
        config.setBusyTimeout(BUSY_MILLISECONDS);
        config.setTransactionMode(SQLiteConfig.TransactionMode.IMMEDIATE);
        return config;
    }

    private static Connection sound(final Path file) throws SQLException {
        final Connection connection =
                config().createConnection("jdbc:sqlite:" + file.toAbsolutePath());
        try {
            if (toBeChecked(file)) {
                check(connection);
            }
            Schema.bring(connection, Optional.of(file));
            return connection;
        } catch (final SQLException | RecordProblem e) {
            connection.close();
            throw e;
        }
    }

    /** A long record is checked only after damage showed in it; the check reads all of it. */
    private static boolean toBeChecked(final Path file) {
        return file.toFile().length() < LONG_BYTES || Files.exists(mark(file));
    }

    private static Path mark(final Path file) {
        return file.resolveSibling(file.getFileName() + ".to-be-checked");
    }

    /** Has the file checked when it is next opened, where the error tells of damage. */
    static void doubt(final Path file, final SQLException e) {
        if (damage(e)) {
            try {
                Files.writeString(mark(file), "");
            } catch (final IOException ignored) {
                // The damage shows again next time.
            }
        }
    }

    private static void check(final Connection connection) throws SQLException {
        try (Statement statement = connection.createStatement();
                ResultSet result = statement.executeQuery("PRAGMA quick_check(1)")) {
            if (!"ok".equals(result.getString(1))) {
                throw new SQLException(
                        result.getString(1), "", SQLiteErrorCode.SQLITE_CORRUPT.code);
            }
        }
    }

    private static boolean damage(final SQLException e) {
        // Extended codes keep the plain one in their lowest byte.
        final int code = e.getErrorCode() & 0xff;
        return code == SQLiteErrorCode.SQLITE_CORRUPT.code
                || code == SQLiteErrorCode.SQLITE_NOTADB.code;
    }

    /** Renames the file and what SQLite keeps beside it; nothing is deleted. */
    private static Path setAside(final Path file) throws IOException {
        final String name = file.getFileName() + ".damaged-";
        int number = 1;
        while (Files.exists(file.resolveSibling(name + number)) && number < MOST_ASIDE) {
            number++;
        }
        final Path aside = file.resolveSibling(name + number);
        for (final String part : List.of("-wal", "-shm", "")) {
            final Path from = file.resolveSibling(file.getFileName() + part);
            if (Files.exists(from)) {
                Files.move(from, file.resolveSibling(aside.getFileName() + part));
            }
        }
        return aside;
    }
}
