package wireworthy.window.check;

import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import javafx.scene.Node;
import javafx.scene.Parent;
import javafx.scene.Scene;
import javafx.scene.layout.VBox;
import wireworthy.rules.Dimension;
import wireworthy.rules.FigureText;
import wireworthy.vehicle.LoadEntry;
import wireworthy.vehicle.check.CheckedLoad;
import wireworthy.window.parts.KeptBox;
import wireworthy.window.parts.Styles;
import wireworthy.window.parts.Texts;

/** Once the circuit is built: the volts measured at each load, beside those predicted. */
final class MeasuredForm extends KeptBox implements Refreshing {
    private final VehicleModel model;
    private final int index;

    MeasuredForm(final VehicleModel model, final int index) {
        this.model = model;
        this.index = index;
        getStyleClass().add(Styles.TIGHT);
        refresh();
    }

    /** The field of such a form that is being typed in; empty where another, or none, is. */
    static Optional<Node> typedIn(final Node results) {
        return Optional.ofNullable(results.getScene())
                .map(Scene::getFocusOwner)
                .filter(MeasuredForm::isIn);
    }

    private static boolean isIn(final Node node) {
        for (Parent at = node.getParent(); at != null; at = at.getParent()) {
            if (at instanceof MeasuredForm) {
                return true;
            }
        }
        return false;
    }

    @Override
    public void refresh() {
        final int count = model.now().circuits().get(index).loads().size();
        if (getChildren().size() != count + 1) {
            getChildren().setAll(Texts.soft(CheckTexts.of("measured.what")));
            IntStream.range(0, count).mapToObj(Row::new).forEach(getChildren()::add);
        }
        getChildren().forEach(row -> Refresh.all(List.of(row)));
    }

    /** One load. */
    private final class Row extends VBox implements Refreshing {
        private final int load;
        private final EntryField field;
        private final Told<Optional<CheckedLoad>> predicted =
                new Told<>(it -> said(it.map(Row::predicted)));
        private final Told<Optional<CheckedLoad.Comparison>> compared =
                new Told<>(it -> said(it.map(CheckedLoad.Comparison::text)));

        Row(final int load) {
            this.load = load;
            field = new EntryField(EntryList.ofLoad(model, index, load, LoadEntry.MEASURED));
            field.setMaxWidth(USE_PREF_SIZE);
            getStyleClass().add(Styles.TIGHT);
            getChildren().setAll(predicted, field, compared);
        }

        @Override
        public void refresh() {
            field.refresh();
            final Optional<CheckedLoad> now =
                    model.checking()
                            .circuit(index)
                            .filter(it -> load < it.loads().size())
                            .map(it -> it.loads().get(load));
            predicted.show(now);
            compared.show(now.flatMap(CheckedLoad::measured));
        }

        private static List<Line> said(final Optional<String> text) {
            return text.map(Line::prose).map(List::of).orElse(List.of());
        }

        private static String predicted(final CheckedLoad load) {
            final String predicted =
                    load.predicted().isPresent()
                            ? FigureText.of(load.predicted().getAsDouble(), Dimension.VOLTAGE)
                            : CheckTexts.of("not-yet");
            return CheckTexts.of("measured.load", "load", load.name(), "volts", predicted);
        }
    }
}
