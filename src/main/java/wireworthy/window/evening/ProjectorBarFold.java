package wireworthy.window.evening;

import java.util.List;
import java.util.Locale;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.Region;
import wireworthy.window.NextFrame;

/**
 * Keeps the leader's bar on one row, so that large text leaves the wall its room: first what is
 * seldom pressed goes into the menu, then the text of the bar gets smaller.
 */
final class ProjectorBarFold {
    /** The text of the bar, in that of the window; at least so much of it is left. */
    private static final double USUAL = 0.85;

    private static final double LEAST = 0.6;
    private static final double NEAR = 0.02;

    /** What the row has at its sides, and a little more, in text sizes. */
    private static final double SIDES = 3;

    private final Region bar;
    private final FlowPane row;
    private final ProjectorLook menu;
    private final List<Button> seldom;
    private final Label ruler = new Label();
    private boolean folded;
    private double scale = 1;

    /**
     * @param seldom what goes into the menu, with keys of its own
     */
    ProjectorBarFold(
            final ProjectorBar bar,
            final FlowPane row,
            final ProjectorLook menu,
            final List<Button> seldom) {
        this.bar = bar;
        this.row = row;
        this.menu = menu;
        this.seldom = List.copyOf(seldom);
        ruler.setVisible(false);
        ruler.setManaged(false);
        bar.getChildren().add(ruler);
        bar.widthProperty().subscribe(any -> later());
        ruler.fontProperty().subscribe(any -> later());
    }

    private void later() {
        NextFrame.then(bar, this::arrange);
    }

    private void arrange() {
        final double text = ruler.getFont().getSize();
        final double room = bar.getWidth() - SIDES * text;
        if (bar.getWidth() <= 0) {
            return;
        }
        final double whole = needed(false) / scale;
        fold(whole > room);
        final double left = needed(folded) / scale;
        final double wanted = Math.max(LEAST, Math.min(1, room / left));
        if (Math.abs(wanted - scale) > NEAR) {
            scale = wanted;
            bar.setStyle(String.format(Locale.ROOT, "-fx-font-size: %.3fem;", USUAL * scale));
        }
    }

    private void fold(final boolean now) {
        if (now != folded) {
            folded = now;
            menu.fold(now, seldom);
            for (final Button button : seldom) {
                button.setVisible(!now);
                button.setManaged(!now);
            }
        }
    }

    /** How wide the row would be. */
    private double needed(final boolean withoutSeldom) {
        double wide = 0;
        for (final Node each : row.getChildren()) {
            if (!withoutSeldom || !seldom.contains(each)) {
                wide += each.prefWidth(-1) + row.getHgap();
            }
        }
        return wide;
    }
}
