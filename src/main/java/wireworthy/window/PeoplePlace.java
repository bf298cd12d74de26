package wireworthy.window;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import javafx.scene.Node;
import javafx.scene.Parent;
import javafx.scene.control.Button;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.layout.VBox;
import wireworthy.window.parts.Buttons;
import wireworthy.window.parts.Cards;
import wireworthy.window.parts.OneOf;
import wireworthy.window.parts.Pages;
import wireworthy.window.parts.Styles;
import wireworthy.window.parts.Texts;

/** The people on this machine: whose answers are kept, and what can be done with a record. */
public final class PeoplePlace implements Place {
    static final String ID = "people";

    private static final String JSON = "json";
    private static final String CSV = "csv";

    private final PeopleModel model;
    private final FileAsking files;
    private final VBox page = new VBox();
    private Runnable back = () -> {};

    PeoplePlace(final PeopleModel model, final FileAsking files) {
        this.model = model;
        this.files = files;
        page.getStyleClass().addAll(Styles.PAGE, Styles.SUMS);
    }

    @Override
    public String id() {
        return ID;
    }

    @Override
    public String title() {
        return PeopleTexts.of("title");
    }

    @Override
    public Parent build(final Shell shell) {
        back = () -> shell.go(PracticePlace.ID);
        model.by(shell.background());
        page.disableProperty().bind(model.busy());
        model.busy().subscribe(busy -> afterwards(busy));
        return Pages.scroll(title(), page);
    }

    /** What was done shows at once; whoever went elsewhere meanwhile stays there. */
    private void afterwards(final boolean busy) {
        if (!busy && page.getScene() != null) {
            shown();
        }
    }

    @Override
    public void shown() {
        final OneOf<String> who =
                new OneOf<>(
                        PeopleTexts.of("who"), model.codes(), code -> code, model.now(), this::use);
        final Label said = Texts.strong("");
        said.textProperty().bind(model.said());
        said.managedProperty().bind(model.said().isNotEmpty());
        page.getChildren()
                .setAll(
                        Texts.title(title()),
                        Texts.paragraph(PeopleTexts.of("say")),
                        said,
                        Cards.card(who, named(PeopleTexts.of("new"), "add", model::add)),
                        Cards.card(named(of("rename"), "rename.do", model::rename)),
                        Cards.card(fileParts()),
                        Cards.card(deleteParts()));
        if (!model.others().isEmpty()) {
            page.getChildren().add(page.getChildren().size() - 1, Cards.card(joinParts()));
        }
        page.getChildren()
                .add(Buttons.row(Buttons.plain(PeopleTexts.of("done"), () -> back.run())));
        who.focus();
    }

    private String of(final String key) {
        return PeopleTexts.of(key, "person", model.now());
    }

    private void use(final String code) {
        if (!code.equals(model.now())) {
            model.use(code);
        }
    }

    private Button button(final String key, final Runnable action) {
        return Buttons.plain(of(key), action);
    }

    /** A field for a code name, and the button that takes it; Enter in the field does too. */
    private VBox named(final String title, final String does, final Consumer<String> take) {
        final TextField name = new TextField();
        name.setAccessibleText(title);
        name.setOnAction(event -> take.accept(name.getText()));
        final VBox part =
                new VBox(
                        Texts.strong(title),
                        Buttons.row(name, button(does, () -> take.accept(name.getText()))));
        part.getStyleClass().add(Styles.PERSON);
        return part;
    }

    private Node[] fileParts() {
        return new Node[] {
            Texts.strong(of("files")),
            Texts.soft(PeopleTexts.of("files.say")),
            Buttons.row(
                    button("json", () -> save(JSON, model::exportJson)),
                    button("csv", () -> save(CSV, model::exportCsv)),
                    button(
                            "import",
                            () ->
                                    files.open(page, of("import"), JSON)
                                            .ifPresent(model::importJson)))
        };
    }

    private void save(final String ending, final Consumer<java.nio.file.Path> export) {
        files.save(page, of(ending), model.now(), ending).ifPresent(export);
    }

    private Node[] joinParts() {
        final ComboBox<String> other = new ComboBox<>();
        other.getItems().setAll(model.others());
        other.getSelectionModel().selectFirst();
        other.setAccessibleText(PeopleTexts.of("join.other"));
        return new Node[] {
            Texts.strong(PeopleTexts.of("join")),
            Texts.soft(of("join.say")),
            Buttons.row(other, button("join.do", () -> model.join(other.getValue())))
        };
    }

    private Node[] deleteParts() {
        final List<Node> parts = new ArrayList<>();
        parts.add(Buttons.row(button("delete", model::delete)));
        parts.add(Texts.soft(PeopleTexts.of("delete.say")));
        for (final String code : model.deleted()) {
            final Button bring =
                    Buttons.plain(PeopleTexts.of("undelete"), () -> model.undelete(code));
            bring.setAccessibleText(PeopleTexts.of("undelete.read", "person", code));
            parts.add(Buttons.row(Texts.strong(PeopleTexts.of("deleted", "person", code)), bring));
        }
        return parts.toArray(Node[]::new);
    }
}
