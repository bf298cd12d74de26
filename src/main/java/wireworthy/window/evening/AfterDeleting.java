package wireworthy.window.evening;

import java.nio.file.Path;
import java.util.List;
import javafx.scene.Node;
import wireworthy.window.parts.Cards;
import wireworthy.window.parts.Texts;

/** What is kept where, and the hand-ins deleted from there. */
final class AfterDeleting {
    private final AfterModel model;
    private final String sure;

    /**
     * @param sure the key of what is asked before
     */
    private AfterDeleting(final AfterModel model, final String sure) {
        this.model = model;
        this.sure = sure;
    }

    /** Of all files of a sheet. */
    static Node ofSheet(final AfterModel model, final Path folder) {
        return new AfterDeleting(model, "delete.sure").card(folder);
    }

    /** Of damaged files that no sheet can be told of. */
    static Node ofDamaged(final AfterModel model, final Path folder) {
        return new AfterDeleting(model, "delete.sure.damaged").card(folder);
    }

    /** Files that are gone can't be brought back, so it is asked once. */
    private Node card(final Path folder) {
        return Cards.card(
                Texts.subtitle(AfterTexts.of("kept")),
                Texts.paragraph(AfterTexts.of("kept.say", "folder", folder)),
                new AskFirst(
                        AfterTexts.of("delete", "count", model.deletable()),
                        this::question,
                        AfterTexts.of("delete.keep"),
                        AfterTexts.of("delete.do"),
                        model::delete));
    }

    private String question() {
        final List<String> damaged = model.damaged();
        final String words = AfterTexts.of(sure, "count", model.deletable());
        return damaged.isEmpty()
                ? words
                : words
                        + " "
                        + AfterTexts.of("delete.damaged", "files", String.join(", ", damaged));
    }
}
