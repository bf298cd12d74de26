package wireworthy.record;

import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Types;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import wireworthy.rules.Quantity;
import wireworthy.rules.Skill;

/** Writes and reads the rows of a record. */
final class Rows {
    private static final String PERSON =
            "INSERT INTO person (code) VALUES (?) ON CONFLICT DO NOTHING";
    private static final String ANSWER =
            "INSERT INTO answer (at, bank, version, template, seed, skill, difficulty, asked, typed,"
                    + " understood, sound, aided, slips, seconds, person)"
                    + " VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?,"
                    + " (SELECT id FROM person WHERE code = ?))";
    private static final String ANSWERS =
            "SELECT answer.* FROM answer JOIN person ON person.id = answer.person"
                    + " WHERE person.code = ? ORDER BY answer.id";
    private static final String READING =
            "INSERT INTO reading (person, lesson, screen, read)"
                    + " VALUES ((SELECT id FROM person WHERE code = ?), ?, ?, ?)"
                    + " ON CONFLICT DO UPDATE SET read = excluded.read";
    private static final String SCREENS =
            "SELECT lesson, screen FROM reading JOIN person ON person.id = reading.person"
                    + " WHERE person.code = ? AND read = 1";

    private final Connection connection;

    Rows(final Connection connection) {
        this.connection = connection;
    }

    /** Work that is done as a whole or not at all. */
    private interface Work {
        void run() throws SQLException;
    }

    private void whole(final Work work) throws SQLException {
        connection.setAutoCommit(false);
        try {
            work.run();
            connection.commit();
        } catch (final SQLException e) {
            connection.rollback();
            throw e;
        } finally {
            connection.setAutoCommit(true);
        }
    }

    void add(final List<Answer> answers) throws SQLException {
        whole(
                () -> {
                    for (final Answer answer : answers) {
                        person(answer.person());
                        add(answer);
                    }
                });
    }

    private void person(final String code) throws SQLException {
        try (PreparedStatement statement = connection.prepareStatement(PERSON)) {
            statement.setString(1, code);
            statement.executeUpdate();
        }
    }

    private void add(final Answer answer) throws SQLException {
        try (PreparedStatement statement = connection.prepareStatement(ANSWER)) {
            statement.setLong(1, answer.at().toEpochMilli());
            statement.setString(2, answer.bank());
            statement.setInt(3, answer.version());
            statement.setString(4, answer.template());
            statement.setLong(5, answer.seed());
            statement.setString(6, answer.skill().id());
            statement.setInt(7, answer.difficulty());
            statement.setString(8, answer.asked().id());
            statement.setString(9, answer.typed());
            statement.setString(10, answer.understood());
            if (answer.sound().isPresent()) {
                statement.setBoolean(11, answer.sound().orElseThrow());
            } else {
                statement.setNull(11, Types.INTEGER);
            }
            statement.setBoolean(12, answer.aided());
            statement.setString(13, joined(answer.slips()));
            statement.setDouble(14, answer.seconds());
            statement.setString(15, answer.person());
            statement.executeUpdate();
        }
    }

    List<Answer> answers(final String person) throws SQLException {
        try (PreparedStatement statement = connection.prepareStatement(ANSWERS)) {
            statement.setString(1, person);
            final List<Answer> answers = new ArrayList<>();
            try (ResultSet row = statement.executeQuery()) {
                while (row.next()) {
                    answers.add(answer(row, person));
                }
            }
            return answers;
        }
    }

    private static Answer answer(final ResultSet row, final String person) throws SQLException {
        return new Answer(
                Instant.ofEpochMilli(row.getLong("at")),
                person,
                row.getString("bank"),
                row.getInt("version"),
                row.getString("template"),
                row.getLong("seed"),
                Skill.valueOf(constant(row.getString("skill"))),
                row.getInt("difficulty"),
                Quantity.valueOf(constant(row.getString("asked"))),
                row.getString("typed"),
                row.getString("understood"),
                sound(row),
                row.getBoolean("aided"),
                parted(row.getString("slips")),
                row.getDouble("seconds"));
    }

    private static Optional<Boolean> sound(final ResultSet row) throws SQLException {
        final boolean sound = row.getBoolean("sound");
        return row.wasNull() ? Optional.empty() : Optional.of(sound);
    }

    private static String constant(final String id) {
        return id.replace('-', '_').toUpperCase(Locale.ROOT);
    }

    private static String joined(final List<List<String>> slips) {
        return slips.stream().map(ids -> String.join("+", ids)).collect(Collectors.joining(" "));
    }

    private static List<List<String>> parted(final String slips) {
        return Arrays.stream(slips.split(" ", -1))
                .filter(ids -> !ids.isEmpty())
                .map(ids -> List.of(ids.split("\\+", -1)))
                .toList();
    }

    List<String> people() throws SQLException {
        try (PreparedStatement statement =
                        connection.prepareStatement("SELECT code FROM person ORDER BY code");
                ResultSet row = statement.executeQuery()) {
            final List<String> people = new ArrayList<>();
            while (row.next()) {
                people.add(row.getString(1));
            }
            return people;
        }
    }

    void reading(final String person, final Screen screen, final boolean read) throws SQLException {
        whole(
                () -> {
                    person(person);
                    try (PreparedStatement statement = connection.prepareStatement(READING)) {
                        statement.setString(1, person);
                        statement.setString(2, screen.lesson());
                        statement.setInt(3, screen.number());
                        statement.setBoolean(4, read);
                        statement.executeUpdate();
                    }
                });
    }

    Set<Screen> screensRead(final String person) throws SQLException {
        try (PreparedStatement statement = connection.prepareStatement(SCREENS)) {
            statement.setString(1, person);
            final Set<Screen> screens = new HashSet<>();
            try (ResultSet row = statement.executeQuery()) {
                while (row.next()) {
                    screens.add(new Screen(row.getString("lesson"), row.getInt("screen")));
                }
            }
            return screens;
        }
    }
}
