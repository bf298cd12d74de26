package wireworthy.window.evening;

import java.util.SplittableRandom;
import java.util.function.Consumer;
import javafx.beans.binding.Bindings;
import javafx.beans.binding.BooleanBinding;
import javafx.scene.Parent;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.VBox;
import wireworthy.evening.SheetPlan;
import wireworthy.evening.summary.NextWeek;
import wireworthy.window.FileAsking;
import wireworthy.window.Shell;
import wireworthy.window.parts.Buttons;
import wireworthy.window.parts.Notice;
import wireworthy.window.parts.Pages;
import wireworthy.window.parts.Styles;
import wireworthy.window.parts.Texts;
import wireworthy.window.parts.Verdict;

/** Afterwards: what was handed in is read, and it is seen what the group stumbled over. */
final class AfterPart implements EveningPart {
    private final EveningDesk desk;
    private final Consumer<NextWeek> make;
    private final VBox found = new VBox();

    /**
     * @param make takes the sheet for next week
     */
    AfterPart(final EveningDesk desk, final Consumer<NextWeek> make) {
        this.desk = desk;
        this.make = make;
    }

    @Override
    public String key() {
        return "after";
    }

    @Override
    public Parent build(final Shell shell) {
        final SplittableRandom random = new SplittableRandom(desk.clock().millis());
        return build(
                new AfterModel(
                        desk::shelf, () -> random.nextInt(SheetPlan.SEEDS), shell.background()),
                desk.files());
    }

    private Parent build(final AfterModel model, final FileAsking files) {
        final Button choose = Buttons.main(AfterTexts.of("choose"), () -> choose(model, files));
        final Label said = Texts.strong("");
        said.textProperty().bind(model.said());
        // With a summary on the page it stands beside what was pressed.
        final BooleanBinding summary =
                Bindings.createBooleanBinding(
                        () -> model.state().get() instanceof AfterState.Read, model.state());
        said.visibleProperty().bind(model.said().isNotEmpty().and(summary.not()));
        said.managedProperty().bind(said.visibleProperty());
        found.getStyleClass().add(Styles.AFTER);
        model.state().subscribe(state -> show(state, model, files));
        return Pages.page(
                EveningTexts.of(key()),
                Texts.title(EveningTexts.of(key())),
                Texts.paragraph(AfterTexts.of("say")),
                Buttons.row(choose),
                said,
                found);
    }

    private void choose(final AfterModel model, final FileAsking files) {
        files.folderToRead(found, AfterTexts.of("folder")).ifPresent(model::read);
    }

    private void show(final AfterState state, final AfterModel model, final FileAsking files) {
        if (state instanceof AfterState.Reading reading) {
            found.getChildren()
                    .setAll(
                            Texts.paragraph(
                                    AfterTexts.of(
                                            "reading",
                                            "files",
                                            reading.files(),
                                            "all",
                                            reading.all())));
        } else if (state instanceof AfterState.Refused refused) {
            found.getChildren().setAll(new Notice(Verdict.CAUTION, refused.trouble()));
        } else if (state instanceof AfterState.None none) {
            found.getChildren().setAll(new AfterNone(none, model));
        } else if (state instanceof AfterState.Read read) {
            found.getChildren().setAll(new AfterSummary(read, model, files, make));
        } else {
            found.getChildren().clear();
        }
    }
}
