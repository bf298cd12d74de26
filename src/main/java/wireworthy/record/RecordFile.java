package wireworthy.record;

import java.io.IOException;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.SQLException;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import wireworthy.practice.Standing;

/**
 * What was answered and read, and when. An answer is on disk when {@link #keep} returns. An answer
 * that could not be kept stays in memory, is told by {@link #unkept} and is tried again with the
 * next one. Safe from several threads and programs at once.
 */
public final class RecordFile implements AutoCloseable {
    private final Optional<Path> file;
    private final Connection connection;
    private final Optional<SetAside> setAside;
    private final Sql sql;
    private final AnswerRows rows;
    private final PersonRows people;
    private final StandingRows standings;
    private final List<AnswerRows.Kept> unkept = new ArrayList<>();

    private RecordFile(
            final Optional<Path> file,
            final Connection connection,
            final Optional<SetAside> setAside) {
        this.file = file;
        this.connection = connection;
        this.setAside = setAside;
        this.sql = new Sql(connection);
        this.rows = new AnswerRows(sql);
        this.people = new PersonRows(sql);
        this.standings = new StandingRows(sql);
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
            return new RecordFile(Optional.of(file), opened.connection(), opened.aside());
        } catch (final SQLException | IOException e) {
            throw new RecordProblem(e, "unopened", "file", file);
        }
    }

    /** A record that is gone when the program ends, to go on with where none can be opened. */
    public static RecordFile inMemory() {
        try {
            return new RecordFile(Optional.empty(), Database.inMemory(), Optional.empty());
        } catch (final SQLException e) {
            throw new RecordProblem(e, "no-memory");
        }
    }

    /** What became of a damaged record when this one was opened. */
    public Optional<SetAside> setAside() {
        return setAside;
    }

    /**
     * Keeps an answer; it is on disk when this returns.
     *
     * @throws RecordProblem where it can't be written; it then waits in memory
     */
    public synchronized void keep(final Answer answer) {
        unkept.add(new AnswerRows.Kept(Uids.ofAnswer(answer, before(answer)), answer));
        writing(
                () -> {
                    for (final AnswerRows.Kept each : unkept) {
                        people.add(each.answer().person());
                        rows.add(each);
                    }
                });
        unkept.clear();
    }

    /** The id of the last answer of the same person. */
    private String before(final Answer answer) {
        final Stream<String> waiting =
                unkept.stream()
                        .filter(each -> each.answer().person().equals(answer.person()))
                        .map(AnswerRows.Kept::uid);
        String kept = "";
        try {
            kept = rows.lastUid(answer.person());
        } catch (final SQLException e) {
            // Then writing it won't go well either, and says so.
        }
        return Stream.concat(Stream.of(kept), waiting).max(String::compareTo).orElse("");
    }

    /** Answers that wait in memory because they could not be written, oldest first. */
    public synchronized List<Answer> unkept() {
        return unkept.stream().map(AnswerRows.Kept::answer).toList();
    }

    private Stream<Answer> waiting(final String person) {
        return unkept().stream().filter(answer -> answer.person().equals(person));
    }

    /**
     * All answers of a person, oldest first, those that still wait to be written included. A long
     * record takes its time; see {@link #last} and {@link #since}.
     *
     * @param person code name
     */
    public synchronized List<Answer> answers(final String person) {
        final List<AnswerRows.Kept> kept = reading(() -> rows.of(person));
        return Stream.concat(kept.stream().map(AnswerRows.Kept::answer), waiting(person)).toList();
    }

    /** The last answers of a person, oldest first, no more than this many of those on disk. */
    public synchronized List<Answer> last(final String person, final int most) {
        return Stream.concat(reading(() -> rows.last(person, most)).stream(), waiting(person))
                .toList();
    }

    /** The answers of a person after an instant, oldest first. */
    public synchronized List<Answer> since(final String person, final Instant since) {
        final Stream<Answer> late = waiting(person).filter(it -> it.at().isAfter(since));
        return Stream.concat(reading(() -> rows.since(person, since)).stream(), late).toList();
    }

    /** How many answers of a person are on disk. */
    public synchronized long count(final String person) {
        return reading(() -> rows.count(person));
    }

    /** Where a person stands after all answers. */
    public synchronized Standing standing(final String person) {
        Standing standing = reading(() -> standings.of(person));
        for (final Answer each : waiting(person).toList()) {
            standing = StandingRows.waiting(each).map(standing::with).orElse(standing);
        }
        return standing;
    }

    /** How the skills of a person stood at the end of each day with answers, oldest first. */
    public synchronized List<SkillDay> days(final String person) {
        return reading(() -> standings.days(person));
    }

    /** Which skills held on each day with answers, oldest first. */
    public synchronized List<HeldDay> held(final String person) {
        return reading(() -> standings.held(person));
    }

    /** The people on record: to rename, delete, export, import and put together. */
    public People people() {
        return new People(this, sql);
    }

    /**
     * Remembers whether a screen of a lesson was read.
     *
     * @throws RecordProblem where it can't be written
     */
    public synchronized void reading(
            final String person, final String lesson, final int screen, final boolean read) {
        writing(
                () -> {
                    people.add(person);
                    people.reading(person, new Screen(lesson, screen), read);
                });
    }

    /** The screens a person has read. */
    public synchronized Set<Screen> screensRead(final String person) {
        return reading(() -> people.screensRead(person));
    }

    /** Reads something. */
    interface Reading<T> {
        T read() throws SQLException;
    }

    synchronized <T> T reading(final Reading<T> what) {
        try {
            return what.read();
        } catch (final SQLException e) {
            file.ifPresent(it -> Database.doubt(it, e));
            throw unread(e);
        }
    }

    /** Writes all of it or nothing. */
    synchronized void writing(final Sql.Work what) {
        try {
            sql.whole(what);
        } catch (final SQLException e) {
            throw unwritten(e);
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
        return new RecordProblem(e, "unwritten");
    }

    private static RecordProblem unread(final SQLException e) {
        return new RecordProblem(e, "unread");
    }
}
