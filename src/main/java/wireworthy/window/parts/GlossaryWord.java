package wireworthy.window.parts;

import java.util.Optional;
import javafx.scene.AccessibleRole;
import javafx.scene.Node;
import javafx.scene.Parent;
import javafx.scene.control.Hyperlink;
import javafx.scene.layout.VBox;

/** A word in a text; pressed, it is explained right under its paragraph, pressed again no more. */
final class GlossaryWord extends Hyperlink {
    private final String meaning;
    private Optional<Node> shown = Optional.empty();

    GlossaryWord(final String words, final String meaning) {
        super(words);
        this.meaning = meaning;
        setWrapText(true);
        getStyleClass().add(Styles.GLOSSARY_WORD);
        setAccessibleRole(AccessibleRole.BUTTON);
        say(PartsTexts.of("word.explain"));
        setOnAction(pressed -> turn());
    }

    private void turn() {
        // A link that was used is not drawn otherwise: nothing has been left.
        setVisited(false);
        shown.ifPresentOrElse(this::hide, this::show);
    }

    private void show() {
        final Node text = Texts.paragraph(meaning);
        text.getStyleClass().add(Styles.MEANING);
        paragraph()
                .ifPresent(
                        node -> {
                            final VBox box = (VBox) node.getParent();
                            box.getChildren().add(box.getChildren().indexOf(node) + 1, text);
                            shown = Optional.of(text);
                            say(meaning);
                        });
    }

    private void hide(final Node text) {
        ((VBox) text.getParent()).getChildren().remove(text);
        shown = Optional.empty();
        say(PartsTexts.of("word.explain"));
    }

    /** For a screen reader, which does not see what appears under the paragraph. */
    private void say(final String more) {
        setAccessibleText(getText() + ": " + more);
    }

    /** What this stands in, such as a paragraph, directly in a box of parts under each other. */
    private Optional<Node> paragraph() {
        Node node = this;
        Parent around = getParent();
        while (around != null && !(around instanceof VBox)) {
            node = around;
            around = around.getParent();
        }
        return around == null ? Optional.empty() : Optional.of(node);
    }
}
