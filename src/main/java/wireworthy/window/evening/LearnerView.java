package wireworthy.window.evening;

import java.util.ArrayList;
import java.util.List;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.TextField;
import javafx.scene.layout.StackPane;
import wireworthy.window.parts.Buttons;
import wireworthy.window.parts.Cards;
import wireworthy.window.parts.Styles;
import wireworthy.window.parts.Texts;

/** Says which learner answers. */
final class LearnerView extends StackPane {
    private final List<Node> learners = new ArrayList<>();
    private final TextField name = new TextField();

    LearnerView(final LaptopModel model, final LaptopModel.Who who) {
        name.setAccessibleText(EveningTexts.of("laptop.name"));
        name.getStyleClass().add(Styles.MARK_FIELD);
        for (int number = 1; number <= who.file().names().size(); number++) {
            learners.add(learner(model, who, number));
        }
        // Enter goes on to the numbers: a name alone says not whose numbers are wanted.
        name.setOnAction(event -> learners.get(0).requestFocus());
        final List<Node> parts = new ArrayList<>();
        parts.add(Texts.title(EveningTexts.of("laptop.who")));
        parts.add(Texts.soft(sheet(who)));
        parts.add(Texts.soft(EveningTexts.of("laptop.explained." + who.file().explained().id())));
        parts.add(LaptopPages.trouble(model));
        if (who.file().names().names().stream().anyMatch(String::isEmpty)) {
            parts.add(name());
        }
        parts.add(
                Cards.card(
                        Texts.strong(EveningTexts.of("laptop.number")),
                        Buttons.row(learners.toArray(Node[]::new)),
                        Texts.soft(EveningTexts.of("laptop.who.say"))));
        parts.add(Buttons.row(Buttons.plain(EveningTexts.of("laptop.other-sheet"), model::begin)));
        getChildren().setAll(LaptopPages.page(EveningTexts.of("laptop.who"), parts));
    }

    private static String sheet(final LaptopModel.Who who) {
        return EveningTexts.of(
                "laptop.sheet", "mark", who.sheet().mark(), "problems", who.sheet().problems());
    }

    /** A sheet opened by its mark knows numbers only. */
    private Node name() {
        return Cards.card(
                Texts.strong(EveningTexts.of("laptop.name")),
                Texts.soft(EveningTexts.of("laptop.name.say")),
                name);
    }

    /** Puts the keyboard where one begins: on the name, or on the first learner. */
    void focus() {
        (name.getScene() == null ? learners.get(0) : name).requestFocus();
    }

    private Button learner(final LaptopModel model, final LaptopModel.Who who, final int number) {
        final String label = who.file().names().label(number);
        final Button button = Buttons.plain(label, () -> model.choose(who, number, name.getText()));
        button.setMnemonicParsing(false);
        button.setAccessibleText(EveningTexts.of("laptop.learner", "learner", label));
        return button;
    }
}
