package wireworthy.window.parts;

import java.util.function.Consumer;
import java.util.function.Function;
import javafx.application.Platform;
import javafx.scene.control.Label;
import javafx.scene.control.ListCell;
import javafx.scene.control.ListView;
import javafx.scene.layout.VBox;
import org.jspecify.annotations.Nullable;

/** A plain list at the side of a place: titles, each with a note in words under it. */
public final class SideList<T> extends ListView<T> {
    private final Function<T, String> title;
    private final Function<T, String> note;

    /**
     * @param name for screen readers
     * @param note empty where there is nothing to say
     * @param chosen told whenever another entry is chosen
     */
    public SideList(
            final String name,
            final Function<T, String> title,
            final Function<T, String> note,
            final Consumer<T> chosen) {
        this.title = title;
        this.note = note;
        getStyleClass().add(Styles.SIDE_LIST);
        setAccessibleText(name);
        setCellFactory(list -> new Entry());
        getSelectionModel()
                .selectedItemProperty()
                .addListener((of, before, now) -> tell(now, chosen));
    }

    /** Brings the chosen entry into view, once the entries have their heights. */
    public void showChosen() {
        Platform.runLater(() -> scrollTo(getSelectionModel().getSelectedIndex()));
    }

    private static <T> void tell(final @Nullable T now, final Consumer<T> chosen) {
        if (now != null) {
            chosen.accept(now);
        }
    }

    private final class Entry extends ListCell<T> {
        private final Label heading = new Label();
        private final Label under = new Label();
        private final VBox box = new VBox(heading, under);

        Entry() {
            heading.setWrapText(true);
            heading.getStyleClass().add(Styles.SIDE_TITLE);
            under.setWrapText(true);
            under.getStyleClass().add(Styles.SIDE_NOTE);
            under.managedProperty().bind(under.visibleProperty());
            setPrefWidth(0);
        }

        @Override
        protected void updateItem(final @Nullable T item, final boolean empty) {
            super.updateItem(item, empty);
            setText("");
            if (empty || item == null) {
                setGraphic(null);
                return;
            }
            heading.setText(title.apply(item));
            under.setText(note.apply(item));
            under.setVisible(!under.getText().isEmpty());
            setAccessibleText(heading.getText() + ", " + under.getText());
            setGraphic(box);
        }

        /** As high as the wrapped texts are; a cell alone would give them one line each. */
        @Override
        protected double computePrefHeight(final double width) {
            final double wide = width < 0 ? getListView().getWidth() : width;
            return isEmpty()
                    ? super.computePrefHeight(width)
                    : snappedTopInset() + box.prefHeight(inside(wide)) + snappedBottomInset();
        }

        @Override
        protected void layoutChildren() {
            super.layoutChildren();
            box.resizeRelocate(
                    snappedLeftInset(),
                    snappedTopInset(),
                    inside(getWidth()),
                    box.prefHeight(inside(getWidth())));
        }

        private double inside(final double width) {
            return width - snappedLeftInset() - snappedRightInset();
        }
    }
}
