package wireworthy.practice;

/** Knowledge tracing (Corbett and Anderson 1995) with the figures of a published worked example. */
final class Tracing {
    static final double START = 0.4;
    private static final double LEARNING = 0.1;
    private static final double SLIPPING = 0.3;
    private static final double GUESSING = 0.2;

    private Tracing() {}

    /** How likely the skill is known after an answer, from how likely it was before. */
    static double after(final double known, final boolean right) {
        final double ifKnown = known * (right ? 1 - SLIPPING : SLIPPING);
        final double ifNot = (1 - known) * (right ? GUESSING : 1 - GUESSING);
        final double seen = ifKnown / (ifKnown + ifNot);
        return seen + (1 - seen) * LEARNING;
    }
}
