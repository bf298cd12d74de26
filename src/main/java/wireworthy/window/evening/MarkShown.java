package wireworthy.window.evening;

import javafx.scene.AccessibleRole;
import javafx.scene.layout.FlowPane;
import wireworthy.window.parts.Styles;
import wireworthy.window.parts.Texts;

/** A sheet mark in large signs; where it takes several rows no group of it is parted. */
final class MarkShown extends FlowPane {
    private static final String AFTER_HYPHEN = "(?<=-)";

    MarkShown(final String mark) {
        setAccessibleRole(AccessibleRole.TEXT);
        setAccessibleText(mark);
        for (final String group : mark.split(AFTER_HYPHEN, -1)) {
            getChildren().add(Texts.title(group));
        }
        getStyleClass().add(Styles.SHEET_MARK);
    }
}
