package wireworthy.window;

import java.util.function.Consumer;
import java.util.stream.Stream;
import javafx.scene.control.Button;
import wireworthy.practice.Exercise;
import wireworthy.window.parts.Buttons;
import wireworthy.window.parts.Styles;

/** The buttons that lead on from an exercise. */
final class WayOn {
    private final PracticeModel model;
    private final Consumer<Exercise> toLesson;
    private final Runnable toAnswer;

    /**
     * @param toLesson opens the lesson that belongs to an exercise
     * @param toAnswer puts the keyboard where the answer goes
     */
    WayOn(final PracticeModel model, final Consumer<Exercise> toLesson, final Runnable toAnswer) {
        this.model = model;
        this.toLesson = toLesson;
        this.toAnswer = toAnswer;
    }

    /** Another exercise. */
    Button next() {
        return plain(PracticeTexts.of("next"), model::next);
    }

    /** The same kind with new numbers. */
    Button twin() {
        return plain(PracticeTexts.of("twin"), model::twin);
    }

    /** The lesson on what went wrong. */
    Button lesson() {
        return Buttons.plain(
                PracticeTexts.of("lesson"), () -> model.exercise().ifPresent(toLesson));
    }

    /** Does something and puts the keyboard where the answer goes. */
    Button plain(final String does, final Runnable action) {
        return Buttons.plain(
                does,
                () -> {
                    action.run();
                    toAnswer.run();
                });
    }

    /** A button and others after it. */
    static Button[] with(final Button button, final Button... others) {
        return Stream.concat(Stream.of(button), Stream.of(others)).toArray(Button[]::new);
    }

    /** What most people do next; Enter stays with the button that marks. */
    static Button first(final Button button) {
        button.getStyleClass().setAll("button", Styles.MAIN);
        return button;
    }
}
