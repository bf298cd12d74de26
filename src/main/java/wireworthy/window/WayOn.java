package wireworthy.window;

import java.util.Optional;
import java.util.stream.Stream;
import javafx.scene.Node;
import javafx.scene.control.Button;
import wireworthy.window.parts.Buttons;
import wireworthy.window.parts.Styles;

/** The buttons that lead on from an exercise. */
public final class WayOn {
    private final Runnable onward;
    private final Optional<Runnable> another;
    private final Runnable toLesson;
    private final Runnable toAnswer;

    /**
     * @param onward shows another exercise
     * @param another shows the same kind with new numbers; empty where there is no such thing
     * @param toLesson opens the lesson that belongs to the exercise
     * @param toAnswer puts the keyboard where the answer goes
     */
    public WayOn(
            final Runnable onward,
            final Optional<Runnable> another,
            final Runnable toLesson,
            final Runnable toAnswer) {
        this.onward = onward;
        this.another = another;
        this.toLesson = toLesson;
        this.toAnswer = toAnswer;
    }

    /** The ways on from what is sound. */
    Node sound() {
        return row(Stream.of(next()), twin());
    }

    /** The ways on from what is not: one like it comes first where there is one. */
    Node unsound(final Button... more) {
        return row(twin(), Stream.of(with(next(), more)));
    }

    /** The ways on behind another button. */
    Node after(final Button button) {
        return row(Stream.of(button), Stream.concat(twin(), Stream.of(next())));
    }

    private static Node row(final Stream<Button> before, final Stream<Button> after) {
        final Button[] all = Stream.concat(before, after).toArray(Button[]::new);
        first(all[0]);
        return Buttons.row(all);
    }

    /** Another exercise. */
    Button next() {
        return plain(PracticeTexts.of("next"), onward);
    }

    /** The same kind with new numbers, where there is such a thing. */
    private Stream<Button> twin() {
        return another.map(action -> plain(PracticeTexts.of("twin"), action)).stream();
    }

    /** The lesson on what went wrong. */
    Button lesson() {
        return Buttons.plain(PracticeTexts.of("lesson"), toLesson);
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
