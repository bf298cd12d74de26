package wireworthy.window;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.atomic.AtomicReference;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import wireworthy.lessons.Block;
import wireworthy.practice.Exercise;
import wireworthy.practice.SlipHunt;
import wireworthy.record.Answer;
import wireworthy.record.DataFolder;
import wireworthy.rules.Skill;
import wireworthy.working.Solver;

/** What comes next for the one who learns here. */
class LearnerTest {
    private static final String BANK = "voltage-drop";
    private static final String TEMPLATE = "aisle-strips-drop";

    @TempDir private Path folder;
    private Path file;

    @BeforeEach
    void nothingIsOnRecord() {
        file = folder.resolve("record.sqlite");
    }

    private Learner learner() {
        return learner(Content.BUILT_IN);
    }

    private Learner learner(final Content content) {
        return new Learner(file, new Solver(), Evenings.CLOCK, content);
    }

    private static Attempt attempt(final boolean sound, final String slip) {
        return Attempt.at(Optional.empty(), "1 V", sound, Optional.of(slip));
    }

    private static void keep(final Learner learner, final Exercise exercise) {
        learner.keep(exercise, attempt(false, "one-way-length"), exercise.skill(), false, 1);
    }

    @Test
    void theQuestionsOfALessonAreCountedAndItsTopicIsNamed() {
        final Learner learner = learner();
        learner.want(List.of(new Block.Questions(1, BANK, List.of(TEMPLATE, TEMPLATE))));
        final Trainer.Next first = learner.next(Optional.empty()).orElseThrow();
        final Trainer.Next second = learner.next(Optional.empty()).orElseThrow();

        assertThat(first.why()).isEqualTo("From the lesson, 1 of 2");
        assertThat(second.why()).isEqualTo("From the lesson, 2 of 2");
        assertThat(first.topic()).hasValue(BANK);
        assertThat(learner.next(Optional.empty()).orElseThrow().topic()).isEmpty();
    }

    @Test
    void choosingATopicLeavesTheLesson() {
        final Learner learner = learner();
        learner.want(List.of(new Block.Questions(1, BANK, List.of(TEMPLATE))));
        final PracticeModel model = new PracticeModel(learner);
        model.choose(Optional.of("power"));

        assertThat(model.topic().get()).hasValue("power");
        assertThat(model.exercise().orElseThrow().template().bank()).isEqualTo("power");
    }

    @Test
    void nothingIsShownTwice() {
        final Learner learner = learner();
        final Set<String> texts = new HashSet<>();
        for (int i = 0; i < 60; i++) {
            learner.want(List.of(new Block.Questions(1, BANK, List.of(TEMPLATE))));
            texts.add(learner.next(Optional.empty()).orElseThrow().exercise().text());
        }

        assertThat(texts).hasSize(60);
    }

    @Test
    void nothingOnRecordIsShownAgainAfterANewStart() {
        final Learner before = learner();
        before.want(List.of(new Block.Questions(1, BANK, List.of(TEMPLATE))));
        final Exercise first = before.next(Optional.empty()).orElseThrow().exercise();
        // The number of answers picks the seed, so the next start would begin at the next one.
        final Exercise second = before.twin(first).exercise();
        keep(before, second);
        final Exercise again = learner().twin(first).exercise();

        assertThat(again.text()).isNotEqualTo(second.text());
    }

    @Test
    void slipsOfTheLastSevenDaysAreEvidence() {
        final Learner learner = learner();
        learner.want(List.of(new Block.Questions(1, BANK, List.of(TEMPLATE))));
        assertThat(learner.evidence().recent()).isEmpty();
        keep(learner, learner.next(Optional.empty()).orElseThrow().exercise());

        assertThat(learner.evidence().recent()).containsEntry("one-way-length", 1);
    }

    @Test
    void topicsFollowTheOrderOfTheLessons() {
        final Learner learner =
                learner(
                        new Content(
                                List.of(),
                                () -> List.of("voltage-drop", "current"),
                                Optional::empty));

        assertThat(learner.topics())
                .extracting(Trainer.Topic::id)
                .startsWith("voltage-drop", "current")
                .contains("power");
    }

    @Test
    void banksInTheDataFolderAreReadBesideTheOthersAndTheirTroublesTold() throws IOException {
        final DataFolder data = new DataFolder(folder);
        Files.createDirectories(data.problemBanks());
        Files.writeString(
                data.problemBanks().resolve("ours.json"),
                """
                {"bank": "ours", "title": "Our own", "version": 1, "templates": [
                  {"id": "lamp", "skill": "current-from-power", "difficulty": 0,
                   "text": "A lamp takes {load-power} from {supply-voltage}.",
                   "ask": "What current?", "drawing": "lamp",
                   "given": {"supply-voltage": "12 V",
                             "load-power": {"from": 20, "to": 90, "step": 1, "unit": "W"}},
                   "find": "load-current"}]}
                """);
        Files.writeString(data.problemBanks().resolve("torn.json"), "{\"bank\": ");
        final List<Path> folders = Content.own(data.problemBanks()).stream().toList();
        final Learner learner = learner(new Content(folders, List::of, Optional::empty));

        assertThat(learner.topics()).extracting(Trainer.Topic::title).contains("Our own");
        assertThat(learner.troubles()).singleElement().asString().contains("torn.json");
    }

    @Test
    void withoutAFolderOfOnesOwnThereIsNoTrouble() {
        assertThat(Content.own(new DataFolder(folder).problemBanks())).isEmpty();
        assertThat(learner().troubles()).isEmpty();
    }

    /** A model whose place is kept by the bookmark. */
    private static PracticeModel at(final Learner learner, final AtomicReference<String> mark) {
        return new PracticeModel(
                learner,
                new Bookmark() {
                    @Override
                    public String topic() {
                        return "";
                    }

                    @Override
                    public String problem() {
                        return mark.get();
                    }

                    @Override
                    public void put(final String topic, final String problem) {
                        mark.set(problem);
                    }
                });
    }

    private void practises(final Learner learner, final int problems) {
        final PracticeModel model = new PracticeModel(learner);
        for (int i = 0; i < problems; i++) {
            model.next();
            Practising.answer(model.doing().get().orElseThrow(), true);
        }
    }

    @Test
    void whatWasNotAnsweredIsThereAgainWithItsNumbers() {
        final AtomicReference<String> mark = new AtomicReference<>("");
        final PracticeModel before = at(learner(), mark);
        for (int i = 0; i < 60; i++) {
            before.next();
            final Exercise left = before.exercise().orElseThrow();
            final PracticeModel after = at(learner(), mark);
            after.resume();

            assertThat(after.why().get()).isEqualTo("Where you left off");
            assertThat(after.exercise().orElseThrow().text()).isEqualTo(left.text());
            assertThat(after.exercise().orElseThrow().seed()).isEqualTo(left.seed());
            if (left instanceof SlipHunt hunt) {
                assertThat(((SlipHunt) after.exercise().orElseThrow()).slip().ids())
                        .isEqualTo(hunt.slip().ids());
            }
            Practising.answer(before.doing().get().orElseThrow(), i % 5 > 0);
        }
    }

    @Test
    void whatWasBegunIsNotThereAgainAndThatIsSaid() {
        final AtomicReference<String> mark = new AtomicReference<>("");
        final PracticeModel before = at(learner(), mark);
        before.next();
        Practising.answer(before.doing().get().orElseThrow(), false);
        final PracticeModel after = at(learner(), mark);
        after.resume();
        assertThat(after.why().get())
                .startsWith("The one you left off has an answer on record")
                .contains("The last one went wrong");

        Practising.answer(after.doing().get().orElseThrow(), true);
        final PracticeModel then = at(learner(), mark);
        then.resume();
        assertThat(then.why().get()).doesNotStartWith("The one you left off");
    }

    @Test
    void aHuntNamesAndCountsForTheSkillOfItsSlip() {
        final Learner learner = learner();
        final PracticeModel model = new PracticeModel(learner);
        int others = 0;
        for (int i = 0; i < 150; i++) {
            model.next();
            if (model.exercise().orElseThrow() instanceof SlipHunt hunt) {
                assertThat(model.why().get()).endsWith(": " + hunt.skill().words());
                assertThat(model.skillState()).startsWith(hunt.skill().words());
                Practising.answer(model.doing().get().orElseThrow(), true);
                final List<Answer> kept = learner.record().lately();
                assertThat(kept.get(kept.size() - 1).skill()).isEqualTo(hunt.skill());
                others += hunt.skill() == hunt.template().skill() ? 0 : 1;
            } else {
                Practising.answer(model.doing().get().orElseThrow(), true);
            }
        }
        assertThat(others).isPositive();
    }

    @Test
    void whatIsPassedByDoesNotComeBackBeforeTheNextAnswer() {
        final Learner learner = learner();
        practises(learner, 12);
        final PracticeModel model = new PracticeModel(learner);
        model.next();
        final Set<Skill> skills = new HashSet<>();
        for (int i = 0; i < 8; i++) {
            assertThat(skills.add(model.exercise().orElseThrow().template().skill())).isTrue();
            assertThat(model.why().get()).doesNotStartWith("Nothing else is open");
            model.passBy();
        }
        assertThat(learner.record().lately()).hasSize(12);
    }

    @Test
    void whatWasAnsweredIsNotPassedBy() {
        final PracticeModel model = new PracticeModel(learner());
        model.next();
        final Exercise first = model.exercise().orElseThrow();
        Practising.answer(model.doing().get().orElseThrow(), false);
        model.passBy();

        assertThat(model.exercise().orElseThrow().template()).isEqualTo(first.template());
        assertThat(model.why().get()).startsWith("The last one went wrong");
    }
}
