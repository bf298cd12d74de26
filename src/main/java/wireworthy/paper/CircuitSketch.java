package wireworthy.paper;

/** One circuit with the symbols of IEC 60617. */
final class CircuitSketch {
    private static final double LEFT = 17;
    private static final double RIGHT = 65;
    private static final double TOP = 9;
    private static final double BOTTOM = 26;
    private static final double MIDDLE = (TOP + BOTTOM) / 2;
    private static final double RADIUS = 4;
    private static final double FAR_APART = 14;
    private static final double NEAR = 9.5;

    private final Pen pen;

    CircuitSketch(final Pen pen) {
        this.pen = pen;
    }

    /** Where one of so many loads side by side hangs, the last at the far end, mm. */
    static double branch(final int place, final int branches) {
        return RIGHT - (branches - 1 - place) * (branches > 2 ? NEAR : FAR_APART);
    }

    /** Supply, fuse, cable out and back, and what it feeds. */
    void circuit(final CircuitOnPaper.Load load, final int branches) {
        supply();
        pen.line(Pen.THICK, LEFT, TOP, 23, TOP);
        pen.fuse(23, TOP);
        pen.line(Pen.THICK, 31, TOP, RIGHT, TOP);
        pen.line(Pen.THICK, LEFT, BOTTOM, RIGHT, BOTTOM);
        if (load == CircuitOnPaper.Load.SEVERAL) {
            for (int i = 0; i < branches; i++) {
                heater(branch(i, branches));
            }
        } else {
            single(load);
        }
    }

    private void single(final CircuitOnPaper.Load load) {
        switch (load) {
            case MOTOR -> round(RIGHT);
            case HEATER, BATTERY -> heater(RIGHT);
            case CONVERTER -> converter();
            case LAMP, SEVERAL -> lamp(RIGHT);
        }
    }

    private void supply() {
        pen.line(Pen.THIN, LEFT, TOP, LEFT, MIDDLE - 3);
        pen.battery(LEFT, MIDDLE);
        pen.line(Pen.THIN, LEFT, MIDDLE + 3, LEFT, BOTTOM);
    }

    private void leads(final double x) {
        pen.line(Pen.THIN, x, TOP, x, MIDDLE - RADIUS);
        pen.line(Pen.THIN, x, MIDDLE + RADIUS, x, BOTTOM);
    }

    private void round(final double x) {
        leads(x);
        pen.round(x, MIDDLE, RADIUS);
    }

    private void lamp(final double x) {
        round(x);
        final double reach = RADIUS * Math.sqrt(0.5);
        pen.line(Pen.THIN, x - reach, MIDDLE - reach, x + reach, MIDDLE + reach);
        pen.line(Pen.THIN, x - reach, MIDDLE + reach, x + reach, MIDDLE - reach);
    }

    private void heater(final double x) {
        leads(x);
        pen.box(x - 1.8, MIDDLE - RADIUS, 3.6, 2 * RADIUS);
    }

    private void converter() {
        leads(RIGHT);
        pen.box(RIGHT - RADIUS, MIDDLE - RADIUS, 2 * RADIUS, 2 * RADIUS);
        pen.line(Pen.THIN, RIGHT - RADIUS, MIDDLE + RADIUS, RIGHT + RADIUS, MIDDLE - RADIUS);
    }
}
