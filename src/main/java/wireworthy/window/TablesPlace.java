package wireworthy.window;

import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import javafx.scene.Parent;
import javafx.scene.control.TextField;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import wireworthy.facts.FactTable;
import wireworthy.facts.FactTables;
import wireworthy.window.parts.PageView;
import wireworthy.window.parts.Pages;
import wireworthy.window.parts.SideAndPage;
import wireworthy.window.parts.SideList;
import wireworthy.window.parts.Styles;
import wireworthy.window.parts.Texts;

/** Every table the program works by, with its source. */
public final class TablesPlace implements Place {
    static final String ID = "tables";

    private final VBox side = new VBox();
    private final SideAndPage place = new SideAndPage(side, WindowTexts.of("tables.all"));
    private final PageView view = new PageView();
    private final TextField find = new TextField();
    private final SideList<FactTable> list =
            new SideList<>(
                    WindowTexts.of("tables"),
                    table -> Pretty.units(table.title()),
                    TablePage::standing,
                    this::show);
    private List<FactTable> tables = List.of();
    private String wanted;

    /** The table in use is shown first. */
    public TablesPlace(final InUse inUse) {
        wanted = inUse.sums().cableTable();
    }

    @Override
    public String id() {
        return ID;
    }

    @Override
    public String title() {
        return WindowTexts.of("tables");
    }

    @Override
    public Parent build(final Shell shell) {
        find.setId("find-in-tables");
        find.setPromptText(WindowTexts.of("tables.find"));
        find.setAccessibleText(WindowTexts.of("tables.find"));
        find.textProperty().addListener(typed -> filter());
        find.setOnAction(enter -> toPage());
        side.getChildren().setAll(find, list);
        side.getStyleClass().add(Styles.SIDE);
        VBox.setVgrow(list, Priority.ALWAYS);
        shell.background().run(TablesPlace::said, this::fill);
        return place;
    }

    /** Shows a table, now or once the tables are read. */
    public void open(final String id) {
        wanted = id;
        find.clear();
        selectWanted();
    }

    private void toPage() {
        list.requestFocus();
        place.show(view);
    }

    @Override
    public void find() {
        place.showSide();
        find.requestFocus();
    }

    /** Lists the tables that have a text in them. */
    void find(final String text) {
        find.setText(text);
    }

    private static List<FactTable> said() {
        return FactTables.all().stream().map(FactTable::said).toList();
    }

    private void fill(final List<FactTable> all) {
        tables = all;
        filter();
    }

    private void filter() {
        final String text = find.getText().strip().toLowerCase(Locale.ROOT);
        list.getItems().setAll(tables.stream().filter(each -> holds(each, text)).toList());
        selectWanted();
        if (list.getItems().isEmpty() && !tables.isEmpty()) {
            place.show(
                    Pages.page(
                            title(), Texts.paragraph(WindowTexts.of("tables.none", "text", text))));
        }
    }

    /** The table wanted, or the first where the list does not hold it. */
    private void selectWanted() {
        if (!list.choose(each -> each.id().equals(wanted))) {
            list.choose(each -> true);
        }
    }

    private static boolean holds(final FactTable table, final String text) {
        final Stream<String> cells = table.rows().stream().flatMap(List::stream);
        final Stream<String> words =
                Stream.of(
                                Stream.of(table.title(), table.scope(), table.source().title()),
                                table.notes().stream(),
                                table.columns().stream(),
                                cells)
                        .flatMap(each -> each);
        return words.map(Pretty::units)
                .anyMatch(each -> each.toLowerCase(Locale.ROOT).contains(text));
    }

    private void show(final FactTable table) {
        if (find.getText().isBlank()) {
            wanted = table.id();
        }
        view.turnTo(table.title(), new TablePage(table));
        place.show(view);
    }
}
