package wireworthy.record;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Takes what can still be read of a damaged record over into a new one. */
final class Salvage {
    private static final int MOST_FAILURES = 20_000;
    private static final int BEYOND = 256;
    private static final char HOLE = 0;

    private static final String NEWER = "SELECT * FROM answer WHERE id BETWEEN ? AND ?";
    private static final String OLDER =
            "SELECT *, printf('%012x-old-%09d', at, id) AS uid, '' AS suspected,"
                    + " CAST(julianday(date(at / 1000, 'unixepoch', 'localtime')) - 2440587 AS INTEGER)"
                    + " AS day FROM answer WHERE id BETWEEN ? AND ?";

    private final Sql from;
    private final Sql into;
    private final Map<Long, String> codes = new HashMap<>();
    private int failures;
    private int saved;

    private Salvage(final Sql from, final Sql into) {
        this.from = from;
        this.into = into;
    }

    /**
     * Saves into a new record; how many answers it was.
     *
     * @param damaged is only read; a copy is worked on
     */
    static int of(final Path damaged, final Connection into) throws SQLException, IOException {
        final Path copy = damaged.resolveSibling(damaged.getFileName() + ".copy");
        try {
            for (final String part : List.of("-wal", "")) {
                final Path file = damaged.resolveSibling(damaged.getFileName() + part);
                if (Files.exists(file)) {
                    Files.copy(file, copy.resolveSibling(copy.getFileName() + part));
                }
            }
            return read(copy, new Sql(into));
        } finally {
            for (final String part : List.of("-wal", "-shm", "")) {
                Files.deleteIfExists(copy.resolveSibling(copy.getFileName() + part));
            }
        }
    }

    private static int read(final Path copy, final Sql into) throws SQLException {
        try (Connection connection = DriverManager.getConnection("jdbc:sqlite:" + copy)) {
            final Sql from = new Sql(connection);
            // Else SQLite reads nothing of a file that is shorter than it says.
            from.change("PRAGMA writable_schema = ON");
            final Salvage salvage = new Salvage(from, into);
            into.whole(salvage::all);
            return salvage.saved;
        }
    }

    private void all() throws SQLException {
        people();
        final Optional<Long> last = last();
        if (last.isPresent()) {
            answers(select(), 1, last.get());
            screens();
        }
    }

    private void people() throws SQLException {
        try {
            from.each(
                    // The other pages of a torn file read as nothing, whatever the table says.
                    "SELECT id, coalesce(code, '') AS code FROM person",
                    row -> codes.put(row.getLong("id"), row.getString("code")));
        } catch (final SQLException e) {
            failures++;
        }
        codes.values().removeIf(code -> code == null || code.isBlank());
        for (final String code : codes.values()) {
            new PersonRows(into).add(code);
        }
    }

    private String select() {
        try {
            from.first("SELECT uid FROM answer LIMIT 0", row -> true);
            return NEWER;
        } catch (final SQLException e) {
            return OLDER;
        }
    }

    /** The highest id, or one beyond what can be read in turn; empty where nothing can be. */
    private Optional<Long> last() {
        final long[] last = new long[1];
        try {
            return from.first("SELECT max(id) FROM answer", row -> row.getLong(1));
        } catch (final SQLException e) {
            failures++;
        }
        try {
            from.each("SELECT id FROM answer ORDER BY id", row -> last[0] = row.getLong(1));
        } catch (final SQLException e) {
            failures++;
        }
        return Optional.of(last[0] + BEYOND).filter(it -> last[0] > 0);
    }

    /** Reads a stretch; where that fails, each half of it. */
    private void answers(final String select, final long first, final long last)
            throws SQLException {
        final List<AnswerRows.Kept> read = new ArrayList<>();
        try {
            from.each(select, row -> readable(row).map(read::add), first, last);
        } catch (final SQLException e) {
            failures++;
            if (first < last && failures < MOST_FAILURES) {
                final long middle = (first + last) >>> 1;
                answers(select, first, middle);
                answers(select, middle + 1, last);
            }
            return;
        }
        for (final AnswerRows.Kept each : read) {
            new PersonRows(into).add(each.answer().person());
            saved += new AnswerRows(into).add(each) ? 1 : 0;
        }
    }

    private Optional<AnswerRows.Kept> readable(final ResultSet row) throws SQLException {
        final long person = row.getLong("person");
        try {
            return Optional.of(AnswerRows.kept(row, codes.getOrDefault(person, "person " + person)))
                    .filter(Salvage::whole);
        } catch (final IllegalArgumentException | NullPointerException e) {
            // A spoilt row: a skill or text that is none.
            return Optional.empty();
        }
    }

    /**
     * A row of a page that is there in part only: its id tells another time, or texts have holes.
     */
    private static boolean whole(final AnswerRows.Kept kept) {
        final Answer answer = kept.answer();
        final String texts =
                answer.bank() + answer.template() + answer.typed() + answer.understood();
        return Uids.tells(kept.uid(), answer) && texts.indexOf(HOLE) < 0;
    }

    private void screens() throws SQLException {
        final Map<Screen, String> read = new HashMap<>();
        try {
            from.each(
                    "SELECT * FROM reading WHERE read = 1",
                    row ->
                            read.put(
                                    new Screen(row.getString("lesson"), row.getInt("screen")),
                                    codes.getOrDefault(row.getLong("person"), "")));
        } catch (final SQLException e) {
            failures++;
        }
        for (final Map.Entry<Screen, String> each : read.entrySet()) {
            if (!each.getValue().isEmpty()) {
                new PersonRows(into).reading(each.getValue(), each.getKey(), true);
            }
        }
    }
}
