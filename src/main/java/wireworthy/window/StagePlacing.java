package wireworthy.window;

import java.util.List;
import java.util.Optional;
import javafx.geometry.Rectangle2D;
import javafx.stage.Screen;
import javafx.stage.Stage;
import wireworthy.record.SettingsKeeper;
import wireworthy.record.WindowBounds;

/** Puts the window where it last stood and remembers where it is moved to. */
final class StagePlacing {
    private static final double LEAST_WIDTH = 640;
    private static final double LEAST_HEIGHT = 480;

    /** What a system takes for the strip with the title, about. */
    private static final double TITLE = 40;

    /** What the toolkit does to a window in passing is not remembered. */
    private static final long REST_MILLIS = 400;

    private StagePlacing() {}

    /** Call before the stage is shown. */
    static void restore(final Stage stage, final SettingsKeeper settings) {
        stage.setMinWidth(LEAST_WIDTH);
        stage.setMinHeight(LEAST_HEIGHT);
        final List<Rectangle2D> screens =
                Screen.getScreens().stream().map(Screen::getVisualBounds).toList();
        settings.now()
                .window()
                .map(it -> onScreen(it, screens))
                .or(() -> first(screens.get(0)))
                .ifPresent(it -> place(stage, it));
        remember(stage, settings);
    }

    /**
     * Where a window goes that never stood anywhere: it fills a screen too small for its own size,
     * lest its lower edge be out of sight; empty where that size fits.
     */
    static Optional<WindowBounds> first(final Rectangle2D screen) {
        final boolean fits =
                screen.getWidth() >= MainWindow.WIDTH
                        && screen.getHeight() >= MainWindow.HEIGHT + TITLE;
        return Optional.of(screen)
                .filter(any -> !fits)
                .map(
                        it ->
                                new WindowBounds(
                                        it.getMinX(), it.getMinY(), it.getWidth(), it.getHeight()));
    }

    /** The bounds moved and shrunk so that the whole window is on one of the screens. */
    static WindowBounds onScreen(final WindowBounds bounds, final List<Rectangle2D> screens) {
        final Rectangle2D screen =
                screens.stream()
                        .filter(it -> it.contains(bounds.x(), bounds.y()))
                        .findFirst()
                        .orElse(screens.get(0));
        final double width = clamp(bounds.width(), LEAST_WIDTH, screen.getWidth());
        final double height = clamp(bounds.height(), LEAST_HEIGHT, screen.getHeight());
        return new WindowBounds(
                clamp(bounds.x(), screen.getMinX(), screen.getMaxX() - width),
                clamp(bounds.y(), screen.getMinY(), screen.getMaxY() - height),
                width,
                height,
                bounds.maximised());
    }

    static void place(final Stage stage, final WindowBounds bounds) {
        if (!(bounds.maximised() && stage.isShowing())) {
            stage.setX(bounds.x());
            stage.setY(bounds.y());
            stage.setWidth(bounds.width());
            stage.setHeight(bounds.height());
        }
        stage.setMaximized(bounds.maximised());
    }

    private static void remember(final Stage stage, final SettingsKeeper settings) {
        final Pause rest = new Pause(REST_MILLIS, () -> keep(stage, settings));
        stage.setOnShown(
                shown -> {
                    HeldSize.hold(stage);
                    List.of(
                                    stage.xProperty(),
                                    stage.yProperty(),
                                    stage.widthProperty(),
                                    stage.heightProperty(),
                                    stage.maximizedProperty())
                            .forEach(it -> it.subscribe(any -> rest.begin()));
                });
        stage.setOnHiding(hiding -> keep(stage, settings));
    }

    /** A window that fills the screen, or is put away, comes back where it stood before. */
    private static void keep(final Stage stage, final SettingsKeeper settings) {
        if (stage.isShowing() && !stage.isFullScreen() && !stage.isIconified()) {
            settings.change(it -> it.withWindow(kept(it.window(), boundsOf(stage))));
        }
    }

    /** What is kept of a window: while it is maximised, the bounds from before. */
    static WindowBounds kept(final Optional<WindowBounds> before, final WindowBounds now) {
        return before.filter(any -> now.maximised()).orElse(now).maximised(now.maximised());
    }

    static WindowBounds boundsOf(final Stage stage) {
        return new WindowBounds(
                stage.getX(),
                stage.getY(),
                stage.getWidth(),
                stage.getHeight(),
                stage.isMaximized());
    }

    private static double clamp(final double value, final double least, final double most) {
        return Math.max(least, Math.min(most, value));
    }
}
