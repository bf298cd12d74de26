package wireworthy.window;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import java.util.stream.Stream;
import javafx.scene.Group;
import javafx.scene.Parent;
import javafx.scene.Scene;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.io.CleanupMode;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import wireworthy.record.DataFolder;
import wireworthy.record.SettingsFile;
import wireworthy.record.SettingsKeeper;
import wireworthy.record.SumsInUse;
import wireworthy.texts.Language;
import wireworthy.window.parts.Styles;

/** Every screen in other languages: nothing cut off, nothing beside its place. */
@FxTest
class LanguageScreensTest {
    private static final List<Language> LANGUAGES = List.of(Language.of("de"), Pseudo.LANGUAGE);

    // Settings are written a little later, on a thread of their own.
    @TempDir(cleanup = CleanupMode.NEVER)
    private static Path home;

    private static DataFolder data = new DataFolder(Path.of(""));

    record Screen(String name, Consumer<Opened> act) {
        @Override
        public String toString() {
            return name;
        }
    }

    record Opened(MainWindow window, LessonsPlace lessons) {
        void lesson(final String id) {
            window.go("lessons");
            lessons.open(id);
        }
    }

    @BeforeAll
    static void texts() throws IOException {
        Pseudo.write();
        data = new DataFolder(home);
        Weeks.practised(data.answers());
    }

    @AfterEach
    void english() {
        Language.use(Language.ENGLISH);
    }

    static Stream<Arguments> screens() {
        final List<Screen> all = new ArrayList<>();
        all.add(new Screen("sums", it -> it.window().changeSums()));
        all.add(new Screen("keys", it -> it.window().help()));
        for (final String place :
                List.of("practice", "check", "evening", "tables", "stand", "people")) {
            all.add(new Screen(place, it -> it.window().go(place)));
        }
        for (final String lesson : LESSONS) {
            all.add(new Screen("lesson-" + lesson, it -> it.lesson(lesson)));
        }
        return LANGUAGES.stream()
                .flatMap(language -> all.stream().map(each -> Arguments.of(language, each)));
    }

    /** The first five, and one of each other figure. */
    private static final List<String> LESSONS =
            List.of(
                    "before-you-touch",
                    "rating-plate",
                    "power",
                    "circuits",
                    "parallel-loads",
                    "ampacity",
                    "floor-and-ceiling",
                    "cable",
                    "four-ways",
                    "system-voltage",
                    "big-loads",
                    "fuse-or-cable",
                    "energy");

    @ParameterizedTest(name = "{0} {1}")
    @MethodSource("screens")
    void nothingIsCutOff(final Language language, final Screen screen) {
        Language.use(language);
        final Scene scene = Screens.scene(root(screen), Screens.Setting.SMALL);
        Screens.write(language.code() + "-" + screen.name(), Screens.Setting.SMALL, scene);
        Screens.writeParts(
                language.code() + "-" + screen.name() + "-figure", Styles.LIVE_FIGURE, scene);

        assertThat(Screens.cutOff(scene.getRoot())).isEmpty();
        assertThat(Screens.beside(scene.getRoot())).isEmpty();
        assertThat(Accessibility.unlabelled(scene.getRoot())).isEmpty();
    }

    private static Parent root(final Screen screen) {
        final SettingsKeeper settings = new SettingsKeeper(new SettingsFile(data.settings()));
        settings.change(it -> it.withSums(SumsInUse.USUAL));
        final Places places = new Places(data, settings, Evenings.CLOCK, Ahead.again(data));
        final MainWindow window =
                new MainWindow(places.all(), settings, Background.atOnce()).with(places.pages());
        places.goBy(window::go);
        window.open();
        screen.act().accept(new Opened(window, (LessonsPlace) places.all().get(0)));
        final Parent root = window.scene().getRoot();
        window.scene().setRoot(new Group());
        return root;
    }
}
