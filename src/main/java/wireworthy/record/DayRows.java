package wireworthy.record;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import wireworthy.practice.SkillState;
import wireworthy.rules.Skill;

/** How the skills stood day by day, as it was put down when the answers were folded. */
final class DayRows {
    private static final List<Skill> SKILLS = List.of(Skill.values());
    private static final String PERSON = " WHERE person = (SELECT id FROM person WHERE code = ?)";
    private static final String OF = "SELECT * FROM daily" + PERSON + " ORDER BY day, skill";

    private static final int HALF = 32;

    /**
     * Ten years have a hundred thousand rows; SQLite makes one of a day, with a bit for each skill:
     * in the upper half for those that held, in the lower for the others.
     */
    private static final String HELD =
            "SELECT day, sum(1 << ("
                    + place()
                    + " + "
                    + HALF
                    + " * (state IN ('SNUG', 'TIGHT')))) FROM daily"
                    + PERSON
                    + " GROUP BY day ORDER BY day";

    private final Sql sql;

    DayRows(final Sql sql) {
        this.sql = sql;
    }

    List<SkillDay> of(final String code) throws SQLException {
        return sql.all(OF, DayRows::day, code);
    }

    List<HeldDay> held(final String code) throws SQLException {
        return sql.all(HELD, DayRows::held, code);
    }

    private static SkillDay day(final ResultSet row) throws SQLException {
        return new SkillDay(
                row.getLong("day"),
                Skill.valueOf(AnswerRows.constant(row.getString("skill"))),
                row.getInt("tries"),
                row.getInt("unaided"),
                row.getDouble("chance"),
                SkillState.valueOf(row.getString("state")));
    }

    private static HeldDay held(final ResultSet row) throws SQLException {
        final long bits = row.getLong(2);
        return new HeldDay(row.getLong(1), skills(bits >> HALF), skills(bits));
    }

    private static Set<Skill> skills(final long bits) {
        final Set<Skill> some = EnumSet.noneOf(Skill.class);
        for (int i = 0; i < SKILLS.size(); i++) {
            if ((bits >> i & 1) > 0) {
                some.add(SKILLS.get(i));
            }
        }
        return some;
    }

    private static String place() {
        return IntStream.range(0, SKILLS.size())
                .mapToObj(i -> " WHEN '" + SKILLS.get(i).id() + "' THEN " + i)
                .collect(Collectors.joining("", "CASE skill", " END"));
    }
}
