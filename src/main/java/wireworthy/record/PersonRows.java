package wireworthy.record;

import java.sql.SQLException;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** Writes and reads the rows of people and of what they have read. */
record PersonRows(Sql sql) {
    private static final String THERE = " AND deleted IS NULL";

    /** Makes sure that someone is on record under a code name. */
    void add(final String code) throws SQLException {
        sql.change(
                "INSERT INTO person (code, uid) VALUES (?, ?) ON CONFLICT (code) DO NOTHING",
                code,
                Uids.ofPerson());
    }

    List<String> codes(final boolean deleted) throws SQLException {
        return sql.all(
                "SELECT code FROM person WHERE deleted IS "
                        + (deleted ? "NOT " : "")
                        + "NULL ORDER BY code COLLATE NOCASE",
                row -> row.getString(1));
    }

    boolean has(final String code) throws SQLException {
        return sql.first("SELECT 1 FROM person WHERE code = ?", row -> true, code).isPresent();
    }

    Optional<String> ofUid(final String uid) throws SQLException {
        return sql.first(
                "SELECT code FROM person WHERE uid = ?1 UNION SELECT code FROM alias"
                        + " JOIN person ON person.id = alias.person WHERE alias.uid = ?1",
                row -> row.getString(1),
                uid);
    }

    /** All ids a person is known by, the own one first. */
    List<String> uids(final String code) throws SQLException {
        final List<String> uids =
                sql.all("SELECT uid FROM person WHERE code = ?", row -> row.getString(1), code);
        uids.addAll(
                sql.all(
                        "SELECT alias.uid FROM alias JOIN person ON person.id = alias.person"
                                + " WHERE code = ? ORDER BY alias.uid",
                        row -> row.getString(1),
                        code));
        return uids;
    }

    void alias(final String uid, final String code) throws SQLException {
        sql.change(
                "INSERT INTO alias (uid, person) SELECT ?, id FROM person WHERE code = ?"
                        + " ON CONFLICT DO NOTHING",
                uid,
                code);
    }

    void addAs(final String code, final String uid) throws SQLException {
        sql.change("INSERT INTO person (code, uid) VALUES (?, ?)", code, uid);
    }

    int rename(final String from, final String to) throws SQLException {
        return sql.change("UPDATE person SET code = ? WHERE code = ?" + THERE, to, from);
    }

    int delete(final String code, final long at) throws SQLException {
        return sql.change("UPDATE person SET deleted = ? WHERE code = ?" + THERE, at, code);
    }

    int restore(final String code) throws SQLException {
        return sql.change("UPDATE person SET deleted = NULL WHERE code = ?", code);
    }

    /** What was folded from the answers is to be folded anew. */
    void turned(final String code) throws SQLException {
        sql.change("UPDATE person SET turn = turn + 1 WHERE code = ?", code);
    }

    /** Removes a person with all answers. */
    void remove(final String code) throws SQLException {
        for (final String table : List.of("answer", "reading", "standing", "daily", "alias")) {
            sql.change(
                    "DELETE FROM "
                            + table
                            + " WHERE person = (SELECT id FROM person WHERE code = ?)",
                    code);
        }
        sql.change("DELETE FROM person WHERE code = ?", code);
    }

    void reading(final String code, final Screen screen, final boolean read) throws SQLException {
        sql.change(
                "INSERT INTO reading (person, lesson, screen, read)"
                        + " VALUES ((SELECT id FROM person WHERE code = ?), ?, ?, ?)"
                        + " ON CONFLICT DO UPDATE SET read = excluded.read",
                code,
                screen.lesson(),
                screen.number(),
                read ? 1 : 0);
    }

    Set<Screen> screensRead(final String code) throws SQLException {
        return new HashSet<>(
                sql.all(
                        "SELECT lesson, screen FROM reading JOIN person"
                                + " ON person.id = reading.person WHERE code = ? AND read = 1",
                        row -> new Screen(row.getString(1), row.getInt(2)),
                        code));
    }
}
