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
    private Runnable focus = () -> {};

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

    @Override
    public void shown() {
        focus.run();
    }

    private void show(final LaptopModel.Stage stage) {
        if (stage instanceof LaptopModel.Opening opening) {
            put(new OpeningView(model(), opening, desk.files()), () -> {});
        } else if (stage instanceof LaptopModel.Who who) {
            put(new LearnerView(model(), who), () -> {});
        } else if (stage instanceof LaptopModel.Working working) {
            final WorkView view = new WorkView(model(), working.work(), desk);
            put(view.page(), view::focus);
            view.focus();
        } else if (stage instanceof LaptopModel.Ending ending) {
            put(new EndingView(model(), ending, desk.files()), () -> {});
        }
    }

    private void put(final Node node, final Runnable toFocus) {
        focus = toFocus;
        page.getChildren().setAll(node);
    }
}
