package wireworthy.window;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import java.util.function.Predicate;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Labeled;
import javafx.scene.control.TextInputControl;
import javafx.scene.control.ToggleButton;
import javafx.scene.input.KeyCode;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.testfx.util.WaitForAsyncUtils;
import wireworthy.record.SumsInUse;
import wireworthy.vehicle.Circuit;
import wireworthy.vehicle.Vehicle;
import wireworthy.vehicle.VehicleFile;
import wireworthy.vehicle.VehicleRead;
import wireworthy.window.check.CheckPlace;

/** A builder checks a circuit of their own, by keyboard alone. */
class CheckPlaceTest extends WindowTest {
    private static final int MOST_TABS = 80;

    private CheckPlace place;

    @Override
    protected List<Place> places() {
        place = new CheckPlace(folder.resolve("vehicles"), () -> SumsInUse.USUAL);
        return List.of(place);
    }

    @AfterEach
    void forget() throws IOException {
        place.close();
        Files.delete(folder.resolve("vehicles/my-vehicle.json"));
    }

    @Test
    void aCircuitIsTypedCheckedCorrectedAndKept() {
        press("Begin with the supply");
        type("Voltage of the supply", "12 V");
        press("Add a circuit");
        retype("Bunk lamps");
        type("What it is", "lamp");
        type("Power of one, lamp", "24 W");
        type("Length, one way", "5 m");
        type("Section", "2.5 mm2");
        assertThat(reads("sound")).isTrue();

        type("your own figure for the drop", "0.0688 V");
        assertThat(texts()).anyMatch(text -> text.contains("counted one way"));

        back("Section");
        retype("0.5 mm2");
        assertThat(reads("loses more than the limit")).isTrue();
        assertThat(texts()).anyMatch(text -> text.startsWith("Take a larger section"));
        push(KeyCode.SHORTCUT, KeyCode.Z);
        assertThat(reads("a figure to look at")).as("the own drop is still one way").isTrue();

        place.close();
        final Circuit kept = kept("my-vehicle.json").circuits().get(0);
        assertThat(kept.name()).isEqualTo("Bunk lamps");
        assertThat(kept.part().given().typed()).containsValues("5 m", "2.5 mm2");
        assertThat(kept.part().answers().typed()).containsValue("0.0688 V");
    }

    @Test
    void whatOnlySomeNeedOpensByKeyAndIsTakenAlong() {
        press("Add a circuit");
        tabTo(node -> node instanceof ToggleButton line && is(line, "More about this cable"));
        push(KeyCode.SPACE);
        type("Conductors lying together", "4");
        press("Remove this circuit");
        assertThat(focused().getAccessibleText()).isEqualTo("Parts of the vehicle");
        push(KeyCode.SHORTCUT, KeyCode.Z);
        place.close();
        final List<Circuit> circuits = kept("my-vehicle.json").circuits();
        assertThat(circuits).hasSize(1);
        assertThat(circuits.get(0).part().given().typed()).containsValue("4");
    }

    @Test
    void undoneAndRedoneFromAnywhereTheFieldHasTheKeyboardAndIsSeen() {
        press("Add a circuit");
        type("Length, one way", "5 m");
        type("Section", "2.5 mm2");
        press("Remove this circuit");
        push(KeyCode.SHORTCUT, KeyCode.Z);
        assertThat(texts()).contains("Undone: \"Circuit 1\" back again.");
        interact(() -> lookup((Node it) -> it instanceof ViewMenu).query().requestFocus());
        push(KeyCode.SHORTCUT, KeyCode.Z);
        assertThat(texts()).contains("Undone in \"Circuit 1\": Section.");
        assertThat(focused()).matches(node -> isField(node, "Section"));
        WaitForAsyncUtils.waitForFxEvents();
        assertThat(heightOfFocus()).isBetween(0.0, window.scene().getHeight() - 20);
        push(KeyCode.SHORTCUT, KeyCode.Z);
        assertThat(focused()).matches(node -> isField(node, "Length, one way"));
        push(KeyCode.SHORTCUT, KeyCode.Y);
        push(KeyCode.SHORTCUT, KeyCode.SHIFT, KeyCode.Z);
        assertThat(texts()).contains("Redone in \"Circuit 1\": Section.");
        assertThat(((TextInputControl) focused()).getText()).isEqualTo("2.5 mm2");
    }

    @Test
    void theCardOfKeysNamesUndoAndRedo() {
        press("Add a circuit");
        push(KeyCode.F1);
        assertThat(texts()).contains("Ctrl+Z", "Ctrl+Y", "Redo it");
        push(KeyCode.SHORTCUT, KeyCode.Z);
        push(KeyCode.ESCAPE);
        assertThat(reads("Circuit 1")).as("nothing is undone under a card").isTrue();
    }

    private double heightOfFocus() {
        return focused().localToScene(focused().getLayoutBounds()).getMinY();
    }

    @Test
    void aCautionOfVoltsMeasuredDoesNotMoveAwayWhatIsTyped() {
        press("Begin with the supply");
        type("Voltage of the supply", "12 V");
        press("Add a circuit");
        type("Power of one", "24 W");
        type("Length, one way", "5 m");
        type("Section", "2.5 mm2");
        tabTo(
                node ->
                        node instanceof ToggleButton line
                                && is(line, "When it is built: volts measured"));
        push(KeyCode.SPACE);
        tabTo(node -> isField(node, "Measured at the load"));
        final double before = heightOfFocus();
        write("9");
        assertThat(reads("less arrives than worked")).isTrue();
        assertThat(heightOfFocus()).isCloseTo(before, within(2.0));
        write(".9");
        assertThat(texts()).anyMatch(text -> text.contains("2 V less arrive"));
        assertThat(heightOfFocus()).isCloseTo(before, within(2.0));
    }

    @Test
    void whenOneRestsNoGapIsLeftThoughTheKeyboardStaysInTheField() throws TimeoutException {
        press("Begin with the supply");
        type("Voltage of the supply", "12 V");
        press("Add a circuit");
        type("Power of one", "60 W");
        type("Length, one way", "5 m");
        type("Section", "0.5 mm2");
        final double many = heightOfSums();
        retype("6 mm2");
        assertThat(heightOfSums()).as("nothing jumps while one types").isGreaterThanOrEqualTo(many);
        WaitForAsyncUtils.waitFor(10, TimeUnit.SECONDS, () -> heightOfSums() < many - 50);
        assertThat(focused()).matches(node -> isField(node, "Section"));
    }

    private double heightOfSums() {
        return lookup((Node it) -> it instanceof Labeled label && is(label, "The sums"))
                .query()
                .getLayoutY();
    }

    private Vehicle kept(final String file) {
        final Path path = folder.resolve("vehicles").resolve(file);
        return ((VehicleRead.Whole) VehicleFile.read(path)).vehicle();
    }

    private List<String> texts() {
        return lookup((Node it) -> it instanceof Labeled && it.getScene() != null)
                .<Labeled>queryAll()
                .stream()
                .map(it -> it.getText().replace('\u00a0', ' ').replace("·  ", ""))
                .toList();
    }

    private void press(final String button) {
        tabTo(node -> node instanceof Button it && is(it, button));
        push(KeyCode.SPACE);
    }

    private void type(final String field, final String text) {
        tabTo(node -> isField(node, field));
        write(text);
    }

    private void back(final String field) {
        for (int i = 0; i < MOST_TABS && !isField(focused(), field); i++) {
            push(KeyCode.SHIFT, KeyCode.TAB);
        }
        assertThat(focused()).matches(node -> isField(node, field), field);
    }

    /** Types over what stands in the field that has the keyboard. */
    private void retype(final String text) {
        push(KeyCode.SHORTCUT, KeyCode.A);
        write(text);
    }

    private static boolean isField(final Node node, final String name) {
        return node instanceof TextInputControl && name.equals(node.getAccessibleText());
    }

    private static boolean is(final Labeled labeled, final String text) {
        return text.equals(labeled.getText());
    }

    private void tabTo(final Predicate<Node> wanted) {
        for (int i = 0; i < MOST_TABS && !wanted.test(focused()); i++) {
            push(KeyCode.TAB);
        }
        assertThat(wanted.test(focused())).as("reached by Tab, at %s", focused()).isTrue();
    }

    private Node focused() {
        return window.scene().getFocusOwner();
    }
}
