package wireworthy.window.evening;

import java.util.function.Supplier;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.layout.VBox;
import wireworthy.window.IntoView;
import wireworthy.window.parts.Buttons;
import wireworthy.window.parts.Notice;
import wireworthy.window.parts.Styles;
import wireworthy.window.parts.Verdict;

/**
 * A button for what can't be undone: pressed, it asks first, and the keyboard lies on what changes
 * nothing.
 */
final class AskFirst extends VBox {
    private final Button begin;
    private final Supplier<String> question;
    private final String keep;
    private final String act;
    private final Runnable action;

    /**
     * @param begin the words on the button
     * @param question what would be done
     * @param keep the words on the button that changes nothing
     * @param act the words on the one that does it
     */
    AskFirst(
            final String begin,
            final Supplier<String> question,
            final String keep,
            final String act,
            final Runnable action) {
        this.begin = Buttons.plain(begin, this::ask);
        this.question = question;
        this.keep = keep;
        this.act = act;
        this.action = action;
        getStyleClass().add(Styles.TIGHT);
        getChildren().setAll(Buttons.row(this.begin));
    }

    private void ask() {
        final Button harmless = Buttons.plain(keep, this::back);
        final Node choice = Buttons.row(harmless, Buttons.plain(act, this::act));
        getChildren().setAll(new Notice(Verdict.CAUTION, question.get()), choice);
        harmless.requestFocus();
        IntoView.bring(this, choice);
    }

    private void back() {
        getChildren().setAll(Buttons.row(begin));
        begin.requestFocus();
    }

    private void act() {
        back();
        action.run();
    }
}
