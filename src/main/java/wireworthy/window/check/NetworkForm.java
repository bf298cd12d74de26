package wireworthy.window.check;

import java.util.stream.IntStream;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.layout.VBox;
import wireworthy.window.parts.Buttons;
import wireworthy.window.parts.KeptBox;
import wireworthy.window.parts.Styles;
import wireworthy.window.parts.Texts;

/** A cable that feeds several places in turn, a row for each stretch. */
final class NetworkForm extends KeptBox implements Refreshing {
    private final VehicleModel model;
    private final int circuit;
    private final NetworkEntries entries;
    private final VBox stretches = new VBox();
    private final Button add = Buttons.plain(CheckTexts.of("add-stretch"), this::add);

    NetworkForm(final VehicleModel model, final int circuit) {
        this.model = model;
        this.circuit = circuit;
        entries = new NetworkEntries(model, circuit);
        stretches.getStyleClass().add(Styles.TIGHT);
        getStyleClass().add(Styles.TIGHT);
        getChildren()
                .setAll(
                        Texts.soft(CheckTexts.of("several.what")),
                        stretches,
                        entries.whole(),
                        Buttons.row(add));
        refresh();
    }

    private void add() {
        model.addStretch(circuit);
        final int last = stretches.getChildren().size() - 1;
        stretches.getChildren().get(last).lookupAll(".text-field").stream()
                .findFirst()
                .ifPresent(Node::requestFocus);
    }

    @Override
    public void refresh() {
        final int count = entries.circuit().stretches().size();
        add.setText(CheckTexts.of(count == 0 ? "add-first-stretch" : "add-stretch"));
        if (stretches.getChildren().size() != count) {
            stretches
                    .getChildren()
                    .setAll(
                            IntStream.range(0, count)
                                    .mapToObj(
                                            it ->
                                                    new StretchForm(
                                                            model, circuit, it, add::requestFocus))
                                    .toList());
        }
        Refresh.all(getChildren());
    }
}
