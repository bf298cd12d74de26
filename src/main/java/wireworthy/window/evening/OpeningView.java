package wireworthy.window.evening;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.TextField;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;
import wireworthy.evening.handin.BegunSheets;
import wireworthy.evening.handin.HandIn;
import wireworthy.window.FileAsking;
import wireworthy.window.IntoView;
import wireworthy.window.parts.Buttons;
import wireworthy.window.parts.Cards;
import wireworthy.window.parts.Notice;
import wireworthy.window.parts.Styles;
import wireworthy.window.parts.Texts;
import wireworthy.window.parts.Verdict;

/** Opens a sheet by its file or mark, or goes on with one. */
final class OpeningView extends StackPane {
    private final LaptopModel model;
    private final Button open;
    private final Node trouble;
    private final VBox atTop = new VBox();
    private final VBox atFile = new VBox();
    private final VBox atMark = new VBox();
    private Node pressed;

    OpeningView(
            final LaptopModel model, final LaptopModel.Opening opening, final FileAsking files) {
        this.model = model;
        open =
                Buttons.plain(
                        EveningTexts.of("laptop.file.do"),
                        () ->
                                files.open(this, EveningTexts.of("laptop.file.do"), "json")
                                        .ifPresent(this::openFile));
        trouble = LaptopPages.trouble(model);
        pressed = trouble;
        final List<Node> parts = new ArrayList<>();
        parts.add(Texts.title(EveningTexts.of("laptop")));
        parts.add(Texts.paragraph(EveningTexts.of("laptop.about")));
        parts.add(atTop);
        if (!opening.forgotten().isEmpty()) {
            parts.add(
                    new Notice(
                            Verdict.SOUND,
                            EveningTexts.of(
                                    "laptop.forgotten", "learner", opening.forgotten().strip())));
        }
        if (!opening.begun().isEmpty()) {
            parts.add(begun(opening.begun()));
        }
        if (!opening.known().isEmpty()) {
            parts.add(known(opening.known()));
        }
        parts.add(byFile());
        parts.add(byMark());
        getChildren().setAll(LaptopPages.page(EveningTexts.of("laptop"), parts));
        sayAt(atTop);
        model.trouble().subscribe(this::show);
    }

    private void show(final String why) {
        if (!why.isEmpty()) {
            IntoView.bring(trouble, pressed);
        }
    }

    /** What is the matter is said beside what was pressed, which stays where it is. */
    private void sayAt(final VBox place) {
        pressed = trouble;
        for (final VBox each : List.of(atTop, atFile, atMark)) {
            each.setManaged(each.equals(place));
            each.getChildren().setAll(each.equals(place) ? List.of(trouble) : List.of());
        }
    }

    private void openFile(final Path file) {
        sayAt(atFile);
        model.openFile(file);
    }

    private void openMark(final Node field, final String typed) {
        sayAt(atMark);
        pressed = field;
        model.openMark(typed);
    }

    private void openKnown(final String mark) {
        sayAt(atTop);
        model.openMark(mark);
    }

    private void goOn(final BegunSheets.Begun begun) {
        sayAt(atTop);
        model.goOn(begun);
    }

    private Node begun(final List<BegunSheets.Begun> all) {
        final List<Node> parts = new ArrayList<>();
        parts.add(Texts.subtitle(EveningTexts.of("laptop.begun")));
        for (final BegunSheets.Begun each : all) {
            final Button on = Buttons.plain(words(each), () -> goOn(each));
            on.setMinHeight(USE_PREF_SIZE);
            parts.add(on);
        }
        return Cards.card(parts.toArray(Node[]::new));
    }

    private Node known(final List<KnownSheet> all) {
        final List<Node> parts = new ArrayList<>();
        parts.add(Texts.subtitle(EveningTexts.of("known")));
        for (final KnownSheet each : all) {
            final Button button = Buttons.plain(each.words(), () -> openKnown(each.mark()));
            button.setMinHeight(USE_PREF_SIZE);
            parts.add(button);
        }
        return Cards.card(parts.toArray(Node[]::new));
    }

    private static String words(final BegunSheets.Begun begun) {
        final HandIn handIn = begun.handIn();
        return EveningTexts.of(
                begun.handedIn() ? "laptop.handed-in" : "laptop.go-on",
                "learner",
                (handIn.learner() + " " + handIn.name()).strip(),
                "mark",
                handIn.mark());
    }

    private Node byFile() {
        return Cards.card(
                Texts.subtitle(EveningTexts.of("laptop.file")),
                Texts.soft(EveningTexts.of("laptop.file.say")),
                Buttons.row(open),
                atFile);
    }

    /** Puts the keyboard on what opens a file. */
    void focus() {
        open.requestFocus();
    }

    private Node byMark() {
        final TextField mark = new TextField();
        mark.getStyleClass().add(Styles.MARK_FIELD);
        mark.setAccessibleText(EveningTexts.of("laptop.mark"));
        mark.setOnAction(event -> openMark(mark, mark.getText()));
        return Cards.card(
                Texts.subtitle(EveningTexts.of("laptop.mark")),
                Texts.soft(EveningTexts.of("laptop.mark.say")),
                mark,
                Buttons.row(
                        Buttons.plain(
                                EveningTexts.of("laptop.mark.do"),
                                () -> openMark(mark, mark.getText()))),
                atMark);
    }
}
