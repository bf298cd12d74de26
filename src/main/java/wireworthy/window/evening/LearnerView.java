package wireworthy.window.evening;

import java.util.ArrayList;
import java.util.List;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.layout.StackPane;
import wireworthy.window.parts.Buttons;
import wireworthy.window.parts.Cards;
import wireworthy.window.parts.Texts;

/** Says which learner answers. */
final class LearnerView extends StackPane {
    private final List<Node> learners = new ArrayList<>();

    LearnerView(final LaptopModel model, final LaptopModel.Who who) {
        for (int number = 1; number <= who.file().names().size(); number++) {
            learners.add(learner(model, who, number));
        }
        getChildren()
                .setAll(
                        LaptopPages.page(
                                EveningTexts.of("laptop.who"),
                                List.of(
                                        Texts.title(EveningTexts.of("laptop.who")),
                                        Texts.soft(
                                                EveningTexts.of(
                                                        "laptop.sheet",
                                                        "mark",
                                                        who.sheet().mark(),
                                                        "problems",
                                                        who.sheet().problems())),
                                        LaptopPages.trouble(model),
                                        Cards.card(Buttons.row(learners.toArray(Node[]::new))),
                                        Texts.soft(EveningTexts.of("laptop.who.say")),
                                        Buttons.row(
                                                Buttons.plain(
                                                        EveningTexts.of("laptop.other-sheet"),
                                                        model::begin)))));
    }

    /** Puts the keyboard on the first learner. */
    void focus() {
        learners.get(0).requestFocus();
    }

    private static Button learner(
            final LaptopModel model, final LaptopModel.Who who, final int number) {
        final String label = who.file().names().label(number);
        final Button button = Buttons.plain(label, () -> model.choose(who, number));
        button.setMnemonicParsing(false);
        button.setAccessibleText(EveningTexts.of("laptop.learner", "learner", label));
        return button;
    }
}
