package wireworthy.record;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import wireworthy.rules.Quantity;
import wireworthy.rules.Skill;

/** Writes and reads the rows of answers. */
record AnswerRows(Sql sql) {
    private static final String INSERT =
            "INSERT INTO answer (uid, at, day, bank, version, template, seed, skill, difficulty,"
                    + " asked, typed, understood, sound, aided, slips, suspected, seconds, person)"
                    + " VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?,"
                    + " (SELECT id FROM person WHERE code = ?)) ON CONFLICT (uid) DO NOTHING";
    private static final String SELECT =
            "SELECT answer.*, code FROM answer JOIN person ON person.id = answer.person ";
    private static final String OF = SELECT + "WHERE code = ? ";

    /**
     * An answer and the id by which every copy of the record knows it.
     *
     * @param uid the same in every copy
     */
    record Kept(String uid, Answer answer) {}

    /** Adds an answer that is not there yet; whether it was added. */
    boolean add(final Kept kept) throws SQLException {
        final Answer answer = kept.answer();
        return sql.change(
                        INSERT,
                        kept.uid(),
                        answer.at().toEpochMilli(),
                        answer.day(),
                        answer.bank(),
                        answer.version(),
                        answer.template(),
                        answer.seed(),
                        answer.skill().id(),
                        answer.difficulty(),
                        answer.asked().map(Quantity::id).orElse(""),
                        answer.typed(),
                        answer.understood(),
                        answer.sound(),
                        answer.aided(),
                        joined(answer.slips()),
                        joined(answer.suspected()),
                        answer.seconds(),
                        answer.person())
                > 0;
    }

    /** The id of the last answer of a person; empty where there is none. */
    String lastUid(final String person) throws SQLException {
        return sql.first(
                        "SELECT uid FROM answer WHERE person = (SELECT id FROM person WHERE code = ?)"
                                + " ORDER BY uid DESC LIMIT 1",
                        row -> row.getString(1),
                        person)
                .orElse("");
    }

    long count(final String person) throws SQLException {
        return sql.first(
                        "SELECT count(*) FROM answer"
                                + " WHERE person = (SELECT id FROM person WHERE code = ?)",
                        row -> row.getLong(1),
                        person)
                .orElse(0L);
    }

    /** All of a person in the order in which they were given. */
    List<Kept> of(final String person) throws SQLException {
        return sql.all(OF + "ORDER BY answer.uid", AnswerRows::kept, person);
    }

    /** The last of a person, oldest first. */
    List<Answer> last(final String person, final int most) throws SQLException {
        final String newest = OF + "ORDER BY answer.uid DESC LIMIT ?";
        return sql.all(
                "SELECT * FROM (" + newest + ") ORDER BY uid",
                row -> kept(row).answer(),
                person,
                most);
    }

    /** Those of a person after an instant, oldest first. */
    List<Answer> since(final String person, final Instant since) throws SQLException {
        // The plus has SQLite find them by their time, and not walk all in their order.
        return sql.all(
                OF + "AND at > ? ORDER BY +answer.uid",
                row -> kept(row).answer(),
                person,
                since.toEpochMilli());
    }

    private static Kept kept(final ResultSet row) throws SQLException {
        return kept(row, row.getString("code"));
    }

    static Kept kept(final ResultSet row, final String person) throws SQLException {
        return new Kept(row.getString("uid"), answer(row, person));
    }

    private static Answer answer(final ResultSet row, final String person) throws SQLException {
        return new Answer(
                Instant.ofEpochMilli(row.getLong("at")),
                row.getLong("day"),
                person,
                row.getString("bank"),
                row.getInt("version"),
                row.getString("template"),
                row.getLong("seed"),
                Skill.valueOf(constant(row.getString("skill"))),
                row.getInt("difficulty"),
                Quantity.of(row.getString("asked")),
                row.getString("typed"),
                row.getString("understood"),
                sound(row),
                row.getBoolean("aided"),
                parted(row.getString("slips")),
                parted(row.getString("suspected")),
                row.getDouble("seconds"));
    }

    private static Optional<Boolean> sound(final ResultSet row) throws SQLException {
        final boolean sound = row.getBoolean("sound");
        return row.wasNull() ? Optional.empty() : Optional.of(sound);
    }

    static String constant(final String id) {
        return id.replace('-', '_').toUpperCase(Locale.ROOT);
    }

    static String joined(final List<List<String>> slips) {
        return slips.stream().map(ids -> String.join("+", ids)).collect(Collectors.joining(" "));
    }

    static List<List<String>> parted(final String slips) {
        return Arrays.stream(slips.split(" ", -1))
                .filter(ids -> !ids.isEmpty())
                .map(ids -> List.of(ids.split("\\+", -1)))
                .toList();
    }
}
