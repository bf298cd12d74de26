package wireworthy.window.evening;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.layout.StackPane;
import wireworthy.evening.handin.Explained;
import wireworthy.evening.handin.HandedIn;
import wireworthy.window.FileAsking;
import wireworthy.window.parts.Buttons;
import wireworthy.window.parts.Cards;
import wireworthy.window.parts.Notice;
import wireworthy.window.parts.Styles;
import wireworthy.window.parts.Texts;
import wireworthy.window.parts.Verdict;

/**
 * A sheet handed in to a stick or a shared folder; then what is right, where the leader wants it.
 */
final class EndingView extends StackPane {
    private final LaptopModel model;
    private final LaptopModel.Ending ending;
    private final FileAsking files;
    private final boolean handedIn;
    private final Button handIn;

    EndingView(final LaptopModel model, final LaptopModel.Ending ending, final FileAsking files) {
        this.model = model;
        this.ending = ending;
        this.files = files;
        handedIn = ending.handedIn().isPresent() || model.wasHandedIn(ending.work());
        handIn = handIn();
        final List<Node> parts = new ArrayList<>();
        parts.add(Texts.title(EveningTexts.of("end")));
        parts.add(
                Texts.soft(
                        EveningTexts.of(
                                "work.head",
                                "learner",
                                ending.work().learner(),
                                "mark",
                                ending.work().sheet().mark())));
        parts.add(Texts.paragraph(answered()));
        parts.add(LaptopPages.trouble(model));
        ending.handedIn().ifPresent(it -> parts.add(handedIn(it)));
        parts.add(Cards.card(Texts.soft(EveningTexts.of("end.say")), Buttons.row(handIn, back())));
        if (handedIn) {
            parts.add(after());
        }
        getChildren().setAll(LaptopPages.page(EveningTexts.of("end"), parts));
    }

    /** Puts the keyboard on what hands in. */
    void focus() {
        handIn.requestFocus();
    }

    private String answered() {
        final List<Integer> open = ending.work().open();
        return open.isEmpty()
                ? EveningTexts.of("end.all")
                : EveningTexts.of(
                        "end.open",
                        "open",
                        open.stream().map(String::valueOf).collect(Collectors.joining(", ")));
    }

    private static Node handedIn(final HandedIn done) {
        final String key = done.again() ? "end.again" : "end.done";
        return new Notice(Verdict.SOUND, EveningTexts.of(key, "file", done.file()));
    }

    private Button handIn() {
        final String key = handedIn ? "end.do-again" : "end.do";
        final Button button =
                Buttons.plain(
                        EveningTexts.of(key),
                        () ->
                                files.folder(this, EveningTexts.of("end.folder"))
                                        .ifPresent(it -> model.handIn(ending.work(), it)));
        button.getStyleClass().setAll("button", Styles.MAIN);
        return button;
    }

    private Button back() {
        return Buttons.plain(EveningTexts.of("end.back"), () -> model.back(ending.work()));
    }

    private Node after() {
        final List<Node> ways = new ArrayList<>();
        if (ending.work().sheet().explained() == Explained.AT_THE_END) {
            ways.add(
                    Buttons.plain(
                            EveningTexts.of("end.look-back"), () -> model.lookBack(ending.work())));
        }
        ways.add(Buttons.plain(EveningTexts.of("end.next-learner"), model::begin));
        return Cards.card(
                Texts.soft(EveningTexts.of("end.after")),
                Buttons.row(ways.toArray(Node[]::new)),
                new AskFirst(
                        EveningTexts.of("end.forget"),
                        () -> EveningTexts.of("end.forget.sure"),
                        EveningTexts.of("end.forget.keep"),
                        EveningTexts.of("end.forget.do"),
                        () -> model.forget(ending.work())));
    }
}
