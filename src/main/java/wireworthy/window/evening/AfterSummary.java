package wireworthy.window.evening;

import java.util.function.Consumer;
import javafx.scene.Node;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Label;
import javafx.scene.layout.VBox;
import javafx.util.StringConverter;
import wireworthy.evening.handin.HandInFolder;
import wireworthy.evening.summary.NextWeek;
import wireworthy.evening.summary.Summary;
import wireworthy.paper.PaperSize;
import wireworthy.window.FileAsking;
import wireworthy.window.NextFrame;
import wireworthy.window.parts.Buttons;
import wireworthy.window.parts.Cards;
import wireworthy.window.parts.OneOf;
import wireworthy.window.parts.Scrolling;
import wireworthy.window.parts.Styles;
import wireworthy.window.parts.Texts;

/** What a group stumbled over, and what can be done with it. */
final class AfterSummary extends VBox {
    private static final String NAME = "what-the-group-stumbled-over";

    private final AfterState.Read read;
    private final AfterModel model;
    private final FileAsking files;
    private final Consumer<NextWeek> make;
    private final ComboBox<PaperSize> size = new ComboBox<>();

    AfterSummary(
            final AfterState.Read read,
            final AfterModel model,
            final FileAsking files,
            final Consumer<NextWeek> make) {
        this.read = read;
        this.model = model;
        this.files = files;
        this.make = make;
        getStyleClass().add(Styles.AFTER);
        final Summary summary = read.summary();
        getChildren().add(Texts.strong(counted(summary)));
        getChildren()
                .add(
                        Texts.paragraph(
                                AfterTexts.of(
                                        "missing",
                                        "learners",
                                        summary.sheet().learners(),
                                        "count",
                                        summary.missing())));
        if (read.sheets().size() > 1) {
            getChildren().add(Cards.card(sheets()));
        }
        getChildren().add(AfterTables.slips(summary.slips()));
        if (!summary.unexplained().isEmpty()) {
            getChildren().add(AfterTables.handed("unexplained", summary.unexplained()));
        }
        if (!summary.notes().isEmpty()) {
            getChildren().add(AfterTables.handed("notes", summary.notes()));
        }
        getChildren()
                .addAll(
                        AfterTables.missed("problems", summary.problems()),
                        AfterTables.missed("skills", summary.skills()),
                        AfterTables.help(summary.help()),
                        nextWeek());
        if (!read.handIns().leftOut().isEmpty()) {
            getChildren().add(AfterTables.leftOut(read.handIns().leftOut()));
        }
        getChildren().add(AfterDeleting.ofSheet(model, read.folder().folder()));
    }

    private String counted(final Summary summary) {
        return AfterTexts.of(
                read.handIns().leftOut().isEmpty() ? "counted.all" : "counted",
                "count",
                summary.handedIn(),
                "mark",
                summary.sheet().mark(),
                "left-out",
                read.handIns().leftOut().size());
    }

    private OneOf<String> sheets() {
        return new OneOf<>(
                AfterTexts.of("sheets"),
                read.sheets().stream().map(HandInFolder.Belonging::mark).toList(),
                this::sheet,
                read.summary().sheet().mark(),
                model::choose);
    }

    private String sheet(final String mark) {
        final int count =
                read.sheets().stream()
                        .filter(each -> each.mark().equals(mark))
                        .mapToInt(HandInFolder.Belonging::files)
                        .sum();
        return AfterTexts.of("sheet", "mark", mark, "files", count);
    }

    private Node nextWeek() {
        size.getItems().setAll(PaperSize.values());
        size.setValue(PaperSize.A4);
        size.setConverter(new SizeName());
        size.setAccessibleText(AfterTexts.of("paper"));
        return Cards.card(
                Texts.subtitle(AfterTexts.of("next")),
                Texts.paragraph(read.nextWeek().chosenFor().why()),
                Texts.soft(AfterTexts.of("next.say")),
                Buttons.row(
                        Buttons.plain(
                                AfterTexts.of("next.do"), () -> make.accept(read.nextWeek()))),
                Texts.subtitle(AfterTexts.of("save")),
                Buttons.row(
                        Buttons.plain(AfterTexts.of("save.pdf"), this::savePdf),
                        size,
                        Buttons.plain(AfterTexts.of("save.csv"), this::saveCsv)),
                said());
    }

    private void savePdf() {
        files.save(this, AfterTexts.of("save.pdf"), NAME, "pdf")
                .ifPresent(file -> model.savePdf(file, size.getValue()));
    }

    private void saveCsv() {
        files.save(this, AfterTexts.of("save.csv"), NAME, "csv").ifPresent(model::saveCsv);
    }

    /** Where it was saved, beside what saves it. */
    private Node said() {
        final Label said = Texts.strong("");
        said.textProperty().bind(model.said());
        said.managedProperty().bind(model.said().isNotEmpty());
        model.said()
                .subscribe(
                        words -> {
                            if (!words.isEmpty()) {
                                NextFrame.then(said, () -> Scrolling.into(said));
                            }
                        });
        return said;
    }

    private static final class SizeName extends StringConverter<PaperSize> {
        @Override
        public String toString(final PaperSize paper) {
            return AfterTexts.of("paper." + paper.name());
        }

        @Override
        public PaperSize fromString(final String text) {
            return PaperSize.valueOf(text);
        }
    }
}
