package wireworthy.evening.wish;

import wireworthy.evening.CodeNames;
import wireworthy.evening.EveningProblem;

/**
 * Who a sheet is for.
 *
 * @param named whether they have code names, not numbers only
 * @param names as typed, one a line
 * @param copies how many where they have numbers only
 * @param ownNumbers whether each has numbers of their own
 */
public record ForWhom(boolean named, String names, int copies, boolean ownNumbers) {
    public static final ForWhom USUAL = new ForWhom(false, "", 12, true);

    /**
     * The learners.
     *
     * @throws wireworthy.evening.EveningProblem where the names can't be read
     */
    public CodeNames learners() {
        return named ? CodeNames.read(names) : CodeNames.numbers(copies);
    }

    /** Whether there are so many of them. */
    boolean fits(final int learners) {
        try {
            return learners().size() == learners;
        } catch (final EveningProblem e) {
            return false;
        }
    }

    public ForWhom withNamed(final boolean now) {
        return new ForWhom(now, names, copies, ownNumbers);
    }

    public ForWhom withNames(final String now) {
        return new ForWhom(named, now, copies, ownNumbers);
    }

    public ForWhom withCopies(final int now) {
        return new ForWhom(named, names, now, ownNumbers);
    }

    public ForWhom withOwnNumbers(final boolean now) {
        return new ForWhom(named, names, copies, now);
    }
}
