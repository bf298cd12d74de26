package wireworthy.window.evening;

import javafx.scene.Parent;
import wireworthy.window.Shell;
import wireworthy.window.parts.Pages;
import wireworthy.window.parts.Texts;

/** Make. */
final class MakePart implements EveningPart {
    private final EveningDesk desk;

    MakePart(final EveningDesk desk) {
        this.desk = desk;
    }

    @Override
    public String key() {
        return "make";
    }

    @Override
    public Parent build(final Shell shell) {
        return Pages.page(EveningTexts.of(key()), Texts.title(EveningTexts.of(key())));
    }
}
