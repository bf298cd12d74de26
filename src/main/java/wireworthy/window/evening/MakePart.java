package wireworthy.window.evening;

import java.util.Optional;
import javafx.scene.Parent;
import javafx.scene.layout.VBox;
import wireworthy.window.Bench;
import wireworthy.window.Shell;

/** A sheet chosen at the left; at the right what comes of it. */
final class MakePart implements EveningPart {
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
        final Parent built = built(made, new PapersModel(shell.background()), shell);
        made.begin();
        return built;
    }

    /** What was built. */
    MakeModel model() {
        return model.orElseThrow();
    }

    private Parent built(
            final MakeModel made, final PapersModel papers, final Shell shell) {
        final VBox form = new MakeForm(made, desk.files(), new TemplateLines(desk, shell.background()));
        return new Bench(
                form,
                EveningTexts.of("make.form"),
                new MadeView(made, papers, desk),
                EveningTexts.of("make.made"));
    }
}
