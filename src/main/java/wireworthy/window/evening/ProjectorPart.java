package wireworthy.window.evening;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.SplittableRandom;
import javafx.scene.Node;
import javafx.scene.Parent;
import javafx.scene.layout.VBox;
import wireworthy.evening.Sheet;
import wireworthy.evening.SheetPlan;
import wireworthy.window.Shell;
import wireworthy.window.parts.OneOf;
import wireworthy.window.parts.Pages;
import wireworthy.window.parts.Styles;
import wireworthy.window.parts.Texts;

/** At the projector: what is to be thrown on the wall is chosen here. */
final class ProjectorPart implements EveningPart {
    /** What may be thrown on the wall. */
    private enum What {
        SHEET,
        SKILL,
        FIGURE;

        private String words() {
            return ProjectorTexts.of("what." + name().toLowerCase(Locale.ROOT));
        }
    }

    private final EveningDesk desk;
    private final ProjectorDesk figures;
    private final VBox chosen = new VBox();
    private Optional<ProjectorSetup> setup = Optional.empty();

    /** Left with one Esc too many, it is there again with what was called out. */
    private Optional<Wall> last = Optional.empty();

    ProjectorPart(final EveningDesk desk, final ProjectorDesk figures) {
        this.desk = desk;
        this.figures = figures;
    }

    @Override
    public String key() {
        return "projector";
    }

    @Override
    public Parent build(final Shell shell) {
        final SplittableRandom random = new SplittableRandom(desk.clock().millis());
        final ProjectorSetup begun =
                new ProjectorSetup(desk, () -> random.nextInt(SheetPlan.SEEDS), shell.background());
        setup = Optional.of(begun);
        chosen.getStyleClass().add(Styles.TIGHT);
        final ProjectorForms forms =
                new ProjectorForms(begun, desk.files(), (sheet, at) -> wall(sheet, at, shell));
        show(What.SHEET, forms, shell);
        return Pages.page(
                EveningTexts.of(key()),
                Texts.title(EveningTexts.of(key())),
                Texts.paragraph(ProjectorTexts.of("say")),
                new OneOf<>(
                        ProjectorTexts.of("what"),
                        List.of(What.values()),
                        What::words,
                        What.SHEET,
                        what -> show(what, forms, shell)),
                chosen,
                Texts.soft(ProjectorTexts.of("keys")));
    }

    /** A sheet may have been made or opened meanwhile. */
    @Override
    public void shown() {
        setup.ifPresent(ProjectorSetup::look);
    }

    private void show(final What what, final ProjectorForms forms, final Shell shell) {
        if (what == What.FIGURE) {
            chosen.getChildren().setAll(Texts.soft(ProjectorTexts.of("reading")));
            shell.background()
                    .run(
                            () -> ProjectorFigure.of(desk.lessons()),
                            all -> chosen.getChildren().setAll(list(all, shell)));
        } else {
            chosen.getChildren().setAll(what == What.SHEET ? forms.sheet() : forms.skill());
        }
    }

    private Node list(final List<ProjectorFigure> all, final Shell shell) {
        return ProjectorForms.figures(all, figure -> wall(figure, shell));
    }

    private void wall(final Sheet sheet, final ProjectorForms.Begin begin, final Shell shell) {
        final Wall wall =
                last.filter(it -> it.shows(sheet, begin))
                        .orElseGet(() -> Wall.of(sheet, begin, shell));
        last = Optional.of(wall);
        shell.cover(wall.view());
        wall.model().show(begin.problem());
    }

    /** What is on the wall, or was there last. */
    private record Wall(String mark, boolean toldAtOnce, ProjectorModel model, ProjectorView view) {
        private static Wall of(
                final Sheet sheet, final ProjectorForms.Begin begin, final Shell shell) {
            final ProjectorModel model =
                    new ProjectorModel(sheet, begin.toldAtOnce(), shell.background());
            final ProjectorView view = new ProjectorView(model, shell, shell::uncover);
            return new Wall(sheet.mark(), begin.toldAtOnce(), model, view);
        }

        private boolean shows(final Sheet sheet, final ProjectorForms.Begin begin) {
            return mark.equals(sheet.mark()) && toldAtOnce == begin.toldAtOnce();
        }
    }

    private void wall(final ProjectorFigure figure, final Shell shell) {
        shell.cover(
                new ProjectorFigureView(
                        figure.title(),
                        figure.figure().by(figures.sums().get()),
                        figures.solver(),
                        shell,
                        shell::uncover));
    }
}
