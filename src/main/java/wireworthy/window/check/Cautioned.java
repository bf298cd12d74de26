package wireworthy.window.check;

import java.util.List;
import java.util.Locale;
import javafx.scene.Node;
import javafx.scene.layout.VBox;
import wireworthy.window.parts.Notice;
import wireworthy.window.parts.Styles;
import wireworthy.window.parts.Texts;
import wireworthy.window.parts.Verdict;
import wireworthy.working.Caution;
import wireworthy.working.Danger;

/** Cautions as they are said: what each leads to, and why. */
final class Cautioned {
    private Cautioned() {}

    /** All of them in their order: the worst stands first. */
    static List<Node> all(final List<Caution> cautions) {
        return cautions.stream().map(Cautioned::one).toList();
    }

    private static Node one(final Caution caution) {
        final VBox words =
                new VBox(Texts.strong(words(caution.danger())), Texts.paragraph(caution.text()));
        words.getStyleClass().add(Styles.SAYING);
        return new Notice(verdict(caution.danger()), words);
    }

    /** What a danger leads to, as a heading. */
    static String words(final Danger danger) {
        return CheckTexts.of("danger." + danger.name().toLowerCase(Locale.ROOT));
    }

    static Verdict verdict(final Danger danger) {
        return danger == Danger.FIRE ? Verdict.UNSOUND : Verdict.CAUTION;
    }
}
