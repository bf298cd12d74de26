package wireworthy.window.check;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import javafx.scene.Node;
import javafx.scene.Parent;
import javafx.scene.Scene;
import javafx.scene.control.Button;
import javafx.scene.control.CheckMenuItem;
import javafx.scene.control.ScrollPane;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import wireworthy.window.Background;
import wireworthy.window.FxTest;
import wireworthy.window.parts.Styles;

/** What is shown in the middle as vehicles and spreadsheets are opened. */
@FxTest
class CheckDeskTest {
    @TempDir private Path folder;
    private VehicleModel model;
    private CheckDesk desk;

    @BeforeEach
    void begin() {
        model = Models.in(folder);
        desk = new CheckDesk(model, new Proposed(), Background.atOnce());
        assertThat(new Scene(desk).getRoot()).isEqualTo(desk);
    }

    @AfterEach
    void close() {
        model.close();
    }

    private void preview() throws IOException {
        final Path file = folder.resolve("sums.csv");
        Files.writeString(file, "Circuit;Power (W)\nPump;60\nLamp;5\n");
        desk.readSheet(file);
        assertThat(shows(ImportPage.class)).isTrue();
    }

    private boolean shows(final Class<?> page) {
        return everything().anyMatch(page::isInstance);
    }

    /** What scrolls has its content only once it is laid out. */
    private Stream<Node> everything() {
        desk.applyCss();
        desk.layout();
        return all(desk);
    }

    private static Stream<Node> all(final Parent part) {
        return part.getChildrenUnmodifiable().stream()
                .flatMap(
                        it ->
                                it instanceof Parent inner
                                        ? Stream.concat(Stream.of(it), all(inner))
                                        : Stream.of(it));
    }

    private void press(final String words) {
        everything()
                .filter(it -> it instanceof Button button && button.getText().equals(words))
                .findFirst()
                .ifPresent(it -> ((Button) it).fire());
    }

    @Test
    void aNewVehicleClosesThePreviewOfASpreadsheet() throws IOException {
        preview();
        model.begin();
        assertThat(shows(ImportPage.class)).isFalse();
        assertThat(shows(WholePage.class)).isTrue();
    }

    @Test
    void ofTwoPlacesForTheCircuitsOnlyTheLikelierIsTheMainOne() throws IOException {
        model.addCircuit();
        model.choose(Spot.Fixed.WHOLE);
        preview();
        final String isNew = CheckTexts.of("sheet.take-new");
        assertThat(mainButtons()).containsExactly(isNew);
        assertThat(button(isNew).isDefaultButton()).isTrue();
    }

    private List<String> mainButtons() {
        return everything()
                .filter(it -> it.getStyleClass().contains(Styles.MAIN))
                .map(it -> ((Button) it).getText())
                .toList();
    }

    private Button button(final String words) {
        return everything()
                .filter(it -> it instanceof Button button && button.getText().equals(words))
                .map(Button.class::cast)
                .findFirst()
                .orElseThrow();
    }

    @Test
    void circuitsGoWhereOneChose() throws IOException {
        model.addCircuit();
        model.choose(Spot.Fixed.WHOLE);
        preview();
        press(CheckTexts.of("sheet.take-here", "vehicle", "My vehicle"));
        assertThat(model.now().circuits()).hasSize(3);
        assertThat(shows(ImportPage.class)).isFalse();
        preview();
        press(CheckTexts.of("sheet.take-new"));
        assertThat(model.now().name()).isEqualTo("My vehicle 2");
        assertThat(model.now().circuits()).hasSize(2);
    }

    @Test
    void anotherVehicleIsShownFromItsTop() {
        model.openExample();
        desk.resize(900, 500);
        final ScrollPane whole = whole();
        whole.setVvalue(1);
        model.begin();
        assertThat(whole().getVvalue()).isZero();
        assertThat(whole().getViewportBounds().getHeight()).isPositive();
    }

    private ScrollPane whole() {
        return everything()
                .filter(
                        it ->
                                it instanceof ScrollPane scroll
                                        && scroll.getContent() instanceof WholePage)
                .map(ScrollPane.class::cast)
                .findFirst()
                .orElseThrow();
    }

    @Test
    void theVehicleThatIsOpenIsMarkedAndTheOthersKeepTheirPlaces() {
        named("Van");
        named("Boat");
        assertThat(recent()).containsExactly("boat.json *", "van.json");
        model.open(folder.resolve("vehicles/van.json"));
        assertThat(recent()).containsExactly("boat.json", "van.json *");
        model.openExample();
        assertThat(recent()).containsExactly("boat.json", "van.json");
    }

    private void named(final String name) {
        model.begin();
        EntryList.vehicleName(model).type(name);
        model.settled();
        model.keeper().close();
    }

    private List<String> recent() {
        final VehicleMenu menu = new VehicleMenu(model, new Proposed(), () -> {});
        return menu.getItems().stream()
                .filter(CheckMenuItem.class::isInstance)
                .map(CheckMenuItem.class::cast)
                .map(it -> it.getText() + (it.isSelected() ? " *" : ""))
                .toList();
    }

    /** Where the pages of one vehicle lie says nothing of the next one. */
    @Test
    void withAnotherVehicleNothingIsSaidOfTheFileBefore() {
        model.addCircuit();
        model.choose(Spot.Fixed.WHOLE);
        press(CheckTexts.of("sheet.save"));
        assertThat(said()).contains("my-vehicle.csv");
        model.begin();
        model.addCircuit();
        model.choose(Spot.Fixed.WHOLE);
        assertThat(said()).doesNotContain("my-vehicle.csv");
    }

    private String said() {
        return everything()
                .filter(Under.class::isInstance)
                .map(it -> ((Under) it).getText())
                .collect(Collectors.joining(" "));
    }

    /** A schedule may take seconds: checks of what is typed must not wait for it. */
    @Test
    void whatIsTakenAlongIsMadeApart() {
        final List<Path> made = new ArrayList<>();
        final Background apart =
                new Background() {
                    @Override
                    public <T> void run(final Supplier<T> work, final Consumer<T> then) {
                        made.add(folder);
                    }
                };
        final Background both =
                new Background() {
                    @Override
                    public <T> void run(final Supplier<T> work, final Consumer<T> then) {
                        then.accept(work.get());
                    }

                    @Override
                    public Background apart() {
                        return apart;
                    }
                };
        model.openExample();
        desk = new CheckDesk(model, new Proposed(), both);
        assertThat(new Scene(desk).getRoot()).isEqualTo(desk);
        press(CheckTexts.of("paper.save"));
        assertThat(made).hasSize(1);
    }
}
