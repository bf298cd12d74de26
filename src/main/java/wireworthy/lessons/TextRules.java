package wireworthy.lessons;

import java.util.List;
import java.util.Set;
import java.util.function.Predicate;
import org.commonmark.ext.gfm.tables.TableBlock;
import org.commonmark.ext.gfm.tables.TableBody;
import org.commonmark.ext.gfm.tables.TableCell;
import org.commonmark.ext.gfm.tables.TableHead;
import org.commonmark.ext.gfm.tables.TableRow;
import org.commonmark.node.*;
import wireworthy.facts.FactTables;

/** What running text may hold: nothing that leads out of the program or can't be drawn. */
final class TextRules {
    private static final int DEEPEST = 12;
    private static final Set<Class<? extends Node>> ALLOWED =
            Set.of(
                    Document.class,
                    Heading.class,
                    Paragraph.class,
                    BulletList.class,
                    OrderedList.class,
                    ListItem.class,
                    BlockQuote.class,
                    TableBlock.class,
                    TableHead.class,
                    TableBody.class,
                    TableRow.class,
                    TableCell.class,
                    Text.class,
                    Code.class,
                    Emphasis.class,
                    StrongEmphasis.class,
                    SoftLineBreak.class,
                    HardLineBreak.class,
                    Link.class,
                    LinkReferenceDefinition.class);

    private final Predicate<String> lessonKnown;

    TextRules(final Predicate<String> lessonKnown) {
        this.lessonKnown = lessonKnown;
    }

    /**
     * Lets a piece of text pass, or refuses it.
     *
     * @param linesBefore how many lines of the file stand before the text it was read from
     * @throws Refused naming the line
     */
    void check(final Node top, final int linesBefore) {
        int depth = 0;
        int line = linesBefore + 1;
        Node node = top;
        while (node != null) {
            line = lineOf(node, linesBefore, line);
            check(node, depth, line);
            if (node.getFirstChild() != null) {
                node = node.getFirstChild();
                depth++;
                continue;
            }
            while (node != top && node.getNext() == null) {
                node = node.getParent();
                depth--;
            }
            node = node == top ? null : node.getNext();
        }
    }

    static int lineOf(final Node node, final int linesBefore, final int otherwise) {
        final List<SourceSpan> spans = node.getSourceSpans();
        return spans.isEmpty() ? otherwise : linesBefore + spans.get(0).getLineIndex() + 1;
    }

    private void check(final Node node, final int depth, final int line) {
        if (depth > DEEPEST) {
            throw new Refused(
                    line, "This is nested too deeply", "Use at most a list within a list.");
        }
        if (node instanceof Link link) {
            link(link.getDestination(), line);
        }
        if (!ALLOWED.contains(node.getClass())) {
            throw new Refused(line, what(node), "Write it as plain text, a list or a table.");
        }
    }

    private static String what(final Node node) {
        if (node instanceof HtmlBlock || node instanceof HtmlInline) {
            return "HTML is not shown in a lesson";
        }
        if (node instanceof Image) {
            return "Images are not shown in a lesson";
        }
        if (node instanceof IndentedCodeBlock) {
            return "Lines set in by four spaces are not shown in a lesson";
        }
        return "This kind of Markdown is not shown in a lesson";
    }

    private void link(final String target, final int line) {
        final String id = target.substring(target.indexOf(':') + 1);
        final boolean known =
                Glossary.leadsTo(target)
                        || (target.startsWith("lesson:") && lessonKnown.test(id))
                        || (target.startsWith("table:") && FactTables.ids().contains(id));
        if (!known) {
            throw new Refused(
                    line,
                    "The link \""
                            + Excerpt.of(target)
                            + "\" leads to no lesson, table or word here",
                    "Write lesson:id, table:id or word:id.");
        }
    }
}
