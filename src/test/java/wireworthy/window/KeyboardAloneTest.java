package wireworthy.window;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import java.util.function.Predicate;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Slider;
import javafx.scene.input.KeyCode;
import javafx.stage.Stage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.CleanupMode;
import org.junit.jupiter.api.io.TempDir;
import org.testfx.util.WaitForAsyncUtils;
import wireworthy.practice.Banks;
import wireworthy.practice.Draw;
import wireworthy.practice.Problem;
import wireworthy.record.Answer;
import wireworthy.record.DataFolder;
import wireworthy.record.RecordFile;
import wireworthy.record.SettingsFile;
import wireworthy.record.SettingsKeeper;
import wireworthy.record.SumsInUse;
import wireworthy.window.parts.SideList;
import wireworthy.working.Solver;
import wireworthy.working.Telling;

/** From the start of the program through a lesson and its questions, and no mouse. */
class KeyboardAloneTest extends WindowTest {
    private static final String LESSON = "power";
    private static final int QUESTIONS = 3;
    private static final int MOST_KEYS = 80;

    // Settings are written a little later, on a thread of their own.
    @TempDir(cleanup = CleanupMode.NEVER)
    private Path home;

    private DataFolder data = new DataFolder(Path.of(""));
    private List<Place> all = List.of();

    @Override
    protected List<Place> places() {
        return all;
    }

    @Override
    public void start(final Stage onStage) {
        data = new DataFolder(home);
        settings = new SettingsKeeper(new SettingsFile(data.settings()));
        final Places places = new Places(data, settings, Evenings.CLOCK, Ahead.begin(data));
        all = places.all();
        window = new MainWindow(all, settings, Background.atOnce());
        places.goBy(window::go);
        stage = onStage;
        stage.setScene(window.scene());
        stage.show();
        window.start();
    }

    @Test
    void aLessonIsReadAndItsQuestionsAreAnswered() {
        assertThat(reads("Before the first sum")).isTrue();
        push(KeyCode.ENTER);
        assertThat(settings.now().chosen()).contains(SumsInUse.USUAL);

        openTheLesson();
        tabTo(Slider.class::isInstance);
        push(KeyCode.RIGHT);
        tabTo(node -> node instanceof Button button && button.getText().equals("Practise these"));
        push(KeyCode.END).push(KeyCode.SPACE);

        for (int i = 0; i < QUESTIONS; i++) {
            answerSoundly();
        }
        assertThat(answers())
                .hasSize(QUESTIONS)
                .allMatch(answer -> answer.sound().orElse(false) && !answer.aided());
    }

    @Test
    void allPlacesAreReachedAndEverythingInThemHasAName() {
        interact(() -> settings.change(it -> it.withSums(SumsInUse.USUAL)));
        for (int i = 0; i < all.size(); i++) {
            push(KeyCode.SHORTCUT, KeyCode.getKeyCode(String.valueOf(i + 1)));
            assertThat(settings.now().leftOff().place()).isEqualTo(all.get(i).id());
            assertThat(Accessibility.unlabelled(window.scene().getRoot()))
                    .as(all.get(i).title())
                    .isEmpty();
        }
        interact(window::changeSums);
        assertThat(Accessibility.unlabelled(window.scene().getRoot())).isEmpty();
    }

    @Test
    void theProblemThatWasLeftIsThereAgainWithItsTopic() {
        interact(() -> settings.change(it -> it.withSums(SumsInUse.USUAL)));
        push(KeyCode.SHORTCUT, KeyCode.DIGIT2);
        final String left = settings.now().leftOff().problem();
        assertThat(left).isNotEmpty();
        settings.close();
        interact(() -> start(stage));
        assertThat(settings.now().leftOff().place()).isEqualTo(PracticePlace.ID);
        assertThat(settings.now().leftOff().problem()).isEqualTo(left);
        assertThat(reads(PracticeTexts.of("left-off"))).isTrue();
    }

    private void openTheLesson() {
        tabTo(SideList.class::isInstance);
        push(KeyCode.HOME);
        for (int i = 0; i < MOST_KEYS && !settings.now().leftOff().lesson().equals(LESSON); i++) {
            push(KeyCode.DOWN);
        }
        WaitForAsyncUtils.waitForFxEvents();
        assertThat(settings.now().leftOff().lesson()).isEqualTo(LESSON);
    }

    private void answerSoundly() {
        final Problem now = problem();
        final double right = now.worked().value(now.asked()).orElseThrow();
        write(Telling.result(now.asked().quantity(), right)).push(KeyCode.ENTER);
        tabTo(node -> node instanceof Button button && button.getText().equals("Next problem"));
        push(KeyCode.SPACE);
    }

    /** The problem in work, drawn again by its name. */
    private Problem problem() {
        final ExerciseName name =
                ExerciseName.read(settings.now().leftOff().problem()).orElseThrow();
        final var template =
                Banks.read(List.of()).template(name.bank(), name.template()).orElseThrow();
        return (Problem) new Draw(new Solver()).exercise(template, name.seed());
    }

    private List<Answer> answers() {
        try (RecordFile record = RecordFile.open(data.answers())) {
            return record.answers("me");
        }
    }

    private void tabTo(final Predicate<Node> wanted) {
        for (int i = 0; i < MOST_KEYS && !wanted.test(focused()); i++) {
            push(KeyCode.TAB);
        }
        assertThat(focused()).matches(wanted);
    }

    private Node focused() {
        return window.scene().getFocusOwner();
    }
}
