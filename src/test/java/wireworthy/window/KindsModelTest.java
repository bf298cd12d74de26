package wireworthy.window;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import wireworthy.practice.ChoiceProblem;
import wireworthy.practice.SlipHunt;
import wireworthy.record.Answer;
import wireworthy.rules.Quantity;
import wireworthy.rules.Ref;
import wireworthy.rules.Skill;

/** Every kind of exercise without a window: what is marked, what is aided, what is kept. */
class KindsModelTest {
    @TempDir private Path folder;
    private Path file;

    @BeforeEach
    void nobodyHasAnsweredYet() {
        file = folder.resolve("kinds.sqlite");
    }

    private List<Answer> kept() {
        return Kinds.kept(file);
    }

    private static double right(final ExerciseModel model, final Ref ref) {
        return model.exercise().circuit().orElseThrow().value(ref).orElseThrow();
    }

    /** Answers the open part with so many times the sound figure. */
    private static void answer(final PartsModel parts, final double times) {
        final Ref asked = parts.current().exercise().asked();
        parts.current().typed().set("%.6g".formatted(right(parts, asked) * times));
        parts.answer();
    }

    private PartsModel parts() {
        return (PartsModel) Kinds.at(file, Kinds.WHOLE).doing().get().orElseThrow();
    }

    @Test
    void eachPartIsKeptUnderTheSkillOfItsLine() {
        final PartsModel parts = parts();
        answer(parts, 1);
        answer(parts, 1);
        answer(parts, 1);

        assertThat(kept())
                .extracting(Answer::asked, Answer::skill, Answer::sound, Answer::aided)
                .containsExactly(
                        tuple(
                                Optional.of(Quantity.LOAD_CURRENT),
                                Skill.CURRENT_FROM_POWER,
                                Optional.of(true),
                                false),
                        tuple(
                                Optional.of(Quantity.FUSE_FLOOR),
                                Skill.FUSE_FLOOR,
                                Optional.of(true),
                                false),
                        tuple(
                                Optional.of(Quantity.FUSE),
                                Skill.FUSE_CHOICE,
                                Optional.of(true),
                                false));
        assertThat(parts.allSound()).isTrue();
    }

    @Test
    void aSoundPartOpensTheNextAndAWrongOneWaits() {
        final PartsModel parts = parts();
        answer(parts, 1);
        assertThat(parts.opened()).hasSize(2);

        answer(parts, 1.7);
        assertThat(parts.opened()).hasSize(2);
        assertThat(parts.current().beside().get()).isIn(Beside.MARKED, Beside.SETTLING);
        parts.goOn();
        assertThat(parts.opened()).hasSize(3);
    }

    @Test
    void laterPartsAreJudgedByOnesOwnEarlierFigures() {
        final PartsModel parts = parts();
        answer(parts, 0.5);
        parts.goOn();
        answer(parts, 0.5);

        assertThat(parts.onOwnFigures()).isTrue();
        assertThat(parts.opened()).as("it follows, so the next is open").hasSize(3);
        assertThat(kept()).extracting(Answer::sound).last().isEqualTo(Optional.of(true));
        assertThat(parts.allSound()).isFalse();
    }

    @Test
    void whatWasAnsweredStandsInTheLinesOfLaterParts() {
        final PartsModel parts = parts();
        answer(parts, 0.5);
        parts.goOn();
        final LineRow current =
                parts.current().lines().rowFor(Ref.circuit(Quantity.LOAD_CURRENT)).orElseThrow();

        assertThat(current.typed().get())
                .isEqualTo(parts.opened().get(0).lines().answer().typed().get());
        assertThat(LineVerdict.of(current.mark().get().orElseThrow()))
                .isEqualTo(LineVerdict.UNSOUND);
    }

    @Test
    void aChoiceIsKeptWithItsSlipAndASecondOneIsAided() {
        final ChoiceModel choice =
                (ChoiceModel) Kinds.at(file, Kinds.CHOICE).doing().get().orElseThrow();
        choice.answer();
        assertThat(kept()).as("nothing chosen yet").isEmpty();

        choice.chosen().set(wrong(choice));
        choice.answer();
        choice.answer();
        choice.chosen().set(Optional.of(choice.exercise().right()));
        choice.answer();

        assertThat(kept())
                .extracting(Answer::asked, Answer::sound, Answer::aided, Answer::slips)
                .containsExactly(
                        tuple(
                                Optional.empty(),
                                Optional.of(false),
                                false,
                                List.of(List.of("current-used-up"))),
                        tuple(Optional.empty(), Optional.of(true), true, List.of()));
    }

    private static Optional<ChoiceProblem.Option> wrong(final ChoiceModel choice) {
        return choice.exercise().options().stream().filter(it -> !it.right()).findFirst();
    }

    @Test
    void theFirstStepOutOfPlaceIsNamed() {
        final OrderModel order =
                (OrderModel) Kinds.at(file, Kinds.ORDER).doing().get().orElseThrow();
        order.answer();
        order.answer();
        final int out = order.marked().get().orElseThrow().outAt().orElseThrow();

        assertThat(order.order().subList(0, out)).isEqualTo(List.of(0, 1, 2, 3).subList(0, out));
        assertThat(order.order().get(out)).isNotEqualTo(out);
        assertThat(kept()).as("the same order is not marked twice").hasSize(1);
    }

    @Test
    void aStepMovesByOneAndNotBeyondTheEnds() {
        final OrderModel order =
                (OrderModel) Kinds.at(file, Kinds.ORDER).doing().get().orElseThrow();
        final List<Integer> before = List.copyOf(order.order());

        assertThat(order.move(0, -1)).isZero();
        assertThat(order.order()).isEqualTo(before);
        assertThat(order.move(0, 1)).isEqualTo(1);
        assertThat(order.order().subList(0, 2)).containsExactly(before.get(1), before.get(0));
    }

    private static void hunt(final HuntModel hunt, final int row, final double times) {
        final Ref ref = hunt.exercise().rows().get(row).ref();
        hunt.pick(row);
        hunt.figure(row).text().set("%.6g".formatted(right(hunt, ref) * times));
        hunt.answer();
    }

    private HuntModel hunting() {
        return (HuntModel) Kinds.hunting(file).doing().get().orElseThrow();
    }

    @Test
    void theRightRowAndFigureAreKeptUnderTheSkillOfTheRow() {
        final HuntModel hunt = hunting();
        hunt(hunt, hunt.exercise().wrong(), 1);

        assertThat(hunt.found().get()).isEqualTo(HuntModel.Found.BOTH);
        assertThat(kept())
                .extracting(Answer::asked, Answer::skill, Answer::sound, Answer::aided)
                .containsExactly(
                        tuple(
                                Optional.of(Quantity.LOOP_LENGTH),
                                Skill.OUT_AND_BACK_LENGTH,
                                Optional.of(true),
                                false));
        assertThat(hunt.comparison().partsAt()).hasValue(hunt.exercise().wrong());
    }

    @Test
    void aRowThatFollowsIsNotTheOneAndAnotherTryIsAided() {
        final HuntModel hunt = hunting();
        hunt(hunt, hunt.exercise().wrong() + 1, 1);
        assertThat(hunt.found().get()).isEqualTo(HuntModel.Found.TOO_LATE);
        hunt(hunt, hunt.exercise().wrong(), 1.3);
        assertThat(hunt.found().get()).isEqualTo(HuntModel.Found.ROW);
        assertThat(hunt.explanation()).isNotEmpty();

        assertThat(kept())
                .extracting(Answer::sound, Answer::aided)
                .containsExactly(tuple(Optional.of(false), false), tuple(Optional.of(false), true));
    }

    @Test
    void oneLikeItIsOfTheSameKindWithOtherNumbers() {
        final PracticeModel model = Kinds.hunting(file);
        final SlipHunt first = (SlipHunt) model.exercise().orElseThrow();
        model.twin();

        assertThat(model.exercise().orElseThrow()).isInstanceOf(SlipHunt.class);
        assertThat(model.exercise().orElseThrow().text()).isNotEqualTo(first.text());
    }
}
