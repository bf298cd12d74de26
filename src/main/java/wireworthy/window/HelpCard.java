package wireworthy.window;

import java.util.List;
import javafx.scene.control.Label;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.VBox;
import wireworthy.practice.LineTexts;
import wireworthy.window.parts.Buttons;
import wireworthy.window.parts.Styles;
import wireworthy.window.parts.Texts;

/** The keys of the program on one card. */
final class HelpCard extends VBox {
    HelpCard(final List<Place> places, final Shell shell) {
        getStyleClass().add(Styles.CARD);
        getChildren()
                .addAll(
                        Texts.title("Keys"),
                        keys(places),
                        Texts.paragraph(
                                "Tab goes from one thing to the next, Shift and Tab back. Enter"
                                        + " presses the main button, Esc closes a card like this"
                                        + " one."),
                        Texts.paragraph(LineTexts.of("keys")),
                        Buttons.main("Close", shell::lift));
    }

    private static GridPane keys(final List<Place> places) {
        final GridPane grid = new GridPane();
        grid.getStyleClass().add(Styles.KEYS);
        for (int i = 0; i < places.size(); i++) {
            row(grid, Keys.place(i + 1).getDisplayText(), places.get(i).title());
        }
        row(grid, Keys.STAND.getDisplayText(), StandPlace.TITLE);
        row(grid, Keys.PEOPLE.getDisplayText(), PeoplePlace.TITLE);
        row(grid, Keys.LARGER.getDisplayText(), "Larger text");
        row(grid, Keys.SMALLER.getDisplayText(), "Smaller text");
        row(grid, Keys.USUAL.getDisplayText(), "Usual text size");
        row(grid, Keys.FULL_SCREEN.getDisplayText(), "Fill the screen; Esc gives it back");
        row(grid, Keys.THEME.getDisplayText(), "Light or dark colours");
        row(grid, Keys.QUIT.getDisplayText(), "Close the program");
        row(grid, Keys.HELP.getDisplayText(), "This card");
        return grid;
    }

    private static void row(final GridPane grid, final String key, final String does) {
        final Label label = new Label(key);
        label.getStyleClass().add(Styles.KEY);
        grid.addRow(grid.getRowCount(), label, new Label(does));
    }
}
