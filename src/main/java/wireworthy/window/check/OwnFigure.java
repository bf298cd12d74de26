package wireworthy.window.check;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import wireworthy.marking.Mark;
import wireworthy.rules.Quantity;
import wireworthy.vehicle.check.Found;
import wireworthy.window.parts.KeptBox;
import wireworthy.window.parts.KeptLabel;
import wireworthy.window.parts.Styles;
import wireworthy.window.parts.Texts;
import wireworthy.window.parts.Verdict;

/** One quantity: what came out, the builder's own figure beside it, its mark under both. */
final class OwnFigure extends KeptBox implements Refreshing {
    private final Entry entry;
    private final Quantity quantity;
    private final Function<Quantity, Optional<Found>> found;
    private final Label value = new KeptLabel("");
    private final TextField field = new TextField();
    private final Told<Said> said = new Told<>(OwnFigure::marked);

    /** What is said of the own figure. */
    private record Said(Optional<Mark> mark, String trouble) {}

    OwnFigure(
            final Entry entry,
            final Quantity quantity,
            final Function<Quantity, Optional<Found>> found) {
        this.entry = entry;
        this.quantity = quantity;
        this.found = found;
        value.getStyleClass().add(Styles.STRONG);
        value.setWrapText(true);
        field.setId(entry.path());
        field.getStyleClass().add(Styles.OWN_FIGURE);
        field.setPromptText(entry.prompt());
        Longest.of(entry).holdFor(field);
        field.setAccessibleText(entry.spoken());
        field.setText(entry.text());
        field.textProperty().subscribe(entry::type);
        field.focusedProperty().subscribe(this::focused);
        getStyleClass().add(Styles.OWN_ROW);
        getChildren().setAll(new OwnLine(Texts.paragraph(quantity.words()), value, field), said);
    }

    private void focused(final boolean focused) {
        if (!focused) {
            entry.model().settled();
        }
        refresh();
    }

    @Override
    public void refresh() {
        if (!field.getText().equals(entry.text())) {
            field.setText(entry.text());
        }
        value.setText(
                found.apply(quantity)
                        .map(Found::text)
                        .filter(text -> !text.isEmpty())
                        .orElseGet(() -> CheckTexts.of("not-yet")));
        said.show(
                new Said(
                        entry.mark(), entry.troubled() && !field.isFocused() ? entry.under() : ""));
    }

    private static List<Line> marked(final Said said) {
        if (!said.trouble().isEmpty()) {
            return List.of(Line.notice(Verdict.CAUTION, said.trouble()));
        }
        return said.mark().map(OwnFigure::marked).map(List::of).orElse(List.of());
    }

    private static Line marked(final Mark mark) {
        if (mark.isSound() && !mark.isPlainlySound()) {
            return Line.notice(Verdict.SOUND, mark.explanation());
        }
        if (mark.isSound()) {
            return Line.badge(Verdict.SOUND, CheckTexts.of("yours-sound"));
        }
        final boolean lesser = mark.asksBack() || mark.follows();
        return Line.notice(lesser ? Verdict.CAUTION : Verdict.UNSOUND, mark.explanation());
    }
}
