package wireworthy.record;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.SQLException;
import java.time.Instant;
import java.util.List;
import java.util.Locale;

/**
 * The people on one record, each under a code name. There is no password and no pretence of one:
 * whoever uses the machine can open every record on it.
 */
public final class People {
    private static final int LONGEST = 40;

    private final RecordFile record;
    private final PersonRows rows;
    private final AnswerRows answers;

    People(final RecordFile record, final Sql sql) {
        this.record = record;
        this.rows = new PersonRows(sql);
        this.answers = new AnswerRows(sql);
    }

    /**
     * What an import brought.
     *
     * @param code the name under which the person stands here
     * @param added answers that were not here before
     * @param already answers that were
     */
    public record Imported(String code, int added, int already) {}

    /** The code names in alphabetical order. */
    public List<String> codes() {
        return record.reading(() -> rows.codes(false));
    }

    /** The code names that were deleted and can be brought back, until {@link #purge}. */
    public List<String> deleted() {
        return record.reading(() -> rows.codes(true));
    }

    /**
     * Puts a new person on record.
     *
     * @throws RecordProblem where the name is taken or can't be used
     */
    public void add(final String code) {
        final String name = usable(code);
        record.writing(() -> rows.add(name));
    }

    /**
     * Gives a person another code name; the answers stay.
     *
     * @throws RecordProblem where the name is taken or can't be used
     */
    public void rename(final String from, final String to) {
        final String name = usable(to);
        record.writing(() -> rows.rename(from, name));
    }

    private String usable(final String code) {
        final String name = code.strip();
        if (name.isEmpty() || name.length() > LONGEST) {
            throw new RecordProblem("code-name", "most", LONGEST);
        }
        if (record.reading(() -> rows.has(name))) {
            throw new RecordProblem("taken", "name", name);
        }
        return name;
    }

    /** Takes a person off the list; {@link #undelete} brings all back. */
    public void delete(final String code, final Instant now) {
        record.writing(() -> rows.delete(code, now.toEpochMilli()));
    }

    /** Undoes a deletion. */
    public void undelete(final String code) {
        record.writing(() -> rows.restore(code));
    }

    /** Removes for good who was deleted. */
    public void purge() {
        for (final String code : deleted()) {
            record.writing(() -> rows.remove(code));
        }
    }

    /**
     * Puts two people together who are one: the answers of both, none twice. What is imported later
     * under either goes to the one that stays.
     */
    public void join(final String from, final String into) {
        if (from.equals(into)) {
            return;
        }
        final Exported both = exported(from);
        record.writing(
                () -> {
                    rows.remove(from);
                    take(both, into);
                });
    }

    /**
     * Writes all that is on record of a person as JSON, which can be imported again.
     *
     * @throws RecordProblem where the file can't be written
     */
    public void exportJson(final String code, final Path file) {
        write(file, exported(code).json());
    }

    /**
     * Writes the answers of a person as CSV, for a spreadsheet.
     *
     * @throws RecordProblem where the file can't be written
     */
    public void exportCsv(final String code, final Path file) {
        write(file, exported(code).csv());
    }

    private Exported exported(final String code) {
        return record.reading(
                () -> Exported.of(code, rows.uids(code), answers.of(code), rows.screensRead(code)));
    }

    private static void write(final Path file, final byte[] bytes) {
        try {
            Files.write(file, bytes);
        } catch (final IOException e) {
            throw new RecordProblem(e, "export", "file", file);
        }
    }

    /**
     * Takes in what {@link #exportJson} wrote, here or on another machine. Who is here already gets
     * the answers that are new; nobody gets one twice. Someone deleted comes back.
     *
     * @throws RecordProblem where the file can't be read or is none of ours; nothing is taken then
     */
    public Imported importJson(final Path file) {
        final Exported from = Exported.read(file);
        final String code = record.reading(() -> here(from));
        final int[] added = new int[1];
        record.writing(() -> added[0] = take(from, code));
        return new Imported(code, added[0], from.answers().size() - added[0]);
    }

    /** The name of the one here who is known by one of the ids, or else a free name. */
    private String here(final Exported from) throws SQLException {
        for (final String uid : from.uids()) {
            final var known = rows.ofUid(uid);
            if (known.isPresent()) {
                return known.get();
            }
        }
        String free = from.code();
        for (int number = 2; rows.has(free); number++) {
            free = String.format(Locale.ROOT, "%s %d", from.code(), number);
        }
        return free;
    }

    private int take(final Exported from, final String code) throws SQLException {
        if (!rows.has(code)) {
            rows.addAs(code, from.uids().get(0));
        }
        rows.restore(code);
        for (final String uid : from.uids()) {
            if (rows.ofUid(uid).isEmpty()) {
                rows.alias(uid, code);
            }
        }
        int added = 0;
        for (final AnswerRows.Kept each : from.keptBy(code)) {
            added += answers.add(each) ? 1 : 0;
        }
        for (final Screen screen : from.screens()) {
            rows.reading(code, screen, true);
        }
        rows.turned(code);
        return added;
    }
}
