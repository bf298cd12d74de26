package wireworthy.window;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import javafx.scene.Group;
import javafx.scene.Node;
import javafx.scene.Parent;
import javafx.scene.Scene;
import javafx.scene.control.Labeled;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.ToggleButton;
import javafx.scene.input.KeyCode;
import javafx.stage.Stage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.CleanupMode;
import org.junit.jupiter.api.io.TempDir;
import wireworthy.practice.Prerequisites;
import wireworthy.record.DataFolder;
import wireworthy.record.SettingsFile;
import wireworthy.record.SettingsKeeper;
import wireworthy.record.SumsInUse;
import wireworthy.rules.Skill;

/** Where I stand, as a person uses it who has practised for some weeks. */
class StandPlaceTest extends WindowTest {
    private static final int MOST_KEYS = 40;

    // Settings are written a little later, on a thread of their own.
    @TempDir(cleanup = CleanupMode.NEVER)
    private Path home;

    private DataFolder data = new DataFolder(Path.of(""));

    @Override
    protected List<Place> places() {
        return List.of();
    }

    @Override
    public void start(final Stage onStage) {
        data = new DataFolder(home);
        Weeks.practised(data.answers());
        settings = new SettingsKeeper(new SettingsFile(data.settings()));
        settings.change(it -> it.withSums(SumsInUse.USUAL).withPlace(PracticePlace.ID));
        window = window(data, settings);
        stage = onStage;
        stage.setScene(window.scene());
        stage.show();
        window.start();
    }

    private static MainWindow window(final DataFolder data, final SettingsKeeper settings) {
        final Places places = new Places(data, settings, Evenings.CLOCK, Ahead.begin(data));
        final MainWindow window =
                new MainWindow(places.all(), settings, Background.atOnce()).with(places.pages());
        places.goBy(window::go);
        return window;
    }

    @Test
    void itIsReachedByAKeyAndFromASkillOneGoesStraightIntoPractice() {
        push(KeyCode.F2);
        assertThat(reads(wireworthy.window.stand.StandTexts.of("title"))).isTrue();
        assertThat(focused()).startsWith("units and prefixes: due again");

        final Skill wanted = Skill.FUSE_FLOOR;
        goTo(wanted.words());
        push(KeyCode.SPACE);
        tabTo("Practise now: " + wanted.words());
        push(KeyCode.SPACE);

        assertThat(shown()).contains("You chose it: " + wanted.words());
        assertThat(settings.now().leftOff().problem()).isNotEmpty();
    }

    @Test
    void fromASkillOneGoesToItsLesson() {
        clickOn(wireworthy.window.stand.StandTexts.of("title"));
        goTo(Skill.FUSE_CEILING.words());
        push(KeyCode.SPACE);
        clickOn("Open its lesson");

        assertThat(settings.now().leftOff().place()).isEqualTo("lessons");
    }

    @Test
    void whatASkillStandsOnIsMarkedAndSaid() {
        push(KeyCode.F2);
        goTo(Skill.DROP.words());
        push(KeyCode.SPACE);

        assertThat(shown())
                .anyMatch(
                        it ->
                                it.startsWith("Stands on: current from power (")
                                        && it.contains("resistance of a cable (loose)"));
        final List<String> marked =
                lookup(".below").queryAllAs(ToggleButton.class).stream()
                        .map(Node::getAccessibleText)
                        .toList();
        assertThat(marked).hasSize(Prerequisites.of(Skill.DROP).size());
    }

    @Test
    void everyControlHasAName() {
        push(KeyCode.F2);
        assertThat(Accessibility.unlabelled(window.scene().getRoot())).isEmpty();
    }

    @Test
    void itLooksWellInEverySetting() {
        interact(
                () -> {
                    Screens.render("stand", () -> page(StandPlace.ID));
                    Screens.render("people", () -> page(PeoplePlace.ID));
                    for (final Screens.Setting setting : Screens.Setting.values()) {
                        for (final String id : List.of(StandPlace.ID, PeoplePlace.ID)) {
                            final Scene scene = Screens.scene(page(id), setting);
                            assertThat(Screens.cutOff(scene.getRoot()))
                                    .as("%s %s", id, setting)
                                    .isEmpty();
                        }
                        lowerHalf(setting);
                    }
                });
    }

    private Parent page(final String id) {
        final MainWindow other = window(data, settings);
        other.go(id);
        final Parent root = other.scene().getRoot();
        other.scene().setRoot(new Group());
        return root;
    }

    /** Both pages, or the one in their place, scrolled to their ends. */
    private void lowerHalf(final Screens.Setting setting) {
        final Scene scene = Screens.scene(page(StandPlace.ID), setting);
        final List<ScrollPane> pages =
                scene.getRoot().lookupAll(".page-scroll").stream()
                        .filter(ScrollPane.class::isInstance)
                        .map(ScrollPane.class::cast)
                        .toList();
        pages.forEach(it -> it.setVvalue(1));
        Screens.settle(scene);
        assertThat(pages).allMatch(it -> it.getVvalue() == 1);
        Screens.write("stand-lower", setting, scene);
    }

    /** Goes along the skills with Tab. */
    private void goTo(final String skill) {
        final Optional<ToggleButton> first =
                lookup(".skill").queryAllAs(ToggleButton.class).stream().findFirst();
        interact(() -> first.orElseThrow().requestFocus());
        tabTo(skill + ": ");
    }

    private void tabTo(final String beginning) {
        for (int i = 0; i < MOST_KEYS && !focused().startsWith(beginning); i++) {
            push(KeyCode.TAB);
        }
        assertThat(focused()).startsWith(beginning);
    }

    private String focused() {
        final String name = window.scene().getFocusOwner().getAccessibleText();
        return name == null ? "" : name;
    }

    private List<String> shown() {
        return lookup((Node it) -> it instanceof Labeled && it.isVisible()).queryAll().stream()
                .map(it -> ((Labeled) it).getText())
                .filter(text -> text != null)
                .toList();
    }
}
