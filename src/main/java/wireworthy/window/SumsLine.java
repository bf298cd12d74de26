package wireworthy.window;

import java.util.List;
import javafx.scene.control.Hyperlink;
import javafx.scene.layout.VBox;
import javafx.scene.text.Text;
import javafx.scene.text.TextFlow;
import wireworthy.record.SumsInUse;
import wireworthy.window.parts.Styles;
import wireworthy.window.parts.Texts;

/** The line under a result: what it goes by, what is in use, and the way to change that. */
final class SumsLine extends VBox {
    /**
     * @param own the table, limit and margin the result itself goes by; not repeated where they are
     *     those in use
     */
    SumsLine(final List<String> own, final InUse inUse) {
        final SumsInUse sums = inUse.sums();
        getStyleClass().add(Styles.SUMS_LINE);
        if (!isInUse(own, sums)) {
            getChildren()
                    .add(Texts.soft(SumsTexts.of("own", "sums", SumsTexts.joined(own.stream()))));
        }
        final Hyperlink change = new Hyperlink(SumsTexts.of("change"));
        change.setAccessibleText(SumsTexts.of("change.read"));
        change.setOnAction(event -> inUse.change());
        final Text said =
                new Text(Texts.kept(SumsTexts.of("in-use", "sums", SumsTexts.all(sums))) + "  ");
        said.getStyleClass().add(Styles.SOFT);
        getChildren().add(new TextFlow(said, change));
    }

    private static boolean isInUse(final List<String> own, final SumsInUse sums) {
        return SumsTexts.parts(sums).toList().containsAll(own);
    }
}
