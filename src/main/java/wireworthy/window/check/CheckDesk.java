package wireworthy.window.check;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import javafx.scene.Node;
import javafx.scene.Scene;
import javafx.scene.control.ScrollPane;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;
import wireworthy.vehicle.sheet.SheetRead;
import wireworthy.vehicle.sheet.SheetReader;
import wireworthy.window.Background;
import wireworthy.window.Bench;
import wireworthy.window.IntoView;
import wireworthy.window.parts.Pages;
import wireworthy.window.parts.SideAndPage;

/**
 * The builder's own vehicle: its parts at the left, the form of the chosen one in the middle, what
 * comes out at the right.
 */
final class CheckDesk extends StackPane {
    private final VehicleModel model;
    private final Dialogs dialogs;
    private final Background background;
    private final Saving saving;
    private final VehicleSide side;
    private final SideAndPage page;
    private final Resting resting = new Resting(this);
    private Optional<CircuitForm> form = Optional.empty();
    private Refreshing typed = () -> {};
    private Refreshing shown = () -> {};
    private Runnable changed = () -> {};

    CheckDesk(final VehicleModel model, final Dialogs dialogs, final Background background) {
        this.model = model;
        this.dialogs = dialogs;
        this.background = background;
        saving = new Saving(background.apart());
        side = new VehicleSide(model, new VehicleMenu(model, dialogs, this::fromSheet), this::add);
        page = new SideAndPage(side, CheckTexts.of("parts"));
        getChildren().setAll(page);
        UndoKeys.work(this, () -> goTo(model.undo()), () -> goTo(model.redo()));
        model.chosen().subscribe(this::show);
        model.vehicle().subscribe(any -> changed.run());
        model.opened().subscribe(any -> changed.run());
        model.opened().subscribe(any -> saving.forget());
        model.opened().subscribe(any -> toTop());
        model.vehicle().subscribe(any -> typed.refresh());
        // Without comparing all that was worked: its parts say nothing anew that stayed the same.
        model.checking().done().subscribe(() -> shown.refresh());
        model.checking().done().subscribe(resting::begin);
    }

    /** What is open. */
    VehicleModel model() {
        return model;
    }

    /** Puts the keyboard into the field of an entry, where it is shown, and brings it into view. */
    private void goTo(final Optional<String> entry) {
        applyCss();
        layout();
        entry.flatMap(path -> Fields.find(this, path))
                .ifPresent(
                        field -> {
                            field.requestFocus();
                            IntoView.bring(field);
                        });
    }

    /** Adds a circuit, and goes into its first field. */
    private void add() {
        model.addCircuit();
        // Only what is laid out can take the keyboard.
        applyCss();
        layout();
        form.ifPresent(CircuitForm::focus);
    }

    private void show(final Spot spot) {
        form = Optional.empty();
        changed = () -> {};
        if (spot instanceof Spot.OfCircuit of) {
            final CircuitForm circuit = new CircuitForm(model, of.index());
            form = Optional.of(circuit);
            final CircuitResults results = new CircuitResults(model, of.index());
            put(circuit, results, results.standing());
        } else if (spot.equals(Spot.Fixed.SUPPLY)) {
            put(PartForm.supply(model), PartResults.supply(model));
        } else if (spot.equals(Spot.Fixed.MAIN)) {
            put(PartForm.main(model), PartResults.main(model));
        } else {
            final OnPaper paper = new OnPaper(model, saving, dialogs);
            final WholePage whole = new WholePage(model, paper, this::add, this::fromSheet);
            typed = whole;
            shown = whole;
            put(Pages.scroll(CheckTexts.of("spot.whole"), whole));
        }
    }

    private void put(final PartForm left, final PartResults right) {
        put(left, right, right.standing());
    }

    private void put(final VBox left, final VBox right, final Standing standing) {
        typed = () -> Refresh.all(List.of(left));
        shown = () -> Refresh.all(List.of(left, right));
        final Bench bench = new Bench(left, CheckTexts.of("form"), right, CheckTexts.of("results"));
        bench.first(standing);
        put(bench);
    }

    private void put(final Node center) {
        page.show(center);
        keepKeyboard();
    }

    /** Of another vehicle the name is seen first. */
    private void toTop() {
        if (page.page() instanceof ScrollPane whole) {
            whole.setVvalue(whole.getVmin());
        }
    }

    /** Where what had the keyboard is gone, the list has it. */
    private void keepKeyboard() {
        final Scene scene = getScene();
        if (scene != null) {
            final Node focused = scene.getFocusOwner();
            if (focused == null || !scene.equals(focused.getScene())) {
                side.focus();
            }
        }
    }

    /** Asks for a CSV file and shows what its columns are taken for. */
    private void fromSheet() {
        dialogs.open(getScene().getWindow(), CheckTexts.of("kind.sheet"), "csv")
                .ifPresent(this::readSheet);
    }

    /** Shows what the columns of a file are taken for. */
    void readSheet(final Path file) {
        background.run(() -> SheetReader.read(file), this::show);
    }

    private void show(final SheetRead read) {
        if (read instanceof SheetRead.Whole whole) {
            final ImportPage sheet =
                    new ImportPage(new ImportModel(model, whole.sheet()), this::back);
            typed = () -> {};
            shown = () -> {};
            changed = this::back;
            put(sheet);
        } else if (read instanceof SheetRead.Refused refused) {
            model.refuse(refused.message() + ". " + refused.remedy() + ".");
        }
    }

    private void back() {
        show(model.chosen().get());
    }
}
