package wireworthy.window.evening;

import java.nio.file.Path;
import java.util.List;
import javafx.scene.Node;
import javafx.scene.layout.VBox;
import wireworthy.window.parts.Buttons;
import wireworthy.window.parts.Cards;
import wireworthy.window.parts.Notice;
import wireworthy.window.parts.Styles;
import wireworthy.window.parts.Texts;
import wireworthy.window.parts.Verdict;

/** What is kept where, and the hand-ins deleted from there. */
final class AfterDeleting extends VBox {
    private final AfterModel model;
    private final String sure;

    /**
     * @param sure the key of what is said before
     */
    private AfterDeleting(final AfterModel model, final String sure) {
        this.model = model;
        this.sure = sure;
        getStyleClass().add(Styles.TIGHT);
        askLater();
    }

    /** Of all files of a sheet. */
    static Node ofSheet(final AfterModel model, final Path folder) {
        return card(new AfterDeleting(model, "delete.sure"), folder);
    }

    /** Of damaged files that no sheet can be told of. */
    static Node ofDamaged(final AfterModel model, final Path folder) {
        return card(new AfterDeleting(model, "delete.sure.damaged"), folder);
    }

    private static Node card(final AfterDeleting deleting, final Path folder) {
        return Cards.card(
                Texts.subtitle(AfterTexts.of("kept")),
                Texts.paragraph(AfterTexts.of("kept.say", "folder", folder)),
                deleting);
    }

    private void askLater() {
        getChildren()
                .setAll(
                        Buttons.row(
                                Buttons.plain(
                                        AfterTexts.of("delete", "count", model.deletable()),
                                        this::ask)));
    }

    /** Files that are gone can't be brought back, so it is asked once. */
    private void ask() {
        final Node keep = Buttons.plain(AfterTexts.of("delete.keep"), this::askLater);
        getChildren()
                .setAll(
                        new Notice(Verdict.CAUTION, said()),
                        Buttons.row(
                                keep, Buttons.plain(AfterTexts.of("delete.do"), model::delete)));
        keep.requestFocus();
    }

    private String said() {
        final List<String> damaged = model.damaged();
        final String words = AfterTexts.of(sure, "count", model.deletable());
        return damaged.isEmpty()
                ? words
                : words
                        + " "
                        + AfterTexts.of("delete.damaged", "files", String.join(", ", damaged));
    }
}
