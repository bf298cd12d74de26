package wireworthy.window;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import javafx.scene.Node;
import javafx.scene.Parent;
import javafx.scene.Scene;
import javafx.scene.layout.BorderPane;
import wireworthy.record.Settings;
import wireworthy.record.SettingsKeeper;
import wireworthy.window.parts.Styles;

/** The window's scene: the strip along the top, the place in use under it. */
public final class MainWindow implements Shell {
    /** Width and height before anybody sized the window. */
    static final double WIDTH = 1280;

    static final double HEIGHT = 860;
    private static final int STEP_PER_CENT = 10;

    private final List<Place> places;
    private final SettingsKeeper settings;
    private final Background background;
    private final Map<String, Parent> built = new HashMap<>();
    private final BorderPane desk = new BorderPane();
    private final Overlay overlay = new Overlay(desk);
    private final ViewMenu view = new ViewMenu(this);
    private final TerminalStrip strip;
    private final Scene scene;

    /**
     * A window that shows no place yet.
     *
     * @param places in the order of the strip, at least one
     */
    public MainWindow(
            final List<Place> places, final SettingsKeeper settings, final Background background) {
        this.places = List.copyOf(places);
        this.settings = settings;
        this.background = background;
        strip = new TerminalStrip(places, this::show, view);
        desk.getStyleClass().add(Styles.DESK);
        desk.setTop(strip);
        scene = new Scene(overlay, WIDTH, HEIGHT);
        Keys.install(scene, this);
        dress();
    }

    /**
     * Opens the place last used. Best when the window is on screen already: the place is then
     * styled and laid out once, for the first frame.
     */
    public MainWindow open() {
        strip.select(lastPlace());
        return this;
    }

    /** The scene to put on a stage. */
    public Scene scene() {
        return scene;
    }

    @Override
    public void go(final String placeId) {
        strip.select(
                places.stream()
                        .filter(it -> it.id().equals(placeId))
                        .findFirst()
                        .orElseThrow(() -> new IllegalArgumentException("No place " + placeId)));
    }

    @Override
    public void lay(final Node card) {
        overlay.lay(card);
    }

    @Override
    public void lift() {
        overlay.lift();
    }

    @Override
    public Background background() {
        return background;
    }

    /** Goes to the place with this number, from 1 in the order of the strip, if there is one. */
    void goToNumber(final int number) {
        if (number <= places.size() && !overlay.isLaid()) {
            strip.select(places.get(number - 1));
        }
    }

    void largerText() {
        settings.change(it -> it.withTextSize(it.textSize() + STEP_PER_CENT));
        dress();
    }

    void smallerText() {
        settings.change(it -> it.withTextSize(it.textSize() - STEP_PER_CENT));
        dress();
    }

    void usualText() {
        settings.change(it -> it.withTextSize(Settings.SMALLEST_TEXT));
        dress();
    }

    void otherTheme() {
        settings.change(it -> it.withDark(!it.dark()));
        dress();
    }

    void help() {
        overlay.lay(new HelpCard(places, this));
    }

    void quit() {
        scene.getWindow().hide();
    }

    private void show(final Place place) {
        desk.setCenter(built.computeIfAbsent(place.id(), id -> place.build(this)));
        if (!settings.now().place().equals(place.id())) {
            settings.change(it -> it.withPlace(place.id()));
        }
        place.shown();
    }

    private Place lastPlace() {
        final String id = settings.now().place();
        return places.stream().filter(it -> it.id().equals(id)).findFirst().orElse(places.get(0));
    }

    private void dress() {
        final Settings now = settings.now();
        Looks.dress(scene, Theme.of(now.dark()), now.textSize());
        view.say(now);
    }
}
