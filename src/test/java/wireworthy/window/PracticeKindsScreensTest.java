package wireworthy.window;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import java.util.function.Consumer;
import java.util.function.Supplier;
import java.util.stream.Stream;
import javafx.scene.Group;
import javafx.scene.Parent;
import javafx.scene.Scene;
import org.junit.jupiter.api.io.CleanupMode;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import wireworthy.practice.ChoiceProblem;
import wireworthy.practice.Problem;
import wireworthy.record.SettingsFile;
import wireworthy.record.SettingsKeeper;

/** Every kind of exercise as pictures, and nothing of them cut off. */
@FxTest
class PracticeKindsScreensTest {
    private static final List<Integer> TEXT_SIZES = List.of(100, 150, 200);

    // Settings are written a little later, on a thread of their own.
    @TempDir(cleanup = CleanupMode.NEVER)
    static Path folder;

    private static Path fresh() {
        return Kinds.fresh(folder);
    }

    static Stream<Arguments> screens() {
        return Stream.of(
                screen("parts", () -> Kinds.at(fresh(), Kinds.WHOLE), it -> {}),
                screen(
                        "parts-wrong",
                        () -> Kinds.at(fresh(), Kinds.WHOLE),
                        PracticeKindsScreensTest::wrongPart),
                screen(
                        "parts-on",
                        () -> Kinds.at(fresh(), Kinds.WHOLE),
                        PracticeKindsScreensTest::onward),
                screen("choice", () -> Kinds.at(fresh(), Kinds.CHOICE), it -> {}),
                screen(
                        "choice-wrong",
                        () -> Kinds.at(fresh(), Kinds.CHOICE),
                        PracticeKindsScreensTest::choose),
                screen(
                        "estimate-wrong",
                        () -> Kinds.at(fresh(), Kinds.ESTIMATE),
                        PracticeKindsScreensTest::choose),
                screen("order", () -> Kinds.at(fresh(), Kinds.ORDER), it -> {}),
                screen("order-wrong", () -> Kinds.at(fresh(), Kinds.ORDER), PracticeModel::answer),
                screen(
                        "order-right",
                        () -> Kinds.at(fresh(), Kinds.ORDER),
                        PracticeKindsScreensTest::inOrder),
                screen("hunt", () -> Kinds.hunting(fresh()), it -> {}),
                screen(
                        "hunt-late",
                        () -> Kinds.hunting(fresh()),
                        it -> hunt(it, huntOf(it).exercise().rows().size() - 1)),
                screen(
                        "hunt-found",
                        () -> Kinds.hunting(fresh()),
                        it -> hunt(it, huntOf(it).exercise().wrong())));
    }

    private static Arguments screen(
            final String name,
            final Supplier<PracticeModel> model,
            final Consumer<PracticeModel> act) {
        return Arguments.of(name, model, act);
    }

    private static void wrongPart(final PracticeModel model) {
        final PartsModel parts = (PartsModel) model.doing().get().orElseThrow();
        final Problem part = parts.current().exercise();
        final double right = part.worked().value(part.asked()).orElseThrow();
        parts.current().typed().set("%.4g".formatted(right * 10));
        model.answer();
    }

    private static void onward(final PracticeModel model) {
        wrongPart(model);
        ((PartsModel) model.doing().get().orElseThrow()).goOn();
    }

    private static void choose(final PracticeModel model) {
        final ChoiceModel choice = (ChoiceModel) model.doing().get().orElseThrow();
        final ChoiceProblem problem = choice.exercise();
        choice.chosen().set(problem.options().stream().filter(it -> !it.right()).findFirst());
        model.answer();
    }

    private static void inOrder(final PracticeModel model) {
        final OrderModel order = (OrderModel) model.doing().get().orElseThrow();
        for (int place = 0; place < order.order().size(); place++) {
            for (int row = order.order().indexOf(place); row > place; row--) {
                order.move(row, -1);
            }
        }
        model.answer();
    }

    private static HuntModel huntOf(final PracticeModel model) {
        return (HuntModel) model.doing().get().orElseThrow();
    }

    private static void hunt(final PracticeModel model, final int row) {
        final HuntModel hunt = huntOf(model);
        final double right =
                hunt.exercise()
                        .problem()
                        .worked()
                        .value(hunt.exercise().rows().get(row).ref())
                        .orElseThrow();
        hunt.pick(row);
        hunt.figure(row).text().set("%.4g".formatted(right));
        model.answer();
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("screens")
    void itIsRenderedInEverySetting(
            final String name,
            final Supplier<PracticeModel> model,
            final Consumer<PracticeModel> act) {
        for (final Screens.Setting setting : Screens.Setting.values()) {
            final PracticeModel at = model.get();
            final Scene scene = Screens.scene(built(at), setting);
            act.accept(at);
            Screens.settle(scene);
            Screens.write("practice-" + name, setting, scene);
            assertThat(Screens.cutOff(scene.getRoot())).as("%s", setting).isEmpty();
        }
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("screens")
    void nothingIsCutOff(
            final String name,
            final Supplier<PracticeModel> model,
            final Consumer<PracticeModel> act) {
        assertThat(TEXT_SIZES)
                .allSatisfy(
                        size -> {
                            final PracticeModel at = model.get();
                            final Scene scene = new Scene(built(at), 1024, 700);
                            Looks.dress(scene, Theme.LIGHT, size);
                            act.accept(at);
                            Screens.settle(scene);
                            assertThat(Screens.cutOff(scene.getRoot())).isEmpty();
                        });
    }

    private static Parent built(final PracticeModel model) {
        final SettingsKeeper settings =
                new SettingsKeeper(new SettingsFile(folder.resolve("settings.json")));
        settings.change(it -> it.withPlace(PracticePlace.ID));
        final MainWindow whole =
                new MainWindow(
                                List.of(
                                        new TestPlace("Lessons"),
                                        new PracticePlace(model, exercise -> {}, InUse.USUAL),
                                        new TestPlace("Tables")),
                                settings,
                                Background.atOnce())
                        .open();
        final Parent root = whole.scene().getRoot();
        assertThat(root.lookup(".bench")).as("the exercise is shown").isNotNull();
        whole.scene().setRoot(new Group());
        return root;
    }
}
