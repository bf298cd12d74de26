package wireworthy.window.parts;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Pane;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import javafx.scene.text.TextFlow;
import org.commonmark.ext.gfm.tables.TableBlock;
import org.commonmark.ext.gfm.tables.TableCell;
import org.commonmark.ext.gfm.tables.TableHead;
import org.commonmark.ext.gfm.tables.TableRow;
import org.commonmark.node.AbstractVisitor;
import org.commonmark.node.BlockQuote;
import org.commonmark.node.BulletList;
import org.commonmark.node.CustomBlock;
import org.commonmark.node.Heading;
import org.commonmark.node.ListItem;
import org.commonmark.node.Node;
import org.commonmark.node.OrderedList;
import org.commonmark.node.Paragraph;
import wireworthy.lessons.PlainText;

/** Draws a checked piece of Markdown as text of our own: no web view, no HTML. */
public final class Markdown extends AbstractVisitor {
    private static final int FIRST = 1;

    /** So many characters in a cell stay on one line. */
    private static final int SHORT = 10;

    private final Consumer<String> follow;
    private final List<javafx.scene.Node> parts = new ArrayList<>();

    private Markdown(final Consumer<String> follow) {
        this.follow = follow;
    }

    /**
     * The blocks of a document, one under the other.
     *
     * @param follow told where a link leads when it is used, such as {@code lesson:power}
     */
    public static List<javafx.scene.Node> of(final Node document, final Consumer<String> follow) {
        final Markdown markdown = new Markdown(follow);
        markdown.visitChildren(document);
        return markdown.parts;
    }

    @Override
    public void visit(final Heading heading) {
        final String style = heading.getLevel() == FIRST ? Styles.TITLE_TEXT : Styles.SUBTITLE_TEXT;
        final TextFlow flow = MarkdownText.of(heading, follow, style);
        flow.getStyleClass().add(Styles.HEADING);
        parts.add(flow);
    }

    @Override
    public void visit(final Paragraph paragraph) {
        parts.add(MarkdownText.of(paragraph, follow));
    }

    @Override
    public void visit(final BulletList list) {
        items(list, 0);
    }

    @Override
    public void visit(final OrderedList list) {
        final Integer start = list.getMarkerStartNumber();
        items(list, start == null ? FIRST : start);
    }

    /** The items of a list, numbered from {@code start}, with dots where that is 0. */
    private void items(final Node list, final int start) {
        int number = start;
        for (Node item = list.getFirstChild(); item != null; item = item.getNext()) {
            if (item instanceof ListItem) {
                parts.add(item(item, start == 0 ? "•" : number + "."));
                number++;
            }
        }
    }

    private HBox item(final Node item, final String marker) {
        final VBox inside = box(item);
        HBox.setHgrow(inside, Priority.ALWAYS);
        final Label mark = new Label(marker);
        mark.setMinWidth(Label.USE_PREF_SIZE);
        final HBox row = new HBox(mark, inside);
        row.getStyleClass().add(Styles.LIST_ITEM);
        return row;
    }

    @Override
    public void visit(final BlockQuote quote) {
        final Pane box = box(quote);
        box.getStyleClass().add(Styles.QUOTE);
        parts.add(box);
    }

    private VBox box(final Node block) {
        return new VBox(of(block, follow).toArray(javafx.scene.Node[]::new));
    }

    @Override
    public void visit(final CustomBlock block) {
        if (block instanceof TableBlock) {
            final PlainTable table = new PlainTable();
            for (Node part = block.getFirstChild(); part != null; part = part.getNext()) {
                rows(part, table);
            }
            parts.add(table);
        }
    }

    private void rows(final Node part, final PlainTable table) {
        for (Node row = part.getFirstChild(); row != null; row = row.getNext()) {
            if (row instanceof TableRow) {
                table.row(part instanceof TableHead, cells(row));
            }
        }
    }

    private List<PlainTable.Cell> cells(final Node row) {
        final List<PlainTable.Cell> cells = new ArrayList<>();
        for (Node cell = row.getFirstChild(); cell != null; cell = cell.getNext()) {
            if (cell instanceof TableCell content) {
                cells.add(cell(content));
            }
        }
        return cells;
    }

    private PlainTable.Cell cell(final TableCell cell) {
        final TextFlow text = MarkdownText.of(cell, follow);
        if (PlainText.of(cell).length() <= SHORT) {
            text.setMinWidth(TextFlow.USE_PREF_SIZE);
        }
        return new PlainTable.Cell(text, cell.getAlignment() == TableCell.Alignment.RIGHT);
    }
}
