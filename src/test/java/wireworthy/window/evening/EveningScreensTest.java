package wireworthy.window.evening;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import javafx.scene.Group;
import javafx.scene.Parent;
import javafx.scene.Scene;
import javafx.scene.control.Button;
import javafx.scene.control.ScrollPane;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.io.CleanupMode;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import wireworthy.evening.Asked;
import wireworthy.evening.CodeNames;
import wireworthy.evening.Difficulty;
import wireworthy.evening.Sheet;
import wireworthy.evening.Shelf;
import wireworthy.evening.SystemVoltage;
import wireworthy.evening.handin.BegunSheets;
import wireworthy.evening.handin.Explained;
import wireworthy.evening.handin.SheetFile;
import wireworthy.evening.wish.Wanted;
import wireworthy.evening.wish.Wish;
import wireworthy.evening.wish.WishFile;
import wireworthy.practice.ChoiceProblem;
import wireworthy.practice.OrderProblem;
import wireworthy.practice.Problem;
import wireworthy.practice.Template;
import wireworthy.record.SettingsFile;
import wireworthy.record.SettingsKeeper;
import wireworthy.rules.Skill;
import wireworthy.window.Accessibility;
import wireworthy.window.Background;
import wireworthy.window.FxTest;
import wireworthy.window.MainWindow;
import wireworthy.window.Screens;

/** The evening class as pictures; nothing cut off, nothing without a name. */
@FxTest
class EveningScreensTest {
    private static final Shelf SHELF = Shelf.builtIn();
    private static final CodeNames NAMES =
            new CodeNames(List.of("Finch", "Wren", "Kestrel", "Plover", "Grey heron of the weir"));

    // Settings are written a little later, on a thread of their own.
    @TempDir(cleanup = CleanupMode.NEVER)
    private static Path folder;

    /** One for all, so that the banks are read once. */
    private static EveningDesk desk;

    @BeforeAll
    static void read() {
        desk = TestDesks.desk(folder, folder.resolve("out"));
    }

    /** Each picture begins with nothing begun. */
    private static void forget() {
        final BegunSheets begun = new BegunSheets(folder.resolve("sheets/begun"));
        try {
            for (final BegunSheets.Begun each : begun.all()) {
                begun.forget(each.handIn());
            }
        } catch (final IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** What is looked at. */
    enum Screen {
        MAKE,
        MAKE_NONE,
        MAKE_EVENING,
        MAKE_ONE_BY_ONE,
        LAPTOP,
        LAPTOP_WHO,
        WORK,
        WORK_PARTS,
        WORK_CHOICE,
        WORK_ORDER,
        WORK_TOLD,
        WORK_END;

        String file() {
            return "evening-" + name().toLowerCase(Locale.ROOT).replace('_', '-');
        }

        boolean make() {
            return name().startsWith("MAKE");
        }
    }

    @ParameterizedTest
    @EnumSource
    void itIsRendered(final Screen screen) {
        Screens.render(screen.file(), () -> window(screen));
    }

    /** What was picked one by one stays: only its numbers can be others. */
    @ParameterizedTest
    @CsvSource({"MAKE, Other problems and numbers", "MAKE_ONE_BY_ONE, Other numbers"})
    void theButtonSaysWhatBecomesOther(final Screen screen, final String words) {
        assertThat(window(screen).lookupAll(".button"))
                .filteredOn(each -> each instanceof Button button && button.getText().equals(words))
                .hasSize(1);
    }

    @ParameterizedTest
    @EnumSource(mode = EnumSource.Mode.MATCH_ALL, names = "MAKE.*")
    void itsEndIsRendered(final Screen screen) {
        Screens.render(screen.file() + "-end", () -> scrolled(window(screen)));
    }

    private static Parent scrolled(final Parent root) {
        final Scene scene = new Scene(root, 1024, 700);
        scene.snapshot(null);
        root.lookupAll(".page-scroll")
                .forEach(it -> ((ScrollPane) it).setVvalue(((ScrollPane) it).getVmax()));
        scene.setRoot(new Group());
        return root;
    }

    @ParameterizedTest
    @EnumSource
    void nothingIsCutOffOrWithoutAName(final Screen screen) {
        for (final Screens.Setting setting : Screens.Setting.values()) {
            final Scene scene = Screens.scene(window(screen), setting);
            assertThat(Screens.cutOff(scene.getRoot())).as("%s", setting).isEmpty();
            assertThat(Accessibility.unlabelled(scene.getRoot())).isEmpty();
        }
    }

    private Parent window(final Screen screen) {
        forget();
        final LaptopPart laptop = new LaptopPart(desk);
        final MakePart make = new MakePart(desk);
        keep(wish(screen));
        final SettingsKeeper settings =
                new SettingsKeeper(new SettingsFile(folder.resolve("settings.json")));
        final EveningPlace place = new EveningPlace(List.of(make, laptop), settings);
        final Scene scene =
                new MainWindow(List.of(place), settings, Background.atOnce()).open().scene();
        place.open("make");
        if (screen == Screen.MAKE_EVENING) {
            make.model().use(make.model().evenings().evenings().stream().findFirst());
        }
        if (!screen.make()) {
            place.open("laptop");
            work(screen, laptop.model());
        }
        final Parent root = scene.getRoot();
        scene.snapshot(null);
        if (screen == Screen.MAKE) {
            press(root, "Make the papers");
        }
        if (screen == Screen.WORK_TOLD) {
            press(root, "Mark my answer");
        }
        scene.setRoot(new Group());
        return root;
    }

    private static void press(final Parent root, final String button) {
        root.lookupAll(".button").stream()
                .filter(it -> it instanceof Button b && b.getText().equals(button))
                .map(Button.class::cast)
                .findFirst()
                .orElseThrow()
                .fire();
    }

    private void keep(final Wish wish) {
        try {
            WishFile.write(folder.resolve("sheets/choice.json"), wish);
        } catch (final IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static Wish wish(final Screen screen) {
        final Wanted usual = Wanted.USUAL;
        return switch (screen) {
            case MAKE_NONE ->
                    Wish.USUAL.withWanted(
                            usual.withSkills(Set.of(Skill.values()))
                                    .withVoltages(Set.of(SystemVoltage.V48))
                                    .withDifficulties(Set.of(Difficulty.HARD)));
            case MAKE_ONE_BY_ONE -> Wish.USUAL.withWanted(kinds());
            case MAKE ->
                    Wish.USUAL
                            .withWanted(usual.withProblems(2))
                            .withWho(Wish.USUAL.who().withCopies(2));
            default ->
                    Wish.USUAL.withWho(Wish.USUAL.who().withNamed(true).withNames("Finch\nWren"));
        };
    }

    /** A figure, a whole circuit, a choice and an order. */
    private static Wanted kinds() {
        final List<String> ids = new ArrayList<>();
        ids.add("voltage-drop/aisle-strips-drop");
        ids.add(first(it -> it.wholeJob()));
        ids.add(first(it -> SHELF.example(it) instanceof ChoiceProblem));
        ids.add(first(it -> SHELF.example(it) instanceof OrderProblem));
        return Wanted.USUAL.withOneByOne(true).withTemplates(ids);
    }

    private static String first(final java.util.function.Predicate<Template> wanted) {
        return SHELF.templates(false).stream().filter(wanted).findFirst().orElseThrow().fullId();
    }

    private void work(final Screen screen, final LaptopModel model) {
        final Sheet sheet = Wish.USUAL.withWanted(kinds()).sheet(SHELF);
        final Path file = folder.resolve("sheet.json");
        final boolean now = screen == Screen.WORK_TOLD;
        try {
            new SheetFile(sheet.mark(), now ? Explained.NOW : Explained.AT_THE_END, NAMES)
                    .write(file);
        } catch (final IOException e) {
            throw new UncheckedIOException(e);
        }
        model.openFile(file);
        if (screen == Screen.LAPTOP_WHO) {
            return;
        }
        model.choose((LaptopModel.Who) model.stage().get(), 5, "");
        final SheetWork work = ((LaptopModel.Working) model.stage().get()).work();
        for (int i = 1; i < 3 && screen != Screen.WORK; i++) {
            work.go(i);
            work.keep(i, Asked.of(work.exercise()).stream().map(Asked::right).toList());
        }
        switch (screen) {
            case LAPTOP -> model.begin();
            case WORK_END -> {
                model.end(work);
                model.handIn(work, handIns());
            }
            default -> {
                work.go(
                        switch (screen) {
                            case WORK_PARTS -> 2;
                            case WORK_CHOICE -> 3;
                            case WORK_ORDER -> 4;
                            default -> 1;
                        });
                if (screen == Screen.WORK_TOLD) {
                    work.keep(1, List.of(tenfold((Problem) work.exercise())));
                }
                model.end(work);
                model.back(work);
            }
        }
    }

    private static Path handIns() {
        try {
            return Files.createTempDirectory(folder, "stick");
        } catch (final IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static String tenfold(final Problem problem) {
        return "%.4g V".formatted(10 * problem.worked().value(problem.asked()).orElseThrow());
    }
}
