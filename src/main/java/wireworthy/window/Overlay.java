package wireworthy.window;

import java.util.Optional;
import javafx.scene.Node;
import javafx.scene.Parent;
import javafx.scene.Scene;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.StackPane;
import wireworthy.window.parts.Styles;

/** Lays one card at a time over the window; meanwhile what is under it cannot be reached. */
final class Overlay extends StackPane {
    private final Parent under;
    private final StackPane veil = new StackPane();
    private Optional<Node> focusBefore = Optional.empty();
    private Optional<Node> focusUnder = Optional.empty();
    private Optional<Parent> cover = Optional.empty();

    Overlay(final Parent under) {
        this.under = under;
        veil.getStyleClass().add(Styles.VEIL);
        veil.setVisible(false);
        getChildren().addAll(under, veil);
        addEventFilter(KeyEvent.KEY_PRESSED, this::closeOnEscape);
    }

    /** Shows the card in place of any other. */
    void lay(final Node card) {
        if (!veil.isVisible()) {
            focusBefore = focused();
        }
        veil.getChildren().setAll(card);
        veil.setVisible(true);
        below().setDisable(true);
        firstButton(card).ifPresent(Node::requestFocus);
    }

    /** Takes the card away and gives the keyboard back to what had it. */
    void lift() {
        veil.setVisible(false);
        veil.getChildren().clear();
        below().setDisable(false);
        focusBefore.ifPresent(Node::requestFocus);
        focusBefore = Optional.empty();
    }

    /** Fills the window with something else until it is uncovered. */
    void cover(final Parent whole) {
        focusUnder = focused();
        cover.ifPresent(getChildren()::remove);
        cover = Optional.of(whole);
        under.setVisible(false);
        getChildren().add(1, whole);
    }

    /** Shows again what was covered, and gives it the keyboard. */
    void uncover() {
        cover.ifPresent(getChildren()::remove);
        cover = Optional.empty();
        under.setVisible(true);
        focusUnder.ifPresent(Node::requestFocus);
        focusUnder = Optional.empty();
    }

    private Optional<Node> focused() {
        return Optional.ofNullable(getScene()).map(Scene::getFocusOwner);
    }

    /** What can be reached while no card lies over the window. */
    private Parent below() {
        return cover.orElse(under);
    }

    /** Whether a card lies over the place in use, or something else fills the window. */
    boolean hides() {
        return isLaid() || cover.isPresent();
    }

    /** Whether a card lies over the window. */
    boolean isLaid() {
        return veil.isVisible();
    }

    private void closeOnEscape(final KeyEvent event) {
        if (isLaid() && event.getCode() == KeyCode.ESCAPE) {
            lift();
            event.consume();
        }
    }

    private static Optional<Node> firstButton(final Node card) {
        return Optional.ofNullable(card.lookup(".button"));
    }
}
