package wireworthy.practice;

import java.util.List;
import java.util.OptionalInt;
import wireworthy.rules.Ref;
import wireworthy.rules.Skill;
import wireworthy.working.Line;

/**
 * One line of the working of a problem that is opened line by line.
 *
 * @param number from 1
 * @param told the sound line in words and numbers
 * @param skill the one it exercises
 * @param main whether it is the line the problem was chosen for
 * @param state what becomes of it at first
 * @param needs what it is worked from, in the order of the sum
 */
public record ProblemLine(
        int number, Line told, Skill skill, boolean main, LineState state, List<Need> needs) {
    public ProblemLine {
        needs = List.copyOf(needs);
    }

    /**
     * A quantity that a line is worked from.
     *
     * @param name in words
     * @param line the number of the line that gives it; empty where it is given or assumed
     * @param assumed whether it was taken because the question is silent
     */
    public record Need(String name, OptionalInt line, boolean assumed) {
        String words() {
            return LineTexts.of("need", "name", name, "from", from());
        }

        private String from() {
            if (line.isPresent()) {
                return LineTexts.of("need.line", "number", line.getAsInt());
            }
            return LineTexts.of(assumed ? "need.assumed" : "need.given");
        }
    }

    /** What it gives. */
    public Ref ref() {
        return told.ref();
    }

    /** What it gives, in words: "load current, house lamps". */
    public String name() {
        return name(ref(), told.subject());
    }

    static String name(final Ref ref, final String subject) {
        final String words = ref.quantity().words();
        return subject.isEmpty() ? words : words + ", " + subject;
    }

    /** The numbers of the lines it is worked from. */
    public List<Integer> standsOn() {
        return needs.stream()
                .filter(need -> need.line().isPresent())
                .map(need -> need.line().getAsInt())
                .distinct()
                .toList();
    }
}
