package wireworthy.window.evening;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.function.Supplier;
import java.util.stream.Stream;
import javafx.scene.Parent;
import javafx.scene.Scene;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import wireworthy.evening.Asked;
import wireworthy.evening.Pick;
import wireworthy.evening.Sheet;
import wireworthy.evening.SheetPlan;
import wireworthy.evening.Shelf;
import wireworthy.evening.called.CalledGroup;
import wireworthy.evening.called.Origin;
import wireworthy.lessons.Lessons;
import wireworthy.marking.Outcome;
import wireworthy.marking.SlipFigures;
import wireworthy.practice.Problem;
import wireworthy.rules.FigureText;
import wireworthy.window.Accessibility;
import wireworthy.window.Background;
import wireworthy.window.FxTest;
import wireworthy.window.Screens;
import wireworthy.working.Solver;

/** The wall as pictures, and nothing of it cut off. */
@FxTest
class ProjectorScreensTest {
    private static final Shelf SHELF = Shelf.builtIn();
    private static final Solver SOLVER = new Solver();
    private static final List<ProjectorFigure> FIGURES =
            ProjectorFigure.of(Lessons.read(SOLVER, java.util.Optional.empty()));
    private static final String DROP = "voltage-drop/aisle-strips-drop";

    private static ProjectorModel model(final String template) {
        final Sheet sheet =
                Sheet.of(
                        new SheetPlan(
                                new Pick.ByTemplates(List.of(template, DROP)), false, 12, false, 3),
                        SHELF);
        final ProjectorModel model = new ProjectorModel(sheet, false, Background.atOnce());
        model.show(1);
        return model;
    }

    private static ProjectorTask on(final ProjectorModel model) {
        return model.task().get().orElseThrow();
    }

    private static ProjectorModel called() {
        final ProjectorModel model = model(DROP);
        final ProjectorTask task = on(model);
        final Problem problem = (Problem) task.exercise();
        final List<String> figures = new java.util.ArrayList<>();
        figures.add(Asked.of(problem).get(0).right());
        for (final Outcome slip : SlipFigures.of(problem.worked(), problem.asked())) {
            if (!Double.isFinite(slip.value()) || figures.size() > 5) {
                continue;
            }
            figures.add(FigureText.of(slip.value(), problem.asked().quantity().dimension(), 4));
        }
        figures.add(figures.get(1));
        figures.add("0.0123 V");
        task.typed().set(String.join("; ", figures));
        task.take();
        return model;
    }

    private static ProjectorModel shown() {
        final ProjectorModel model = model(DROP);
        on(model).reveal();
        on(model).reveal();
        return model;
    }

    private static ProjectorModel told() {
        final ProjectorModel model = called();
        on(model).reveal();
        on(model).tell();
        return model;
    }

    private static ProjectorModel why() {
        final ProjectorModel model = told();
        final CalledGroup slip =
                on(model).groups().stream()
                        .filter(each -> each.origin().kind() == Origin.Kind.SLIP)
                        .findFirst()
                        .orElseThrow();
        on(model).open(slip);
        return model;
    }

    private static ProjectorModel refused() {
        final ProjectorModel model = shown();
        on(model).typed().set("1 200");
        on(model).take();
        return model;
    }

    private static String template(final Class<?> task) {
        return SHELF.templates(false).stream()
                .filter(each -> task.isInstance(each.task()))
                .findFirst()
                .orElseThrow()
                .fullId();
    }

    private static ProjectorModel choice() {
        final ProjectorModel model = model(template(wireworthy.practice.Task.Choose.class));
        on(model).typed().set("abba");
        on(model).take();
        on(model).reveal();
        return model;
    }

    private static ProjectorModel order() {
        final ProjectorModel model = model(template(wireworthy.practice.Task.Order.class));
        on(model).reveal();
        on(model).reveal();
        return model;
    }

    static Stream<Arguments> screens() {
        final Stream<Arguments> questions =
                Stream.of(
                        question("question", () -> model(DROP)),
                        question("lines", ProjectorScreensTest::shown),
                        question("called", ProjectorScreensTest::called),
                        question("told", ProjectorScreensTest::told),
                        question("why", ProjectorScreensTest::why),
                        question("refused", ProjectorScreensTest::refused),
                        question("choice", ProjectorScreensTest::choice),
                        question("order", ProjectorScreensTest::order));
        final Stream<Arguments> figures =
                FIGURES.stream()
                        .filter(each -> each.figure().open().isEmpty() || FIGURES.indexOf(each) < 6)
                        .limit(4)
                        .map(
                                each ->
                                        Arguments.of(
                                                "figure-" + each.figure().kind().id(),
                                                figure(each)));
        return Stream.concat(questions, figures);
    }

    private static Arguments question(final String name, final Supplier<ProjectorModel> model) {
        final Supplier<Parent> wall = () -> new ProjectorView(model.get(), new NoShell(), () -> {});
        return Arguments.of(name, wall);
    }

    private static Supplier<Parent> figure(final ProjectorFigure each) {
        return () ->
                new ProjectorFigureView(
                        each.title(), each.figure(), SOLVER, new NoShell(), () -> {});
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("screens")
    void itIsRenderedInEverySettingWithNothingCutOff(
            final String name, final Supplier<Parent> wall) {
        for (final Screens.Setting setting : Screens.Setting.values()) {
            final Scene scene = Screens.scene(wall.get(), setting);
            Screens.write("projector-" + name, setting, scene);
            assertThat(Screens.cutOff(scene.getRoot())).as(setting.name()).isEmpty();
            assertThat(Accessibility.unlabelled(scene.getRoot())).isEmpty();
        }
    }
}
