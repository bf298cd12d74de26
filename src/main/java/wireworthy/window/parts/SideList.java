package wireworthy.window.parts;

import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.function.Predicate;
import javafx.collections.FXCollections;
import javafx.collections.ListChangeListener;
import javafx.collections.ObservableList;
import javafx.scene.AccessibleAttribute;
import javafx.scene.AccessibleRole;
import javafx.scene.control.ScrollPane;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.VBox;
import org.jspecify.annotations.Nullable;

/**
 * A plain list at the side of a place: titles, each with a note in words under it. Chosen from with
 * the arrows, Page up and down, Home and End, or the mouse. The toolkit's own list is for thousands
 * of entries; making it would be a tenth of what the first place takes.
 */
public final class SideList<T> extends ScrollPane {
    private static final int NONE = -1;

    private final Function<T, String> title;
    private final Function<T, String> note;
    private final Consumer<T> told;
    private final ObservableList<T> items = FXCollections.observableArrayList();
    private final VBox entries = new VBox();
    private int chosen = NONE;
    private boolean outOfView;

    /**
     * @param name for screen readers
     * @param note empty where there is nothing to say
     * @param told whenever another entry is chosen
     */
    public SideList(
            final String name,
            final Function<T, String> title,
            final Function<T, String> note,
            final Consumer<T> told) {
        this.title = title;
        this.note = note;
        this.told = told;
        getStyleClass().add(Styles.SIDE_LIST);
        setContent(entries);
        setFitToWidth(true);
        setHbarPolicy(ScrollBarPolicy.NEVER);
        setFocusTraversable(true);
        setAccessibleRole(AccessibleRole.LIST_VIEW);
        setAccessibleText(name);
        items.addListener((ListChangeListener<T>) change -> fill());
        // Not its viewport, which is another at each turn of the wheel.
        heightProperty().subscribe(any -> keepInView());
        entries.heightProperty().subscribe(any -> keepInView());
        addEventFilter(KeyEvent.KEY_PRESSED, this::press);
    }

    /** What is listed; once it has changed nothing is chosen. */
    public ObservableList<T> getItems() {
        return items;
    }

    /** The chosen entry. */
    public Optional<T> chosen() {
        return chosen == NONE ? Optional.empty() : Optional.of(items.get(chosen));
    }

    /** Chooses the first entry of this kind and brings it into view; false where there is none. */
    public boolean choose(final Predicate<T> wanted) {
        for (int i = 0; i < items.size(); i++) {
            if (wanted.test(items.get(i))) {
                choose(i);
                return true;
            }
        }
        return false;
    }

    /** Says titles and notes anew. */
    public void refresh() {
        for (int i = 0; i < items.size(); i++) {
            entry(i).say(title.apply(items.get(i)), note.apply(items.get(i)));
        }
    }

    private void fill() {
        chosen = NONE;
        entries.getChildren().clear();
        for (int i = 0; i < items.size(); i++) {
            entries.getChildren().add(newEntry(i));
        }
        refresh();
    }

    private SideEntry newEntry(final int index) {
        final SideEntry entry = new SideEntry(index);
        entry.setOnMousePressed(
                press -> {
                    requestFocus();
                    choose(index);
                    press.consume();
                });
        return entry;
    }

    private SideEntry entry(final int index) {
        return (SideEntry) entries.getChildren().get(index);
    }

    private void choose(final int index) {
        keepInView();
        if (index == chosen) {
            return;
        }
        if (chosen != NONE) {
            entry(chosen).choose(false);
        }
        chosen = index;
        entry(index).choose(true);
        notifyAccessibleAttributeChanged(AccessibleAttribute.FOCUS_ITEM);
        told.accept(items.get(index));
    }

    /** With other room or other heights the chosen entry may lie elsewhere. */
    private void keepInView() {
        outOfView = true;
        requestLayout();
    }

    private void press(final KeyEvent event) {
        if (items.isEmpty() || event.isShortcutDown() || event.isAltDown()) {
            return;
        }
        switch (event.getCode()) {
            case UP -> step(event, chosen - 1);
            case DOWN -> step(event, chosen + 1);
            case PAGE_UP -> step(event, chosen - inView());
            case PAGE_DOWN -> step(event, chosen + inView());
            case HOME -> step(event, 0);
            case END -> step(event, items.size() - 1);
            default -> {}
        }
    }

    private void step(final KeyEvent event, final int to) {
        choose(Math.max(0, Math.min(items.size() - 1, to)));
        event.consume();
    }

    /** How many entries have room in the list, at least one. */
    private int inView() {
        final double share = getViewportBounds().getHeight() / entries.getHeight();
        return Math.max(1, (int) (share * items.size()));
    }

    /** The chosen entry is brought into view once all have their heights. */
    @Override
    protected void layoutChildren() {
        super.layoutChildren();
        if (outOfView && chosen != NONE) {
            outOfView = false;
            entries.layout();
            Scrolling.to(this, entry(chosen));
        }
    }

    @Override
    public @Nullable Object queryAccessibleAttribute(
            final AccessibleAttribute attribute, final Object... parameters) {
        return switch (attribute) {
            case ITEM_COUNT -> items.size();
            case ITEM_AT_INDEX -> entries.getChildren().get((Integer) parameters[0]);
            case FOCUS_ITEM -> chosen == NONE ? null : entry(chosen);
            default -> super.queryAccessibleAttribute(attribute, parameters);
        };
    }
}
