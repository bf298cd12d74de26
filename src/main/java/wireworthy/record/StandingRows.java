package wireworthy.record;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import wireworthy.practice.Answered;
import wireworthy.practice.Moment;
import wireworthy.practice.Standing;
import wireworthy.rules.Skill;

/**
 * Where people stand, kept up answer by answer so that a long record costs no more than a short
 * one. Only where answers came in that belong before the last, from another copy of the record, is
 * all folded anew.
 */
final class StandingRows {
    // A plus keeps SQLite from walking all answers in order for the few that are wanted.
    private static final String ROWS =
            "SELECT id, at, uid, skill, day, sound, aided, slips, difficulty, bank, version,"
                    + " template, seed, asked FROM answer WHERE +person = ? AND id > ?"
                    + " AND sound IS NOT NULL ORDER BY +uid";
    private static final String EARLIER =
            "SELECT 1 FROM answer WHERE person = ? AND template = ? AND seed = ? AND bank = ?"
                    + " AND version = ? AND asked = ? AND sound IS NOT NULL"
                    + " AND +uid < ? LIMIT 1";
    private static final String KEEP =
            "INSERT INTO standing (person, form, turn, answer, at, uid, text)"
                    + " VALUES (?, ?, ?, ?, ?, ?, ?) ON CONFLICT (person) DO UPDATE SET"
                    + " form = excluded.form, turn = excluded.turn, answer = excluded.answer,"
                    + " at = excluded.at, uid = excluded.uid, text = excluded.text";
    private static final String DAY =
            "INSERT INTO daily (person, day, skill, tries, unaided, chance, state)"
                    + " VALUES (?, ?, ?, ?, ?, ?, ?) ON CONFLICT DO UPDATE SET"
                    + " tries = tries + excluded.tries, unaided = unaided + excluded.unaided,"
                    + " chance = excluded.chance, state = excluded.state";

    private final Sql sql;
    private final DayRows days;
    private final Map<Long, Folded> folded = new HashMap<>();

    StandingRows(final Sql sql) {
        this.sql = sql;
        this.days = new DayRows(sql);
    }

    /** Where a person stands now. */
    Standing of(final String code) throws SQLException {
        final Optional<long[]> person =
                sql.first(
                        "SELECT id, turn FROM person WHERE code = ?",
                        row -> new long[] {row.getLong(1), row.getLong(2)},
                        code);
        return person.isEmpty()
                ? Standing.NONE
                : of(person.get()[0], (int) person.get()[1]).standing();
    }

    private Folded of(final long person, final int turn) throws SQLException {
        final Folded before = before(person, turn);
        final List<Folded.Row> rows = rows(person, before);
        if (rows.isEmpty()) {
            return before;
        }
        final Folded now = before.takes(rows) ? added(person, before, rows) : anew(person, turn);
        folded.put(person, now);
        return now;
    }

    private Folded before(final long person, final int turn) throws SQLException {
        final Optional<Folded> held =
                Optional.ofNullable(folded.get(person)).filter(it -> it.turn() == turn);
        return held.isPresent()
                ? held.get()
                : sql.first(
                                "SELECT * FROM standing WHERE person = ? AND turn = ? AND form = ?",
                                StandingRows::folded,
                                person,
                                turn,
                                Folded.FORM)
                        .orElse(Folded.none(turn));
    }

    private static Folded folded(final ResultSet row) throws SQLException {
        return new Folded(
                row.getInt("turn"),
                row.getLong("answer"),
                row.getLong("at"),
                row.getString("uid"),
                Folded.standing(row.getString("text")));
    }

    private List<Folded.Row> rows(final long person, final Folded after) throws SQLException {
        final Set<String> seen = new HashSet<>();
        final boolean all = after.answer() == 0;
        return sql.all(
                ROWS,
                row -> row(row, seen.add(line(row)) && (all || !earlier(person, row))),
                person,
                after.answer());
    }

    /** A second try at the same numbers says nothing new about the skill. */
    private static String line(final ResultSet row) throws SQLException {
        return String.join(
                "/",
                row.getString("bank"),
                row.getString("version"),
                row.getString("template"),
                row.getString("seed"),
                row.getString("asked"));
    }

    private boolean earlier(final long person, final ResultSet row) throws SQLException {
        return sql.first(
                        EARLIER,
                        found -> true,
                        person,
                        row.getString("template"),
                        row.getLong("seed"),
                        row.getString("bank"),
                        row.getInt("version"),
                        row.getString("asked"),
                        row.getString("uid"))
                .isPresent();
    }

    /** What an answer that is not on disk yet says of its skill; empty where it says nothing. */
    static Optional<Answered> waiting(final Answer answer) {
        return answer.sound()
                .map(
                        sound ->
                                new Answered(
                                        answer.skill(),
                                        new Moment(answer.day(), answer.at().getEpochSecond()),
                                        sound,
                                        answer.aided(),
                                        !answer.slips().isEmpty(),
                                        answer.difficulty(),
                                        answer.bank() + "/" + answer.template(),
                                        answer.seed()));
    }

    private static Folded.Row row(final ResultSet row, final boolean counts) throws SQLException {
        final long at = row.getLong("at");
        return new Folded.Row(
                row.getLong("id"),
                at,
                row.getString("uid"),
                counts,
                new Answered(
                        Skill.valueOf(AnswerRows.constant(row.getString("skill"))),
                        new Moment(row.getLong("day"), Math.floorDiv(at, 1000L)),
                        row.getBoolean("sound"),
                        row.getBoolean("aided"),
                        !row.getString("slips").isEmpty(),
                        row.getInt("difficulty"),
                        row.getString("bank") + "/" + row.getString("template"),
                        row.getLong("seed")));
    }

    private Folded anew(final long person, final int turn) throws SQLException {
        final Folded none = Folded.none(turn);
        return added(person, none, rows(person, none));
    }

    private Folded added(final long person, final Folded before, final List<Folded.Row> rows)
            throws SQLException {
        final Folded.Days days = new Folded.Days();
        final Folded now = before.with(rows, days);
        try {
            sql.whole(() -> keep(person, before, now, days));
        } catch (final SQLException e) {
            // All of it can be worked from the answers again; the next program start does.
            return now;
        }
        return now;
    }

    /** Another program may have been here first; then what it wrote stays. */
    private void keep(
            final long person, final Folded before, final Folded now, final Folded.Days days)
            throws SQLException {
        final long there =
                sql.first(
                                "SELECT answer FROM standing WHERE person = ? AND turn = ?",
                                row -> row.getLong(1),
                                person,
                                now.turn())
                        .orElse(0L);
        if (before.answer() == 0) {
            sql.change("DELETE FROM daily WHERE person = ?", person);
        } else if (there != before.answer()) {
            return;
        }
        keep(person, now);
        for (final SkillDay day : days.all()) {
            keep(person, day);
        }
    }

    private void keep(final long person, final Folded now) throws SQLException {
        sql.change(
                KEEP,
                person,
                Folded.FORM,
                now.turn(),
                now.answer(),
                now.at(),
                now.uid(),
                now.text());
    }

    private void keep(final long person, final SkillDay day) throws SQLException {
        sql.change(
                DAY,
                person,
                day.day(),
                day.skill().id(),
                day.tries(),
                day.unaided(),
                day.chance(),
                day.state().name());
    }

    /** How the skills stood at the end of each day, oldest first. */
    List<SkillDay> days(final String code) throws SQLException {
        of(code);
        return days.of(code);
    }

    /** Which of them held when they were answered, day by day, oldest first. */
    List<HeldDay> held(final String code) throws SQLException {
        of(code);
        return days.held(code);
    }
}
