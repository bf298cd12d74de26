package wireworthy.window;

import java.util.List;
import javafx.scene.control.TitledPane;
import javafx.scene.layout.VBox;
import wireworthy.window.parts.Styles;
import wireworthy.window.parts.Texts;
import wireworthy.window.parts.Verdict;

/** What of the banks and the record could not be read; folded, so that the question stays near. */
final class Troubles extends TitledPane {
    Troubles(final List<String> troubles) {
        final VBox all = new VBox();
        all.getStyleClass().add(Styles.TIGHT);
        troubles.forEach(trouble -> all.getChildren().add(Texts.soft(trouble)));
        getStyleClass().addAll(Styles.TROUBLES, Verdict.CAUTION.style());
        setText(PracticeTexts.of("troubles", "count", troubles.size()));
        setGraphic(Verdict.CAUTION.icon().node());
        setContent(all);
        setExpanded(false);
        setAnimated(false);
        setWrapText(true);
    }
}
