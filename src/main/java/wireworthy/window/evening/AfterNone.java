package wireworthy.window.evening;

import javafx.scene.layout.VBox;
import wireworthy.window.parts.Notice;
import wireworthy.window.parts.Styles;
import wireworthy.window.parts.Verdict;

/** A folder of which no file counts. */
final class AfterNone extends VBox {
    AfterNone(final AfterState.None none, final AfterModel model) {
        getStyleClass().add(Styles.AFTER);
        final String key = none.leftOut().isEmpty() ? "empty" : "none";
        getChildren()
                .add(
                        new Notice(
                                Verdict.CAUTION,
                                none.trouble().isEmpty()
                                        ? AfterTexts.of(key, "folder", none.folder())
                                        : none.trouble()));
        if (!none.leftOut().isEmpty()) {
            getChildren().add(AfterTables.leftOut(none.leftOut()));
        }
        if (model.deletable() > 0) {
            getChildren().add(AfterDeleting.ofDamaged(model, none.folder()));
        }
    }
}
