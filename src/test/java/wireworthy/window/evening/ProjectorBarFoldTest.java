package wireworthy.window.evening;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.stream.Collectors;
import javafx.scene.Node;
import javafx.scene.Scene;
import javafx.scene.control.Labeled;
import javafx.scene.control.MenuButton;
import javafx.scene.control.MenuItem;
import javafx.scene.layout.FlowPane;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import wireworthy.evening.Pick;
import wireworthy.evening.Sheet;
import wireworthy.evening.SheetPlan;
import wireworthy.evening.Shelf;
import wireworthy.window.Background;
import wireworthy.window.FxTest;
import wireworthy.window.Screens;

/** The bar under the wall keeps to one row; what it has no room for is in its menu. */
@FxTest
class ProjectorBarFoldTest {
    private static final Shelf SHELF = Shelf.builtIn();
    private static final int ALWAYS = 3;

    private final AtomicBoolean left = new AtomicBoolean();

    private Scene wall(final Screens.Setting setting) {
        final Pick pick =
                new Pick.ByTemplates(
                        List.of("current/step-strip-current", "voltage-drop/aisle-strips-drop"));
        final Sheet sheet = Sheet.of(new SheetPlan(pick, false, 12, false, 3), SHELF);
        final ProjectorModel model = new ProjectorModel(sheet, false, Background.atOnce());
        model.show(1);
        return Screens.scene(
                new ProjectorView(model, new NoShell(), () -> left.set(true)), setting);
    }

    private static FlowPane row(final Scene scene) {
        return (FlowPane) scene.getRoot().lookup(".projector-row");
    }

    private static List<Node> inRow(final Scene scene) {
        return row(scene).getChildren().stream().filter(Node::isVisible).toList();
    }

    private static MenuButton menu(final Scene scene) {
        return (MenuButton) row(scene).lookup(".menu-button");
    }

    private static List<String> menuTexts(final Scene scene) {
        return menu(scene).getItems().stream().map(MenuItem::getText).toList();
    }

    private static List<String> texts(final List<Node> nodes) {
        final List<String> texts = new ArrayList<>();
        for (final Node each : nodes) {
            if (each instanceof Labeled labeled) {
                texts.add(labeled.getText());
            }
        }
        return texts;
    }

    @ParameterizedTest
    @EnumSource(Screens.Setting.class)
    void whateverTheSizeOfTheTextThereIsOneRow(final Screens.Setting setting) {
        final Scene scene = wall(setting);
        assertThat(
                        inRow(scene).stream()
                                .map(each -> Math.round(each.getBoundsInParent().getCenterY() / 4))
                                .collect(Collectors.toSet()))
                .hasSize(1);
    }

    @Test
    void whereThereIsRoomAllOfItIsInTheRow() {
        assertThat(menu(wall(Screens.Setting.LIGHT)).getItems()).hasSize(ALWAYS);
    }

    @Test
    void whatHasNoRoomIsInTheMenuAndDoesThereWhatItDid() {
        final List<String> all = texts(row(wall(Screens.Setting.LIGHT)).getChildren());
        final Scene large = wall(Screens.Setting.LARGEST);
        final List<String> shown = texts(inRow(large));
        assertThat(menu(large).getItems()).hasSizeGreaterThan(ALWAYS);
        assertThat(menuTexts(large)).containsAll(gone(all, shown));
        menu(large).getItems().get(menu(large).getItems().size() - 1).fire();
        assertThat(left).isTrue();
    }

    private static List<String> gone(final List<String> all, final List<String> shown) {
        return all.stream()
                .filter(each -> !shown.contains(each) && !each.equals(ProjectorTexts.of("look")))
                .toList();
    }

    /** In the menu, too, nothing can be taken back before there is something. */
    @Test
    void whatCannotBePressedInTheRowCannotBePressedInTheMenu() {
        final MenuButton menu = menu(wall(Screens.Setting.LARGEST));
        assertThat(menu.getItems())
                .filteredOn(item -> item.getText().equals(ProjectorTexts.of("undo")))
                .singleElement()
                .satisfies(item -> assertThat(item.isDisable()).isTrue());
    }

    @Test
    void withTextMadeSmallerItComesBackIntoTheRow() {
        final Scene scene = wall(Screens.Setting.LARGEST);
        scene.getRoot().setStyle("-fx-font-size: 10px;");
        Screens.settle(scene);
        Screens.settle(scene);
        assertThat(menu(scene).getItems()).hasSize(ALWAYS);
        assertThat(row(scene).getChildren()).allMatch(Node::isVisible);
    }
}
