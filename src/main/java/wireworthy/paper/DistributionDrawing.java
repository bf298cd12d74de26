package wireworthy.paper;

/** The lines of a distribution: one stands for both conductors. */
final class DistributionDrawing {
    private static final double TRUNK = 5;
    private static final double LINE = 5;
    private static final double HIGH = 8;
    private static final double FEED = 26;
    private static final double END = 123;
    private static final double CROSS = 1.7;

    private final Pen pen;

    DistributionDrawing(final Pen pen) {
        this.pen = pen;
    }

    /** Battery, main fuse and main cable, from top to bottom. */
    void feed() {
        pen.batteryFeedingDown(TRUNK, 4);
        pen.line(Pen.THIN, TRUNK, 7, TRUNK, 19);
        pen.box(TRUNK - 1.6, 10, 3.2, 8);
        pen.line(Pen.THICK, TRUNK, 18, TRUNK, FEED);
    }

    /**
     * One branch.
     *
     * @param through for each level, 1 where its line goes on below this branch
     */
    void branch(final int depth, final boolean fused, final String through) {
        for (int level = 0; level < through.length(); level++) {
            final boolean on = through.charAt(level) == '1';
            if (on || level == depth) {
                final double x = TRUNK + level * DistributionOnPaper.STEP;
                pen.line(Pen.THICK, x, level > depth ? LINE : 0, x, on ? HIGH : LINE);
            }
        }
        final double from = TRUNK + depth * DistributionOnPaper.STEP;
        if (fused) {
            pen.line(Pen.THICK, from, LINE, from + 4, LINE);
            pen.fuse(from + 4, LINE);
        } else {
            pen.line(Pen.THICK, from, LINE, from + 12, LINE);
        }
        pen.line(Pen.THICK, from + 12, LINE, END, LINE);
    }

    /** A cross where the fuse of a branch is missing. */
    void missing(final int depth) {
        final double x = TRUNK + depth * DistributionOnPaper.STEP + 8;
        pen.line(Pen.THICK, x - CROSS, LINE - CROSS, x + CROSS, LINE + CROSS);
        pen.line(Pen.THICK, x - CROSS, LINE + CROSS, x + CROSS, LINE - CROSS);
    }
}
