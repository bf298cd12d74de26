package wireworthy.record;

import java.io.IOException;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/**
 * What was answered and read, and when. An answer is on disk when {@link #keep} returns. An answer
 * that could not be kept stays in memory, is told by {@link #unkept} and is tried again with the
 * next one. Safe from several threads and programs at once.
 */
public final class RecordFile implements AutoCloseable {
    private final Connection connection;
    private final Optional<Path> setAside;
    private final Rows rows;
    private final List<Answer> unkept = new ArrayList<>();

    private RecordFile(final Connection connection, final Optional<Path> setAside) {
        this.connection = connection;
        this.setAside = setAside;
        this.rows = new Rows(connection);
    }

    /**
     * Opens the record, or begins one. A damaged file is renamed, never deleted, and a new one
     * begun; see {@link #setAside}.
     *
     * @throws RecordProblem where the file can't be opened or written to
     */
    public static RecordFile open(final Path file) {
        try {
            final Database.Opened opened = Database.open(file);
            return new RecordFile(opened.connection(), opened.aside());
        } catch (final SQLException | IOException e) {
            throw new RecordProblem(
                    "The record of your answers can't be opened: " + file,
                    "Check that its folder is there, has room and may be written to. You can go on"
                            + " without it; then nothing is remembered",
                    e);
        }
    }

    /** A record that is gone when the program ends, to go on with where none can be opened. */
    public static RecordFile inMemory() {
        try {
            return new RecordFile(Database.inMemory(), Optional.empty());
        } catch (final SQLException e) {
            throw new RecordProblem("No record can be kept, not even in memory", "Start again", e);
        }
    }

    /** Where a damaged record was put when this one was opened. */
    public Optional<Path> setAside() {
        return setAside;
    }

    /**
     * Keeps an answer; it is on disk when this returns.
     *
     * @throws RecordProblem where it can't be written; it then waits in memory
     */
    public synchronized void keep(final Answer answer) {
        unkept.add(answer);
        try {
            rows.add(unkept);
            unkept.clear();
        } catch (final SQLException e) {
            throw unwritten(e);
        }
    }

    /** Answers that wait in memory because they could not be written, oldest first. */
    public synchronized List<Answer> unkept() {
        return List.copyOf(unkept);
    }

    /**
     * All answers of a person, oldest first, those that still wait to be written included.
     *
     * @param person code name
     */
    public synchronized List<Answer> answers(final String person) {
        try {
            final Stream<Answer> waiting = unkept.stream().filter(a -> a.person().equals(person));
            return Stream.concat(rows.answers(person).stream(), waiting).toList();
        } catch (final SQLException e) {
            throw unread(e);
        }
    }

    /** The code names of all who are on record, in alphabetical order. */
    public synchronized List<String> people() {
        try {
            return rows.people();
        } catch (final SQLException e) {
            throw unread(e);
        }
    }

    /**
     * Remembers whether a screen of a lesson was read.
     *
     * @throws RecordProblem where it can't be written
     */
    public synchronized void reading(
            final String person, final String lesson, final int screen, final boolean read) {
        try {
            rows.reading(person, new Screen(lesson, screen), read);
        } catch (final SQLException e) {
            throw unwritten(e);
        }
    }

    /** The screens a person has read. */
    public synchronized Set<Screen> screensRead(final String person) {
        try {
            return rows.screensRead(person);
        } catch (final SQLException e) {
            throw unread(e);
        }
    }

    @Override
    public synchronized void close() {
        try {
            connection.close();
        } catch (final SQLException e) {
            throw unwritten(e);
        }
    }

    private static RecordProblem unwritten(final SQLException e) {
        return new RecordProblem(
                "The record can't be written to",
                "Check that the disk has room and the folder may be written to; you can go on, and"
                        + " what could not be kept is tried again with the next answer",
                e);
    }

    private static RecordProblem unread(final SQLException e) {
        return new RecordProblem(
                "The record can't be read",
                "Start again: a damaged record is set aside and a new one begun",
                e);
    }
}
