package wireworthy.window.evening;

import javafx.scene.control.Button;
import javafx.scene.layout.VBox;
import wireworthy.evening.called.CalledGroup;
import wireworthy.evening.called.Origin;
import wireworthy.window.parts.Buttons;
import wireworthy.window.parts.Conductor;
import wireworthy.window.parts.Notice;
import wireworthy.window.parts.Styles;
import wireworthy.window.parts.Texts;

/** Why a figure comes out: what is said of it, over the two workings where they part. */
final class ProjectorWhy extends VBox {
    private final Button back;

    /**
     * @param done goes back to the question
     */
    ProjectorWhy(final CalledGroup group, final Runnable done) {
        final Origin origin = group.origin();
        back = Buttons.plain(ProjectorTexts.of("back"), done);
        getStyleClass().addAll(Styles.PAGE, Styles.TIGHT);
        getChildren()
                .add(new Notice(ProjectorCalled.verdict(origin.kind()), Texts.kept(origin.why())));
        origin.workings()
                .ifPresent(
                        workings ->
                                getChildren()
                                        .add(
                                                new Conductor(
                                                        workings,
                                                        ProjectorTexts.of(
                                                                "what-gives",
                                                                "figure",
                                                                group.answers().get(0).text()))));
        getChildren().add(Buttons.row(back));
    }

    /** The way back. */
    Button back() {
        return back;
    }
}
