package wireworthy.record;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.Objects;
import java.util.Optional;

/** Brings a record to the newest schema, one numbered file of statements after the other. */
final class Schema {
    static final int NEWEST = 4;

    private Schema() {}

    /**
     * Brings it up to date; an older record is copied first.
     *
     * @param file to be copied beside itself; empty for a record that is not on disk
     */
    static void bring(final Connection connection, final Optional<Path> file) throws SQLException {
        final int version = version(connection);
        if (version > NEWEST) {
            throw new RecordProblem("newer");
        }
        if (version > 0 && version < NEWEST && file.isPresent()) {
            copy(connection, file.orElseThrow(), version);
        }
        if (version < NEWEST) {
            change(connection);
        }
    }

    private static int version(final Connection connection) throws SQLException {
        try (Statement statement = connection.createStatement();
                ResultSet result = statement.executeQuery("PRAGMA user_version")) {
            return result.getInt(1);
        }
    }

    private static void copy(final Connection connection, final Path file, final int version)
            throws SQLException {
        final Path copy = file.resolveSibling(file.getFileName() + ".before-" + (version + 1));
        if (Files.exists(copy)) {
            return;
        }
        try (PreparedStatement statement = connection.prepareStatement("VACUUM INTO ?")) {
            statement.setString(1, copy.toString());
            statement.execute();
        }
    }

    /** All in one transaction: two programs opening a new record at once do it only once. */
    private static void change(final Connection connection) throws SQLException {
        try (Statement statement = connection.createStatement()) {
            statement.execute("BEGIN IMMEDIATE");
            try {
                for (int number = version(connection) + 1; number <= NEWEST; number++) {
                    statement.executeUpdate(file(number));
                    statement.execute("PRAGMA user_version = " + number);
                }
                statement.execute("COMMIT");
            } catch (final SQLException e) {
                statement.execute("ROLLBACK");
                throw e;
            }
        }
    }

    private static String file(final int number) {
        try (InputStream stream =
                Objects.requireNonNull(Schema.class.getResourceAsStream(number + ".sql"))) {
            return new String(stream.readAllBytes(), StandardCharsets.UTF_8);
        } catch (final IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
