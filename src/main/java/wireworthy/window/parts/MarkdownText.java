package wireworthy.window.parts;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.function.Consumer;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import javafx.scene.Node;
import javafx.scene.control.Hyperlink;
import javafx.scene.text.Text;
import javafx.scene.text.TextFlow;
import org.commonmark.ext.gfm.tables.TableCell;
import org.commonmark.node.AbstractVisitor;
import org.commonmark.node.Code;
import org.commonmark.node.Emphasis;
import org.commonmark.node.HardLineBreak;
import org.commonmark.node.Link;
import org.commonmark.node.SoftLineBreak;
import org.commonmark.node.StrongEmphasis;
import org.jspecify.annotations.Nullable;
import wireworthy.lessons.Glossary;
import wireworthy.lessons.PlainText;

/** The inline part of a piece of Markdown as one flowing text. */
final class MarkdownText extends AbstractVisitor {
    private static final Pattern CLOSING = Pattern.compile("[.,;:!?)]+");

    private final Consumer<String> follow;
    private final Deque<String> styles = new ArrayDeque<>();
    private final List<Node> parts = new ArrayList<>();

    private MarkdownText(final Consumer<String> follow) {
        this.follow = follow;
    }

    /**
     * The text inside a block.
     *
     * @param follow told where a link leads when it is used
     */
    static TextFlow of(
            final org.commonmark.node.Node block,
            final Consumer<String> follow,
            final String... styles) {
        final MarkdownText text = new MarkdownText(follow);
        text.styles.addAll(List.of(styles));
        text.visitChildren(block);
        final TextFlow flow = new TextFlow(text.parts.toArray(Node[]::new));
        flow.getStyleClass().add(Styles.PROSE_FLOW);
        return flow;
    }

    @Override
    public void visit(final org.commonmark.node.Text text) {
        final String literal = text.getLiteral();
        add(literal.substring(closing(text).length()));
    }

    /**
     * What closes a sentence behind a link of a table. A column may be too narrow for the link; the
     * line that begins behind one is full, so that a full stop would stand alone on the next.
     */
    private static String closing(final org.commonmark.node.@Nullable Node after) {
        if (!(after instanceof org.commonmark.node.Text text)
                || !(text.getParent() instanceof TableCell)
                || !(text.getPrevious() instanceof Link link)
                || Glossary.leadsTo(link.getDestination())) {
            return "";
        }
        final Matcher closing = CLOSING.matcher(text.getLiteral());
        return closing.lookingAt() ? closing.group() : "";
    }

    @Override
    public void visit(final Code code) {
        styled(Styles.STRONG, () -> add(code.getLiteral()));
    }

    @Override
    public void visit(final Emphasis emphasis) {
        Fonts.loadItalic();
        styled(Styles.EMPHASIS, () -> visitChildren(emphasis));
    }

    @Override
    public void visit(final StrongEmphasis strong) {
        styled(Styles.STRONG, () -> visitChildren(strong));
    }

    @Override
    public void visit(final SoftLineBreak lineBreak) {
        add(" ");
    }

    @Override
    public void visit(final HardLineBreak lineBreak) {
        add("\n");
    }

    @Override
    public void visit(final Link link) {
        final String words = PlainText.of(link);
        final String target = link.getDestination();
        parts.add(
                Glossary.leadsTo(target)
                        ? new GlossaryWord(words, Glossary.meaning(target))
                        : leading(words, closing(link.getNext()), target));
    }

    private Hyperlink leading(final String words, final String closing, final String target) {
        final Hyperlink shown = new Hyperlink(words + closing);
        shown.setAccessibleText(words);
        shown.setWrapText(true);
        shown.setOnAction(used -> follow.accept(target));
        return shown;
    }

    private void styled(final String style, final Runnable inside) {
        styles.push(style);
        inside.run();
        styles.pop();
    }

    private void add(final String words) {
        final Text text = new Text(Texts.kept(words));
        text.getStyleClass().add(Styles.PROSE_TEXT);
        text.getStyleClass().addAll(styles);
        parts.add(text);
    }
}
