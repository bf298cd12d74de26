package wireworthy.window.check;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import javafx.scene.control.Label;
import wireworthy.rules.Quantity;
import wireworthy.vehicle.check.Found;
import wireworthy.window.parts.KeptBox;
import wireworthy.window.parts.Styles;
import wireworthy.window.parts.Texts;

/** What comes out, quantity by quantity, and beside each a field for the builder's own figure. */
final class OwnFigures extends KeptBox implements Refreshing {
    private final List<OwnFigure> rows;

    /**
     * @param found what came out for a quantity; empty while nothing is known
     */
    OwnFigures(
            final EntryList entries,
            final List<Quantity> quantities,
            final Function<Quantity, Optional<Found>> found) {
        rows = quantities.stream().map(it -> new OwnFigure(entries.own(it), it, found)).toList();
        getStyleClass().add(Styles.OWN_SUMS);
        getChildren().setAll(heads());
        getChildren().addAll(rows);
        refresh();
    }

    private static OwnLine heads() {
        final Label yours = head("yours");
        yours.getStyleClass().add(Styles.OWN_FIGURE);
        return new OwnLine(new Label(), head("worked-here"), yours);
    }

    private static Label head(final String key) {
        final Label head = Texts.soft(CheckTexts.of(key));
        head.getStyleClass().add(Styles.SMALL);
        return head;
    }

    @Override
    public void refresh() {
        rows.forEach(OwnFigure::refresh);
    }
}
