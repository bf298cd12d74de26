package wireworthy.window.evening;

import java.util.Optional;
import javafx.scene.Parent;
import javafx.scene.layout.VBox;
import wireworthy.evening.summary.NextWeek;
import wireworthy.window.Bench;
import wireworthy.window.Shell;
import wireworthy.window.parts.Styles;

/** A sheet chosen at the left; at the right what comes of it. */
final class MakePart implements EveningPart {
    /** A drawn circuit at the right needs more room than the form, which is narrow for that. */
    private static final double ROOM_FOR_BOTH = 47.5;

    private final EveningDesk desk;
    private Optional<MakeModel> model = Optional.empty();

    MakePart(final EveningDesk desk) {
        this.desk = desk;
    }

    @Override
    public String key() {
        return "make";
    }

    @Override
    public Parent build(final Shell shell) {
        final MakeModel made = new MakeModel(desk, shell.background());
        model = Optional.of(made);
        final Parent built = built(made, new PapersModel(desk.begun(), shell.background()), shell);
        made.begin();
        return built;
    }

    /** A sheet may have been begun or handed in at the laptop meanwhile. */
    @Override
    public void shown() {
        model().look();
    }

    /** Shows the sheet for next week, once the part is built. */
    void begin(final NextWeek next) {
        model().show(next);
    }

    /** What was built. */
    MakeModel model() {
        return model.orElseThrow();
    }

    private Parent built(final MakeModel made, final PapersModel papers, final Shell shell) {
        final VBox form =
                new MakeForm(made, desk.files(), new TemplateLines(desk, shell.background()));
        final Bench bench =
                new Bench(
                        form,
                        EveningTexts.of("make.form"),
                        new MadeView(made, papers, desk),
                        EveningTexts.of("make.made"),
                        ROOM_FOR_BOTH);
        bench.getStyleClass().add(Styles.MAKE_BENCH);
        return bench;
    }
}
