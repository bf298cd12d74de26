package wireworthy.window.parts;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import javafx.geometry.Bounds;
import javafx.scene.Node;
import javafx.scene.Scene;
import javafx.scene.control.Hyperlink;
import javafx.scene.layout.VBox;
import javafx.scene.text.Text;
import javafx.scene.text.TextFlow;
import org.commonmark.ext.gfm.tables.TablesExtension;
import org.commonmark.parser.Parser;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import wireworthy.window.FxTest;

/** Markdown as flowing text. */
@FxTest
class MarkdownTextTest {
    private static VBox laidOut(final String markdown, final double width) {
        final org.commonmark.node.Node document =
                Parser.builder()
                        .extensions(List.of(TablesExtension.create()))
                        .build()
                        .parse(markdown);
        final VBox box = new VBox(Markdown.of(document, any -> {}).toArray(Node[]::new));
        new Scene(box, width, 400);
        box.applyCss();
        box.layout();
        return box;
    }

    /** A full stop alone at the beginning of a line looks like a slip of the pen. */
    @ParameterizedTest
    @ValueSource(strings = {".", ",", "; then more", ".) Then more."})
    void whatClosesALinkInAColumnIsNotTornFromIt(final String after) {
        final String row = "| 0 to 10 | [What a fuse is for, and where it sits](lesson:power)";
        for (int width = 150; width < 420; width += 3) {
            final VBox box = laidOut("| time | show |\n|---|---|\n" + row + after + " |", width);
            final Hyperlink link = (Hyperlink) box.lookup(".hyperlink");
            final TextFlow flow = (TextFlow) link.getParent();
            final String last = ((Text) flow.getChildren().get(1)).getText();
            final Bounds next = flow.getChildren().get(1).getBoundsInParent();

            assertThat(last.isEmpty() || last.matches("[\\s\\w].*") || next.getMinX() > 0)
                    .as("\"" + last + "\" at the width " + width)
                    .isTrue();
        }
    }

    @Test
    void aScreenReaderReadsTheLinkAlone() {
        final VBox box = laidOut("| show |\n|---|\n| [Out and back](lesson:circuits). |", 400);
        assertThat(box.lookup(".hyperlink").getAccessibleText()).isEqualTo("Out and back");
    }
}
