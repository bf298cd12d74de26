package wireworthy.window.check;

import java.util.List;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.VBox;
import wireworthy.vehicle.Circuit;
import wireworthy.vehicle.sheet.RowOutcome;
import wireworthy.vehicle.sheet.SheetImport;
import wireworthy.window.parts.Buttons;
import wireworthy.window.parts.Notice;
import wireworthy.window.parts.Pages;
import wireworthy.window.parts.Styles;
import wireworthy.window.parts.Texts;
import wireworthy.window.parts.Verdict;

/**
 * A spreadsheet before it is taken in: where its circuits can go, each column with what it is taken
 * for, then the rows; taking them in stays in sight under all of it.
 */
final class ImportPage extends VBox {
    private static final int MOST_SHOWN = 200;

    private final ImportModel model;
    private final VBox columns = new VBox();
    private final VBox outcome = new VBox();

    /**
     * @param done goes back, whether it was taken in or not
     */
    ImportPage(final ImportModel model, final Runnable done) {
        this.model = model;
        columns.getStyleClass().add(Styles.TIGHT);
        outcome.getStyleClass().add(Styles.TIGHT);
        final VBox page =
                new VBox(
                        Texts.title(CheckTexts.of("sheet.title")),
                        Texts.strong(model.where()),
                        Texts.paragraph(model.goBy()),
                        Texts.paragraph(CheckTexts.of("sheet.what")),
                        columns,
                        outcome);
        page.getStyleClass().addAll(Styles.PAGE, Styles.WHOLE);
        Pages.foot(this, Pages.scroll(CheckTexts.of("sheet.title"), page), taking(done));
        columns.getChildren()
                .setAll(
                        model.columns().stream()
                                .map(it -> new ColumnRow(model, it.index()))
                                .toList());
        model.result().subscribe(this::show);
    }

    /**
     * Into the vehicle that is open, or into a new one: asked wherever it could be either. A
     * spreadsheet is most often a whole vehicle, and a new one changes nothing there is.
     */
    private Node taking(final Runnable done) {
        final Button leave = Buttons.plain(CheckTexts.of("sheet.leave"), done);
        if (!model.asks()) {
            return Buttons.row(take(CheckTexts.of("sheet.take"), model::takeIn, done), leave);
        }
        final String here = CheckTexts.of("sheet.take-here", "vehicle", model.open());
        return Buttons.row(
                takeHere(here, done),
                take(CheckTexts.of("sheet.take-new"), model::takeAsNew, done),
                leave);
    }

    private Button takeHere(final String words, final Runnable done) {
        final Button here =
                Buttons.plain(
                        words,
                        () -> {
                            model.takeIn();
                            done.run();
                        });
        here.setMnemonicParsing(false);
        return here;
    }

    private static Button take(final String words, final Runnable taking, final Runnable done) {
        final Button take =
                Buttons.main(
                        words,
                        () -> {
                            taking.run();
                            done.run();
                        });
        take.setMnemonicParsing(false);
        return take;
    }

    private void show(final SheetImport result) {
        columns.getChildren().forEach(row -> ((ColumnRow) row).refresh());
        outcome.getChildren()
                .setAll(
                        Texts.subtitle(CheckTexts.of("sheet.outcome")),
                        Texts.paragraph(model.summary()),
                        circuits(result.circuits()));
        if (!model.volts().isEmpty()) {
            outcome.getChildren().add(1, volts());
        }
        if (!model.tooMany().isEmpty()) {
            outcome.getChildren().add(new Notice(Verdict.CAUTION, model.tooMany()));
        }
        if (!result.troubles().isEmpty()) {
            outcome.getChildren().add(new Notice(Verdict.CAUTION, troubles(result.troubles())));
        }
    }

    private Node volts() {
        return model.otherVolts()
                ? new Notice(Verdict.CAUTION, model.volts())
                : Texts.paragraph(model.volts());
    }

    /** Line by line, so that a column taken for the wrong thing is seen. */
    private Node circuits(final List<Circuit> circuits) {
        final VBox list = new VBox();
        list.getStyleClass().add(Styles.SAYING);
        circuits.stream()
                .limit(MOST_SHOWN)
                .map(each -> Texts.paragraph(CircuitLine.of(each)))
                .forEach(list.getChildren()::add);
        return list;
    }

    private static Node troubles(final List<RowOutcome> rows) {
        final VBox list = new VBox(Texts.strong(CheckTexts.of("sheet.troubles")));
        rows.stream().limit(MOST_SHOWN).map(ImportPage::text).forEach(list.getChildren()::add);
        if (rows.size() > MOST_SHOWN) {
            list.getChildren()
                    .add(
                            Texts.paragraph(
                                    CheckTexts.of(
                                            "sheet.more", "count", rows.size() - MOST_SHOWN)));
        }
        list.getStyleClass().add(Styles.SAYING);
        return list;
    }

    private static Label text(final RowOutcome row) {
        final String key =
                row.kind() == RowOutcome.Kind.LEFT_OUT ? "sheet.left-out" : "sheet.in-part";
        return Texts.paragraph(CheckTexts.of(key, "line", row.line(), "reason", row.reason()));
    }
}
