package wireworthy.window.evening;

import java.util.List;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.VBox;
import wireworthy.lessons.Figure;
import wireworthy.window.Shell;
import wireworthy.window.SumsNamed;
import wireworthy.window.figures.LiveFigures;
import wireworthy.window.parts.Buttons;
import wireworthy.window.parts.Pages;
import wireworthy.window.parts.Styles;
import wireworthy.window.parts.Texts;
import wireworthy.working.Solver;

/** A live figure alone on the wall, with its handles. */
final class ProjectorFigureView extends ProjectorWall {
    private static final double ACROSS = 47;
    private static final double DOWN = 32;

    /**
     * @param figure by the sums in use
     * @param leave goes back to where this was opened
     */
    ProjectorFigureView(
            final String title,
            final Figure figure,
            final Solver solver,
            final Shell shell,
            final Runnable leave) {
        super(ACROSS, DOWN);
        final VBox page = new VBox(LiveFigures.of(figure, solver));
        page.getStyleClass().addAll(Styles.PAGE, Styles.TIGHT);
        final List<String> sums = SumsNamed.of(figure);
        if (!sums.isEmpty()) {
            page.getChildren().add(Texts.soft(String.join("; ", sums)));
        }
        show(Pages.scroll(title, page));
        final FlowPane row = Buttons.row(Texts.strong(title));
        final Ends ends = ends(shell, leave);
        row.getChildren().addAll(ends.look(), ends.leave());
        row.getStyleClass().add(Styles.PROJECTOR_ROW);
        final VBox bar = new VBox(row);
        bar.getStyleClass().add(Styles.PROJECTOR_BAR);
        setBottom(bar);
        addEventHandler(KeyEvent.KEY_PRESSED, event -> leaveBy(event, leave));
    }

    private static void leaveBy(final KeyEvent event, final Runnable leave) {
        if (event.getCode() == KeyCode.ESCAPE) {
            leave.run();
            event.consume();
        }
    }
}
