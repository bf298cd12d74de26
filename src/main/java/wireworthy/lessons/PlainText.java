package wireworthy.lessons;

import java.util.Arrays;
import org.commonmark.node.AbstractVisitor;
import org.commonmark.node.Code;
import org.commonmark.node.HardLineBreak;
import org.commonmark.node.Node;
import org.commonmark.node.SoftLineBreak;
import org.commonmark.node.Text;

/** The bare words of a piece of text, a line for each paragraph, heading, item or cell. */
public final class PlainText extends AbstractVisitor {
    private final StringBuilder words = new StringBuilder();

    private PlainText() {}

    /** The words of a checked piece of text. */
    public static String of(final Node node) {
        final PlainText text = new PlainText();
        node.accept(text);
        return text.words.toString().strip();
    }

    /** How many words it has. */
    public static int count(final Node node) {
        return (int) Arrays.stream(of(node).split("\\s+")).filter(PlainText::isWord).count();
    }

    private static boolean isWord(final String piece) {
        return piece.chars().anyMatch(Character::isLetterOrDigit);
    }

    @Override
    public void visit(final Text text) {
        words.append(text.getLiteral());
    }

    @Override
    public void visit(final Code code) {
        words.append(code.getLiteral());
    }

    @Override
    public void visit(final SoftLineBreak node) {
        words.append(' ');
    }

    @Override
    public void visit(final HardLineBreak node) {
        words.append(' ');
    }

    @Override
    protected void visitChildren(final Node parent) {
        super.visitChildren(parent);
        if (parent instanceof org.commonmark.node.Block) {
            words.append('\n');
        }
    }
}
