package wireworthy.window.evening;

import java.util.Optional;
import javafx.scene.Node;
import javafx.scene.Parent;
import javafx.scene.layout.StackPane;
import wireworthy.window.Shell;

/** A sheet answered at a laptop: opened, answered, handed in. */
final class LaptopPart implements EveningPart {
    private final EveningDesk desk;
    private final StackPane page = new StackPane();
    private Optional<LaptopModel> model = Optional.empty();

    LaptopPart(final EveningDesk desk) {
        this.desk = desk;
    }

    @Override
    public String key() {
        return "laptop";
    }

    @Override
    public Parent build(final Shell shell) {
        final LaptopModel built = new LaptopModel(desk, shell.background());
        model = Optional.of(built);
        built.stage().subscribe(this::show);
        built.begin();
        return page;
    }

    /** What was built. */
    LaptopModel model() {
        return model.orElseThrow();
    }

    private void show(final LaptopModel.Stage stage) {
        if (stage instanceof LaptopModel.Opening opening) {
            final OpeningView view = new OpeningView(model(), opening, desk.files());
            put(view, view::focus);
        } else if (stage instanceof LaptopModel.Who who) {
            final LearnerView view = new LearnerView(model(), who);
            put(view, view::focus);
        } else if (stage instanceof LaptopModel.Working working) {
            final WorkView view = new WorkView(model(), working.work(), desk);
            put(view.page(), view::focus);
        } else if (stage instanceof LaptopModel.Ending ending) {
            final EndingView view = new EndingView(model(), ending, desk.files());
            put(view, view::focus);
        }
    }

    /** The keyboard follows where it was on the page before. */
    private void put(final Node node, final Runnable focus) {
        final boolean here = page.isFocusWithin();
        page.getChildren().setAll(node);
        if (here) {
            // Only what is laid out can take the keyboard. On a small screen the first layout puts
            // one page in place of two, and the second lays that out.
            layOut();
            layOut();
            focus.run();
        }
    }

    private void layOut() {
        page.applyCss();
        page.layout();
    }
}
