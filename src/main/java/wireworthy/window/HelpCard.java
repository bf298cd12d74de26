package wireworthy.window;

import java.util.List;
import javafx.scene.control.Label;
import javafx.scene.layout.GridPane;
import wireworthy.practice.LineTexts;
import wireworthy.window.check.UndoKeys;
import wireworthy.window.parts.Buttons;
import wireworthy.window.parts.Styles;
import wireworthy.window.parts.Texts;
import wireworthy.window.stand.StandTexts;

/** The keys of the program on one card. */
final class HelpCard extends LaidCard {
    HelpCard(final List<Place> places, final Shell shell) {
        super(
                Buttons.main(WindowTexts.of("close"), shell::lift),
                Texts.title(WindowTexts.of("keys")),
                keys(places),
                Texts.paragraph(WindowTexts.of("keys.tab")),
                Texts.paragraph(LineTexts.of("keys")));
    }

    private static GridPane keys(final List<Place> places) {
        final GridPane grid = new GridPane();
        grid.getStyleClass().add(Styles.KEYS);
        for (int i = 0; i < places.size(); i++) {
            row(grid, Keys.place(i + 1).getDisplayText(), places.get(i).title());
        }
        row(grid, Keys.STAND.getDisplayText(), StandTexts.of("title"));
        row(grid, Keys.PEOPLE.getDisplayText(), PeopleTexts.of("title"));
        row(grid, Keys.LARGER.getDisplayText(), WindowTexts.of("larger"));
        row(grid, Keys.SMALLER.getDisplayText(), WindowTexts.of("smaller"));
        row(grid, Keys.USUAL.getDisplayText(), WindowTexts.of("usual"));
        row(grid, Keys.FULL_SCREEN.getDisplayText(), WindowTexts.of("keys.full-screen"));
        row(grid, Keys.FIND.getDisplayText(), WindowTexts.of("keys.find"));
        row(grid, UndoKeys.UNDO.getDisplayText(), WindowTexts.of("keys.undo"));
        row(grid, UndoKeys.REDO.getDisplayText(), WindowTexts.of("keys.redo"));
        row(grid, Keys.THEME.getDisplayText(), WindowTexts.of("keys.theme"));
        row(grid, Keys.QUIT.getDisplayText(), WindowTexts.of("keys.quit"));
        row(grid, Keys.OTHER.getDisplayText(), PracticeTexts.of("pass-by"));
        row(grid, Keys.HELP.getDisplayText(), WindowTexts.of("keys.help"));
        return grid;
    }

    private static void row(final GridPane grid, final String key, final String does) {
        final Label label = new Label(key);
        label.getStyleClass().add(Styles.KEY);
        grid.addRow(grid.getRowCount(), label, new Label(does));
    }
}
