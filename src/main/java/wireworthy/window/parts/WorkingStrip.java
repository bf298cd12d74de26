package wireworthy.window.parts;

import java.util.List;
import java.util.Optional;
import javafx.scene.layout.VBox;
import wireworthy.marking.Comparison;
import wireworthy.working.Assumed;
import wireworthy.working.Line;
import wireworthy.working.Telling;
import wireworthy.working.Worked;

/** The whole working of a question as a conductor, and under it what was assumed. */
public final class WorkingStrip extends VBox {
    public WorkingStrip(final Worked worked) {
        this(Telling.lines(worked), Assumed.of(worked));
    }

    public WorkingStrip(final List<Line> lines, final List<Assumed> assumed) {
        getStyleClass().add(Styles.WORKING_STRIP);
        getChildren().add(new Conductor(comparison(lines), ""));
        assumed.forEach(
                each ->
                        getChildren()
                                .add(Texts.soft(PartsTexts.of("assumed", "what", each.text()))));
    }

    private static Comparison comparison(final List<Line> lines) {
        return new Comparison(
                lines.stream()
                        .map(line -> new Comparison.Row(line, Optional.empty(), false))
                        .toList());
    }
}
