package wireworthy.window;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import javafx.scene.Node;
import javafx.scene.Parent;
import javafx.scene.Scene;
import javafx.scene.input.KeyCombination;
import javafx.scene.layout.BorderPane;
import javafx.stage.Stage;
import wireworthy.record.Settings;
import wireworthy.record.SettingsKeeper;
import wireworthy.texts.Language;
import wireworthy.window.parts.Styles;

/** The window's scene: the strip along the top, the place in use under it. */
public final class MainWindow implements Shell {
    /** Width and height before anybody sized the window. */
    static final double WIDTH = 1280;

    static final double HEIGHT = 860;

    private final List<Place> places;
    private final SettingsKeeper settings;
    private final Background background;
    private final Map<String, Parent> built = new HashMap<>();
    private final BorderPane desk = new BorderPane();
    private final Overlay overlay = new Overlay(desk);
    private final ViewMenu view;
    private final TerminalStrip strip;
    private final SumsPlace sums;
    private final List<Place> pages = new ArrayList<>();
    private final Scene scene;
    private Optional<Place> inView = Optional.empty();
    private Consumer<String> anew = place -> {};

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
        sums = new SumsPlace(settings, this::open);
        pages.add(sums);
        view = new ViewMenu(this, settings::now);
        strip = new TerminalStrip(places, this::show, view);
        desk.getStyleClass().add(Styles.DESK);
        desk.setTop(strip);
        // It is as high as the window: how low its parts could be need not be asked at every key.
        desk.setMinHeight(0);
        scene = new Scene(overlay, WIDTH, HEIGHT);
        Keys.install(scene, this);
        dress();
    }

    /** As {@link #open}; at the very first start the page of the sums comes before. */
    MainWindow start() {
        if (settings.now().chosen().isEmpty()) {
            changeSums();
            return this;
        }
        return open();
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
        named(pages, placeId)
                .ifPresentOrElse(
                        this::page,
                        () ->
                                strip.select(
                                        named(places, placeId)
                                                .orElseThrow(() -> unknown(placeId))));
    }

    private static IllegalArgumentException unknown(final String placeId) {
        return new IllegalArgumentException("No place " + placeId);
    }

    private static Optional<Place> named(final List<Place> some, final String id) {
        return some.stream().filter(it -> it.id().equals(id)).findFirst();
    }

    /** Adds pages to which no terminal belongs. */
    MainWindow with(final List<? extends Place> more) {
        pages.addAll(more);
        return this;
    }

    /** Goes to the page of this id, unless there is none or the place in use is hidden. */
    void goToPage(final String id) {
        if (!overlay.hides()) {
            named(pages, id).ifPresent(this::page);
        }
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
    public void cover(final Parent whole) {
        overlay.cover(whole);
    }

    @Override
    public void uncover() {
        overlay.uncover();
    }

    @Override
    public void fullScreen() {
        if (scene.getWindow() instanceof Stage stage) {
            // Esc is ours: it first gives the screen back, and only then leaves what is shown.
            stage.setFullScreenExitKeyCombination(KeyCombination.NO_MATCH);
            stage.setFullScreen(!stage.isFullScreen());
        }
    }

    /** Takes the window back from the whole screen; false where it does not fill it. */
    boolean leaveFullScreen() {
        final boolean full = scene.getWindow() instanceof Stage stage && stage.isFullScreen();
        if (full) {
            fullScreen();
        }
        return full;
    }

    @Override
    public Background background() {
        return background;
    }

    /** Goes to the place with this number, from 1 in the order of the strip, if there is one. */
    void goToNumber(final int number) {
        if (number <= places.size() && !overlay.hides()) {
            strip.select(places.get(number - 1));
        }
    }

    void largerText() {
        text(settings.now().largerText());
    }

    void smallerText() {
        text(settings.now().smallerText());
    }

    void usualText() {
        text(Settings.SMALLEST_TEXT);
    }

    /** Shows text at a size in per cent. */
    void text(final int perCent) {
        settings.change(it -> it.withTextSize(perCent));
        dress();
    }

    /**
     * Says how the window is made anew in another language.
     *
     * @param way is told the place or page in use
     */
    MainWindow speakBy(final Consumer<String> way) {
        anew = way;
        return this;
    }

    @Override
    public void speak(final Language language) {
        settings.change(it -> it.withLanguage(language.code()));
        Language.use(language);
        anew.accept(inView.map(Place::id).orElse(SumsPlace.ID));
    }

    void otherTheme() {
        settings.change(it -> it.withDark(!it.dark()));
        dress();
    }

    void help() {
        overlay.lay(new HelpCard(places, this));
    }

    void find() {
        if (!overlay.hides()) {
            inView.ifPresent(Place::find);
        }
    }

    void quit() {
        scene.getWindow().hide();
    }

    /** Shows the page of the sums in use. */
    void changeSums() {
        page(sums);
    }

    private void page(final Place page) {
        strip.release();
        leave();
        inView = Optional.of(page);
        desk.setCenter(page.build(this));
        page.shown();
    }

    private void show(final Place place) {
        leave();
        inView = Optional.of(place);
        desk.setCenter(built.computeIfAbsent(place.id(), id -> place.build(this)));
        settings.change(it -> it.withPlace(place.id()));
        place.shown();
    }

    private void leave() {
        inView.ifPresent(Place::left);
    }

    private Place lastPlace() {
        return named(places, settings.now().leftOff().place()).orElse(places.get(0));
    }

    private void dress() {
        final Settings now = settings.now();
        Looks.dress(scene, Theme.of(now.dark()), now.textSize());
        view.say(now);
    }
}
