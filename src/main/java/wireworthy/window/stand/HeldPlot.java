package wireworthy.window.stand;

import java.util.List;
import javafx.scene.AccessibleRole;
import javafx.scene.control.Label;
import javafx.scene.layout.Region;
import javafx.scene.shape.Circle;
import javafx.scene.shape.Line;
import javafx.scene.shape.Polyline;
import wireworthy.rules.Skill;
import wireworthy.window.parts.Styles;

/** How many skills held from the first day of answers to today, as a line in steps. */
public final class HeldPlot extends Region {
    private static final double HIGH = 11;
    private static final double LEFT = 2.2;
    private static final double TOP = 1.6;
    private static final double FOOT = 1.8;
    private static final double RADIUS = 0.35;
    private static final List<Integer> LEVELS = List.of(0, 10, 20, Skill.values().length);

    private final Stand stand;
    private final List<Line> grid = LEVELS.stream().map(level -> line(level)).toList();
    private final List<Label> levels = LEVELS.stream().map(level -> small("" + level)).toList();
    private final Polyline steps = new Polyline();
    private final Circle now = new Circle();
    private final Label first = small("");
    private final Label today;

    public HeldPlot(final Stand stand) {
        this.stand = stand;
        today = small(StandTexts.of("plot.today", "count", stand.holding()));
        today.getStyleClass().add(Styles.STRONG);
        steps.getStyleClass().add(Styles.MARK);
        now.getStyleClass().add(Styles.RING);
        stand.held().stream().findFirst().ifPresent(it -> first.setText(StandTexts.day(it.day())));
        getStyleClass().add(Styles.PLOT);
        setAccessibleRole(AccessibleRole.IMAGE_VIEW);
        setAccessibleText(StandTexts.held(stand));
        getChildren().addAll(grid);
        getChildren().addAll(levels);
        getChildren().addAll(steps, now, first, today);
    }

    private static Line line(final int level) {
        final Line line = new Line();
        line.getStyleClass().add(level == 0 ? Styles.AXIS : Styles.GRID_LINE);
        return line;
    }

    private static Label small(final String text) {
        final Label label = new Label(text);
        label.getStyleClass().addAll(Styles.SMALL, Styles.SOFT);
        return label;
    }

    private double em() {
        return today.getFont().getSize();
    }

    @Override
    protected double computePrefHeight(final double width) {
        return HIGH * em();
    }

    @Override
    protected double computeMinHeight(final double width) {
        return HIGH * em();
    }

    @Override
    protected void layoutChildren() {
        for (int i = 0; i < LEVELS.size(); i++) {
            final double y = y(LEVELS.get(i));
            grid.get(i).setStartX(LEFT * em());
            grid.get(i).setEndX(getWidth());
            grid.get(i).setStartY(y);
            grid.get(i).setEndY(y);
            put(levels.get(i), 0, y - levels.get(i).prefHeight(-1) / 2);
        }
        layoutSteps();
        now.setRadius(RADIUS * em());
        now.setCenterX(x(stand.today()));
        now.setCenterY(y((double) stand.holding()));
        put(first, LEFT * em(), getHeight() - FOOT * em());
        put(today, getWidth() - today.prefWidth(-1), getHeight() - FOOT * em());
    }

    private static void put(final Label label, final double x, final double y) {
        label.resizeRelocate(x, y, label.prefWidth(-1), label.prefHeight(-1));
    }

    /** As many points as there are days and changes; a long record still draws at once. */
    private void layoutSteps() {
        final Double[] points =
                new Double[4 * stand.held().size() + (stand.held().isEmpty() ? 0 : 4)];
        int at = 0;
        double y = y(0);
        for (final Held each : stand.held()) {
            at = step(points, at, x(each.day()), y, y(each.skills()));
            y = y(each.skills());
        }
        if (at > 0) {
            step(points, at, x(stand.today()), y, y((double) stand.holding()));
        }
        steps.getPoints().setAll(points);
    }

    private static int step(
            final Double[] points, final int at, final double x, final double from, double to) {
        points[at] = x;
        points[at + 1] = from;
        points[at + 2] = x;
        points[at + 3] = to;
        return at + 4;
    }

    private double x(final long day) {
        final long from = stand.held().isEmpty() ? stand.today() : stand.held().get(0).day();
        final long span = Math.max(1, stand.today() - from);
        final double share = Math.max(0, Math.min(1, (day - from) / (double) span));
        final double left = LEFT * em();
        return left + (stand.today() > from ? share : 1) * (getWidth() - left - RADIUS * 2 * em());
    }

    private double y(final double skills) {
        final double room = (HIGH - TOP - FOOT - 0.6) * em();
        return TOP * em() + room * (1 - skills / Skill.values().length);
    }
}
