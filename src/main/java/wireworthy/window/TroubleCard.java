package wireworthy.window;

import java.nio.file.Path;
import javafx.scene.input.Clipboard;
import javafx.scene.input.ClipboardContent;
import wireworthy.window.parts.Buttons;
import wireworthy.window.parts.Texts;

/** Says in plain words that the program went wrong, and where to look; never a stack trace. */
final class TroubleCard extends LaidCard {
    TroubleCard(final Trouble trouble, final Path log, final Runnable goOn) {
        super(
                Buttons.row(
                        Buttons.main(WindowTexts.of("trouble.go-on"), goOn),
                        Buttons.plain(
                                WindowTexts.of("trouble.copy"), () -> copy(trouble.details()))),
                Texts.title(WindowTexts.of("trouble")),
                Texts.paragraph(WindowTexts.of("trouble.say")),
                Texts.paragraph(WindowTexts.of("trouble.code", "code", trouble.code())),
                Texts.soft(WindowTexts.of("trouble.log", "file", log)));
    }

    private static void copy(final String text) {
        final ClipboardContent content = new ClipboardContent();
        content.putString(text);
        Clipboard.getSystemClipboard().setContent(content);
    }
}
