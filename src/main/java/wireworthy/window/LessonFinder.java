package wireworthy.window;

import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Supplier;
import javafx.scene.control.TextField;
import wireworthy.lessons.LessonHeading;
import wireworthy.lessons.LessonWords;

/** The field over the contents in which a text of the lessons is looked for. */
final class LessonFinder extends TextField {
    private final Supplier<LessonWords> source;
    private final Background background;
    private final Consumer<List<LessonHeading>> told;
    private Optional<LessonWords> words = Optional.empty();

    /**
     * @param source reads the words; used when something is first looked for
     * @param told the lessons that have the text, whenever it changes
     */
    LessonFinder(
            final Supplier<LessonWords> source,
            final Background background,
            final Consumer<List<LessonHeading>> told) {
        this.source = source;
        this.background = background;
        this.told = told;
        setId("find-in-lessons");
        setPromptText(LessonTexts.of("find"));
        setAccessibleText(LessonTexts.of("find"));
        textProperty().addListener(typed -> look());
    }

    private void look() {
        if (words.isEmpty()) {
            background.run(source, this::take);
        } else {
            say();
        }
    }

    private void take(final LessonWords read) {
        words = Optional.of(read);
        say();
    }

    private void say() {
        words.ifPresent(all -> told.accept(all.with(getText())));
    }

    /** The screen of a lesson that has the text; empty while nothing is looked for. */
    Optional<Integer> screen(final LessonHeading heading) {
        return words.filter(any -> looksFor()).map(all -> all.screen(heading, getText()));
    }

    /** Whether something is looked for. */
    boolean looksFor() {
        return !getText().isBlank();
    }
}
