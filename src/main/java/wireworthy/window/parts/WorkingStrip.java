package wireworthy.window.parts;

import java.util.Optional;
import javafx.scene.layout.VBox;
import wireworthy.marking.Comparison;
import wireworthy.working.Assumed;
import wireworthy.working.Telling;
import wireworthy.working.Worked;

/** The whole working of a question as a conductor, and under it what was assumed. */
public final class WorkingStrip extends VBox {
    public WorkingStrip(final Worked worked) {
        getStyleClass().add(Styles.WORKING_STRIP);
        getChildren().add(new Conductor(lines(worked), ""));
        Assumed.of(worked)
                .forEach(each -> getChildren().add(Texts.soft("Assumed: " + each.text())));
    }

    private static Comparison lines(final Worked worked) {
        return new Comparison(
                Telling.lines(worked).stream()
                        .map(line -> new Comparison.Row(line, Optional.empty(), false))
                        .toList());
    }
}
