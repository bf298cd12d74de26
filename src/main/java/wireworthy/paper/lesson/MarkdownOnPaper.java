package wireworthy.paper.lesson;

import org.commonmark.ext.gfm.tables.TableBlock;
import org.commonmark.ext.gfm.tables.TableCell;
import org.commonmark.ext.gfm.tables.TableRow;
import org.commonmark.node.AbstractVisitor;
import org.commonmark.node.BlockQuote;
import org.commonmark.node.BulletList;
import org.commonmark.node.Code;
import org.commonmark.node.CustomBlock;
import org.commonmark.node.CustomNode;
import org.commonmark.node.Emphasis;
import org.commonmark.node.HardLineBreak;
import org.commonmark.node.Heading;
import org.commonmark.node.ListItem;
import org.commonmark.node.Node;
import org.commonmark.node.OrderedList;
import org.commonmark.node.Paragraph;
import org.commonmark.node.SoftLineBreak;
import org.commonmark.node.StrongEmphasis;
import org.commonmark.node.Text;
import wireworthy.paper.Block;
import wireworthy.rules.FigureAndUnit;

/** Puts a checked piece of Markdown on paper; of a link its words are left. */
final class MarkdownOnPaper extends AbstractVisitor {
    private Block page;

    private MarkdownOnPaper(final Block page) {
        this.page = page;
    }

    static void into(final Block page, final Node document) {
        document.accept(new MarkdownOnPaper(page));
    }

    private void inside(final String tag, final Node node) {
        final Block around = page;
        page = around.add(tag);
        visitChildren(node);
        page = around;
    }

    @Override
    public void visit(final Heading heading) {
        inside(heading.getLevel() == 1 ? "h2" : "h3", heading);
    }

    @Override
    public void visit(final Paragraph paragraph) {
        inside("p", paragraph);
    }

    @Override
    public void visit(final BulletList list) {
        inside("ul", list);
    }

    @Override
    public void visit(final OrderedList list) {
        inside("ol", list);
    }

    @Override
    public void visit(final ListItem item) {
        inside("li", item);
    }

    @Override
    public void visit(final BlockQuote quote) {
        inside("blockquote", quote);
    }

    /** A table; its head and body are left out, since rows and cells say enough. */
    @Override
    public void visit(final CustomBlock block) {
        if (block instanceof TableBlock) {
            inside("table", block);
        } else {
            visitChildren(block);
        }
    }

    @Override
    public void visit(final CustomNode node) {
        if (node instanceof TableRow) {
            inside("tr", node);
        } else if (node instanceof TableCell cell) {
            inside(cell.isHeader() ? "th" : "td", cell);
        } else {
            visitChildren(node);
        }
    }

    @Override
    public void visit(final Emphasis emphasis) {
        inside("em", emphasis);
    }

    @Override
    public void visit(final StrongEmphasis strong) {
        inside("strong", strong);
    }

    @Override
    public void visit(final Code code) {
        page.say("strong", code.getLiteral());
    }

    @Override
    public void visit(final Text text) {
        page.text(FigureAndUnit.kept(text.getLiteral()));
    }

    @Override
    public void visit(final SoftLineBreak lineBreak) {
        page.text(" ");
    }

    @Override
    public void visit(final HardLineBreak lineBreak) {
        page.add("br");
    }
}
