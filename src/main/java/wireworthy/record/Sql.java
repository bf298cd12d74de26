package wireworthy.record;

import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Statements on one connection. */
record Sql(Connection connection) {
    /** Work that is done as a whole or not at all. */
    interface Work {
        void run() throws SQLException;
    }

    /** Reads one row. */
    interface Row<T> {
        T of(ResultSet row) throws SQLException;
    }

    /** Does it in one transaction; within another one it is part of that. */
    void whole(final Work work) throws SQLException {
        if (!connection.getAutoCommit()) {
            work.run();
            return;
        }
        connection.setAutoCommit(false);
        try {
            work.run();
            connection.commit();
        } catch (final SQLException | RuntimeException e) {
            connection.rollback();
            throw e;
        } finally {
            connection.setAutoCommit(true);
        }
    }

    /** Changes rows, and says how many. */
    int change(final String sql, final Object... values) throws SQLException {
        try (PreparedStatement statement = prepared(sql, values)) {
            return statement.executeUpdate();
        }
    }

    <T> List<T> all(final String sql, final Row<T> reader, final Object... values)
            throws SQLException {
        final List<T> all = new ArrayList<>();
        each(sql, row -> all.add(reader.of(row)), values);
        return all;
    }

    <T> Optional<T> first(final String sql, final Row<T> reader, final Object... values)
            throws SQLException {
        return all(sql, reader, values).stream().findFirst();
    }

    /** Hands over row by row. */
    void each(final String sql, final Row<?> taker, final Object... values) throws SQLException {
        try (PreparedStatement statement = prepared(sql, values);
                ResultSet row = statement.executeQuery()) {
            while (row.next()) {
                taker.of(row);
            }
        }
    }

    private PreparedStatement prepared(final String sql, final Object... values)
            throws SQLException {
        final PreparedStatement statement = connection.prepareStatement(sql);
        for (int i = 0; i < values.length; i++) {
            statement.setObject(
                    i + 1, values[i] instanceof Optional<?> o ? o.orElse(null) : values[i]);
        }
        return statement;
    }
}
