package wireworthy.window.evening;

import java.io.IOException;
import java.nio.charset.CharacterCodingException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.function.UnaryOperator;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.control.TextArea;
import javafx.scene.layout.VBox;
import wireworthy.evening.NameList;
import wireworthy.evening.SheetPlan;
import wireworthy.evening.wish.ForWhom;
import wireworthy.window.FileAsking;
import wireworthy.window.parts.Buttons;
import wireworthy.window.parts.OneOf;
import wireworthy.window.parts.Styles;
import wireworthy.window.parts.Texts;

/** Who a sheet is for. */
final class WhoForm extends VBox {
    private static final long MOST_BYTES = 100_000;
    private static final int LINES = 5;

    private final MakeModel model;
    private final FileAsking files;
    private final VBox learners = new VBox();
    private final Label under = Texts.soft("");
    private final Label forgotten = Texts.soft("");

    WhoForm(final MakeModel model, final FileAsking files) {
        this.model = model;
        this.files = files;
        under.managedProperty().bind(under.textProperty().isNotEmpty());
        learners.getStyleClass().add(Styles.ONE_OF);
        getStyleClass().add(Styles.EVENING_FORM);
        forgotten.managedProperty().bind(forgotten.textProperty().isNotEmpty());
        show();
    }

    private void show() {
        fill();
        getChildren()
                .setAll(
                        new OneOf<>(
                                EveningTexts.of("make.learners"),
                                List.of(false, true),
                                named -> EveningTexts.of("make.named." + named),
                                now().named(),
                                this::named),
                        learners,
                        new OneOf<>(
                                EveningTexts.of("make.numbers"),
                                List.of(true, false),
                                own -> EveningTexts.of("make.own-numbers." + own),
                                now().ownNumbers(),
                                own -> who(it -> it.withOwnNumbers(own))),
                        new AskFirst(
                                EveningTexts.of("make.forget"),
                                () -> EveningTexts.of("make.forget.sure"),
                                EveningTexts.of("make.forget.keep"),
                                EveningTexts.of("make.forget.do"),
                                this::forget),
                        forgotten);
    }

    private void forget() {
        model.forgetNames(
                done -> {
                    show();
                    forgotten.setText(
                            EveningTexts.of(done ? "make.forgotten" : "make.not-forgotten"));
                });
    }

    private ForWhom now() {
        return model.wish().who();
    }

    private void who(final UnaryOperator<ForWhom> how) {
        model.change(it -> it.withWho(how.apply(it.who())));
    }

    private void named(final boolean named) {
        who(it -> it.withNamed(named));
        fill();
    }

    private void fill() {
        learners.getChildren().setAll(now().named() ? names() : copies());
    }

    private Node copies() {
        return new CountField(
                EveningTexts.of("make.copies"),
                now().copies(),
                SheetPlan.MOST_LEARNERS,
                count -> who(it -> it.withCopies(count)));
    }

    private Node names() {
        final TextArea names = new TextArea(now().names());
        names.setPrefRowCount(LINES);
        names.setPrefColumnCount(1);
        names.setAccessibleText(EveningTexts.of("make.names"));
        names.textProperty().addListener((any, before, typed) -> typed(typed));
        under.setText(NameList.of(now().names()).said());
        final VBox part =
                new VBox(
                        Texts.soft(EveningTexts.of("make.names")),
                        names,
                        Buttons.row(
                                Buttons.plain(EveningTexts.of("make.csv"), () -> fromFile(names))),
                        under);
        part.getStyleClass().add(Styles.ONE_OF);
        return part;
    }

    private void typed(final String names) {
        who(it -> it.withNames(names));
        under.setText(NameList.of(names).said());
    }

    private void fromFile(final TextArea names) {
        files.open(this, EveningTexts.of("make.csv.title"), "csv")
                .ifPresent(file -> read(file, names));
    }

    private void read(final Path file, final TextArea names) {
        try {
            final boolean small = Files.size(file) <= MOST_BYTES;
            if (small) {
                names.setText(NameList.of(Files.readString(file)).text());
            } else {
                under.setText(EveningTexts.of("make.csv.large", "file", file));
            }
        } catch (final CharacterCodingException e) {
            under.setText(EveningTexts.of("make.csv.encoding", "file", file));
        } catch (final IOException e) {
            under.setText(EveningTexts.of("make.csv.unread", "file", file));
        }
    }
}
