package wireworthy.window;

import java.nio.file.Path;
import javafx.scene.input.Clipboard;
import javafx.scene.input.ClipboardContent;
import javafx.scene.layout.VBox;
import wireworthy.window.parts.Buttons;
import wireworthy.window.parts.Styles;
import wireworthy.window.parts.Texts;

/** Says in plain words that the program went wrong, and where to look; never a stack trace. */
final class TroubleCard extends VBox {
    TroubleCard(final Trouble trouble, final Path log, final Runnable goOn) {
        getStyleClass().add(Styles.CARD);
        getChildren()
                .addAll(
                        Texts.title("Something went wrong in the program"),
                        Texts.paragraph(
                                "It is the program's fault, not yours. What was saved before is"
                                        + " still there. If it happens again, pass on the details"
                                        + " with what you did just before."),
                        Texts.paragraph("Code: " + trouble.code()),
                        Texts.soft("The details are also written down in " + log),
                        Buttons.row(
                                Buttons.main("Go on", goOn),
                                Buttons.plain("Copy details", () -> copy(trouble.details()))));
    }

    private static void copy(final String text) {
        final ClipboardContent content = new ClipboardContent();
        content.putString(text);
        Clipboard.getSystemClipboard().setContent(content);
    }
}
