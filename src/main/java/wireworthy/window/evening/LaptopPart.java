package wireworthy.window.evening;

import javafx.scene.Parent;
import wireworthy.window.Shell;
import wireworthy.window.parts.Pages;
import wireworthy.window.parts.Texts;

/** Laptop. */
final class LaptopPart implements EveningPart {
    private final EveningDesk desk;

    LaptopPart(final EveningDesk desk) {
        this.desk = desk;
    }

    @Override
    public String key() {
        return "laptop";
    }

    @Override
    public Parent build(final Shell shell) {
        return Pages.page(EveningTexts.of(key()), Texts.title(EveningTexts.of(key())));
    }
}
