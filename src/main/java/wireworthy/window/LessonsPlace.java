package wireworthy.window;

import javafx.scene.Parent;
import wireworthy.window.parts.Pages;
import wireworthy.window.parts.Texts;

/** The lessons. */
final class LessonsPlace implements Place {
    @Override
    public String id() {
        return "lessons";
    }

    @Override
    public String title() {
        return "Lessons";
    }

    @Override
    public Parent build(final Shell shell) {
        return Pages.page("Lessons", Texts.title("Lessons"));
    }
}
