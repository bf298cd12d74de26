package wireworthy.window.check;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import javafx.scene.Node;
import javafx.scene.Parent;
import javafx.scene.control.Label;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyCodeCombination;
import javafx.scene.input.KeyCombination;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import wireworthy.vehicle.sheet.SheetRead;
import wireworthy.vehicle.sheet.SheetReader;
import wireworthy.window.Background;
import wireworthy.window.Bench;
import wireworthy.window.Place;
import wireworthy.window.Shell;
import wireworthy.window.parts.Buttons;
import wireworthy.window.parts.Pages;
import wireworthy.window.parts.SideList;
import wireworthy.window.parts.Styles;

/**
 * The builder's own vehicle: its circuits at the left, the form of the chosen one in the middle,
 * what comes out at the right.
 */
public final class CheckPlace implements Place, AutoCloseable {
    /** The name under which the settings keep this place. */
    public static final String ID = "check";

    public static final String TITLE = "Check my sums";

    private static final KeyCombination UNDO =
            new KeyCodeCombination(KeyCode.Z, KeyCombination.SHORTCUT_DOWN);
    private static final KeyCombination REDO =
            new KeyCodeCombination(
                    KeyCode.Z, KeyCombination.SHORTCUT_DOWN, KeyCombination.SHIFT_DOWN);

    private final Shelf shelf;
    private final Dialogs dialogs;
    private final BorderPane place = new BorderPane();
    private Optional<VehicleModel> model = Optional.empty();
    private Refreshing shown = () -> {};
    private Background background = Background.atOnce();
    private Saving saving = new Saving(background);

    /**
     * @param folder where vehicles are kept
     */
    public CheckPlace(final Path folder) {
        this(folder, Dialogs.ofSystem(folder));
    }

    CheckPlace(final Path folder, final Dialogs dialogs) {
        shelf = new Shelf(folder);
        this.dialogs = dialogs;
    }

    @Override
    public String id() {
        return ID;
    }

    @Override
    public String title() {
        return TITLE;
    }

    @Override
    public Parent build(final Shell shell) {
        background = shell.background();
        saving = new Saving(background);
        final VehicleModel open = new VehicleModel(shelf, background);
        model = Optional.of(open);
        place.setLeft(side(open));
        place.addEventFilter(KeyEvent.KEY_PRESSED, event -> key(event, open));
        open.chosen().subscribe(spot -> show(open, spot));
        open.vehicle().subscribe(any -> shown.refresh());
        open.checked().subscribe(any -> shown.refresh());
        open.openLast();
        return place;
    }

    /** What is open, for tests. */
    VehicleModel model() {
        return model.orElseThrow();
    }

    private VBox side(final VehicleModel open) {
        final SideList<Spot> list = new SpotList(open).list();
        final VBox side =
                new VBox(
                        new VehicleMenu(open, dialogs, () -> fromSheet(open)),
                        list,
                        Buttons.plain(CheckTexts.of("add-circuit"), open::addCircuit),
                        trouble(open),
                        kept(open));
        side.getStyleClass().addAll(Styles.SIDE, Styles.VEHICLE_SIDE);
        VBox.setVgrow(list, Priority.ALWAYS);
        return side;
    }

    private static Label kept(final VehicleModel open) {
        final Under kept = new Under();
        open.keeper().saying().subscribe(text -> kept.say(text, open.keeper().failing().get()));
        open.keeper()
                .failing()
                .subscribe(failing -> kept.say(open.keeper().saying().get(), failing));
        return kept;
    }

    private static Label trouble(final VehicleModel open) {
        final Under trouble = new Under();
        trouble.managedProperty().bind(trouble.textProperty().isNotEmpty());
        open.trouble().subscribe(text -> trouble.say(text, !text.isEmpty()));
        return trouble;
    }

    private static void key(final KeyEvent event, final VehicleModel open) {
        if (UNDO.match(event)) {
            open.undo();
            event.consume();
        } else if (REDO.match(event)) {
            open.redo();
            event.consume();
        }
    }

    private void show(final VehicleModel open, final Spot spot) {
        if (spot instanceof Spot.OfCircuit of) {
            bench(new CircuitForm(open, of.index()), new CircuitResults(open, of.index()));
        } else if (spot.equals(Spot.SUPPLY)) {
            bench(PartForm.supply(open), PartResults.supply(open));
        } else if (spot.equals(Spot.MAIN)) {
            bench(PartForm.main(open), PartResults.main(open));
        } else {
            final WholePage page =
                    new WholePage(open, new OnPaper(open, saving, dialogs), () -> fromSheet(open));
            shown = page;
            place.setCenter(Pages.scroll(CheckTexts.of("spot.whole"), page));
        }
    }

    /** Asks for a CSV file and shows what its columns are taken for. */
    private void fromSheet(final VehicleModel open) {
        dialogs.open(place.getScene().getWindow(), CheckTexts.of("kind.sheet"), "csv")
                .ifPresent(file -> readSheet(file, open));
    }

    /** Shows what the columns of a file are taken for. */
    void readSheet(final Path file, final VehicleModel open) {
        background.run(() -> SheetReader.read(file), it -> read(it, open));
    }

    private void read(final SheetRead read, final VehicleModel open) {
        if (read instanceof SheetRead.Whole whole) {
            final ImportModel sheet = new ImportModel(open, whole.sheet());
            shown = () -> {};
            place.setCenter(
                    Pages.scroll(
                            CheckTexts.of("sheet.title"), new ImportPage(sheet, () -> back(open))));
        } else if (read instanceof SheetRead.Refused refused) {
            open.refuse(refused.message() + ". " + refused.remedy() + ".");
        }
    }

    private void back(final VehicleModel open) {
        open.choose(Spot.WHOLE);
        show(open, Spot.WHOLE);
    }

    private void bench(final VBox form, final VBox results) {
        shown = () -> Refresh.all(List.<Node>of(form, results));
        place.setCenter(new Bench(form, CheckTexts.of("form"), results, CheckTexts.of("results")));
    }

    /** Writes what is not in the file yet. */
    @Override
    public void close() {
        model.ifPresent(VehicleModel::close);
    }
}
