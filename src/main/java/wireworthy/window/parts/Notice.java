package wireworthy.window.parts;

import javafx.scene.Node;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;

/** A sentence or two that must not be missed: a bar at the left, the sign, and the words. */
public final class Notice extends HBox {
    public Notice(final Verdict verdict, final Node words) {
        this(verdict, verdict.icon(), words);
    }

    /**
     * @param sign another one than is usual for the verdict
     */
    public Notice(final Verdict verdict, final Icon sign, final Node words) {
        super(sign.node(), words);
        getStyleClass().addAll(Styles.NOTICE, verdict.style());
        HBox.setHgrow(words, Priority.ALWAYS);
    }

    public Notice(final Verdict verdict, final String words) {
        this(verdict, Texts.paragraph(words));
    }
}
