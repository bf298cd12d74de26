package wireworthy.record;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import tools.jackson.databind.json.JsonMapper;
import wireworthy.practice.Answered;
import wireworthy.practice.Skills;
import wireworthy.practice.Standing;

/**
 * Where a person stands after some answers, and which those were.
 *
 * @param turn of the person when it was worked
 * @param answer highest row id in it
 * @param at milliseconds of the last
 * @param uid of the last in the order in which they were given
 */
record Folded(int turn, long answer, long at, String uid, Standing standing) {
    /** Raised when the same answers would be folded otherwise. */
    static final int FORM = 3;

    private static final JsonMapper JSON = JsonMapper.shared();

    /** Before the first answer. */
    static Folded none(final int turn) {
        return new Folded(turn, 0, Long.MIN_VALUE, "", Standing.NONE);
    }

    static Standing standing(final String text) {
        return JSON.readValue(text, Standing.class);
    }

    String text() {
        return JSON.writeValueAsString(standing);
    }

    /**
     * One row of an answer.
     *
     * @param counts whether it says something new of its skill
     */
    record Row(long id, long at, String uid, boolean counts, Answered answered) {}

    private boolean before(final Row row) {
        return uid.compareTo(row.uid) < 0;
    }

    /** Whether these come after all that is in it, so that they can be added. */
    boolean takes(final List<Row> rows) {
        return rows.isEmpty() || before(rows.get(0));
    }

    /** With these, in their order; how each skill stood after each is put down in days. */
    Folded with(final List<Row> rows, final Days days) {
        Standing now = standing;
        long highest = answer;
        for (final Row row : rows) {
            highest = Math.max(highest, row.id);
            if (row.counts) {
                now = now.with(row.answered);
                days.add(row.answered, now.skills());
            }
        }
        final Row last = rows.get(rows.size() - 1);
        return new Folded(turn, highest, last.at, last.uid, now);
    }

    /** The days that were touched. */
    static final class Days {
        private final Map<List<Object>, SkillDay> days = new LinkedHashMap<>();

        private void add(final Answered answer, final Skills after) {
            final SkillDay day =
                    new SkillDay(
                            answer.day(),
                            answer.skill(),
                            1,
                            answer.rightUnaided() ? 1 : 0,
                            after.chance(answer.skill(), answer.day(), 0),
                            after.state(answer.skill(), answer.day()));
            days.merge(List.of(day.day(), day.skill()), day, SkillDay::plus);
        }

        List<SkillDay> all() {
            return List.copyOf(days.values());
        }
    }
}
