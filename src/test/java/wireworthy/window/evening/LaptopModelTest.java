package wireworthy.window.evening;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import wireworthy.evening.Asked;
import wireworthy.evening.CodeNames;
import wireworthy.evening.Sheet;
import wireworthy.evening.Shelf;
import wireworthy.evening.handin.Explained;
import wireworthy.evening.handin.HandIns;
import wireworthy.evening.handin.SheetFile;
import wireworthy.evening.summary.Summary;
import wireworthy.evening.wish.Wish;
import wireworthy.practice.Exercise;
import wireworthy.practice.Template;
import wireworthy.window.Background;
import wireworthy.window.ExerciseModel;

/** A learner answers a sheet at a laptop and hands it in. */
class LaptopModelTest {
    private static final Shelf SHELF = Shelf.builtIn();
    private static final Sheet SHEET = Wish.USUAL.sheet(SHELF);

    @TempDir Path folder;

    private LaptopModel model;

    @BeforeEach
    void begin() {
        model = fresh();
    }

    private LaptopModel fresh() {
        final LaptopModel other =
                new LaptopModel(
                        TestDesks.desk(folder.resolve("data"), folder), Background.atOnce());
        other.begin();
        return other;
    }

    private SheetWork work(final Explained explained) {
        try {
            final Path file = folder.resolve("sheet.json");
            new SheetFile(SHEET.mark(), explained, new CodeNames(List.of("Finch", "Wren")))
                    .write(file);
            model.openFile(file);
        } catch (final IOException e) {
            throw new java.io.UncheckedIOException(e);
        }
        model.choose((LaptopModel.Who) model.stage().get(), 2, "");
        return work();
    }

    private SheetWork work() {
        return ((LaptopModel.Working) model.stage().get()).work();
    }

    private static List<String> right(final Exercise exercise) {
        return Asked.of(exercise).stream().map(Asked::right).toList();
    }

    @Test
    void aMistypedMarkIsRefusedInWords() {
        model.openMark("ABCD");
        assertThat(model.trouble().get()).contains("no sheet mark");
        assertThat(model.stage().get()).isInstanceOf(LaptopModel.Opening.class);
    }

    @Test
    void aMarkAloneOpensTheSheetForNumbers() {
        model.openMark(SHEET.mark());
        final LaptopModel.Who who = (LaptopModel.Who) model.stage().get();
        assertThat(who.file().names().size()).isEqualTo(12);
        assertThat(who.file().explained()).isEqualTo(Explained.AT_THE_END);
    }

    @Test
    void whoIsKnownByNumberOnlyTypesTheCodeNameThatGoesIntoTheHandIn() {
        model.openMark(SHEET.mark());
        model.choose((LaptopModel.Who) model.stage().get(), 3, " Wren ");
        assertThat(work().learner()).isEqualTo("3 Wren");
        model.handIn(work(), folder.resolve("stick"));
        assertThat(HandIns.read(folder.resolve("stick"), SHEET).taken())
                .singleElement()
                .satisfies(it -> assertThat(it.name()).isEqualTo("Wren"));
    }

    @Test
    void twoNamesAreNotOne() {
        model.openMark(SHEET.mark());
        model.choose((LaptopModel.Who) model.stage().get(), 3, "Wren, Finch");
        assertThat(model.trouble().get())
                .isEqualTo("That is more than one code name. Type only your own.");
    }

    @Test
    void aSheetThatWasHereIsChosenWithoutItsMarkAndItsNamesAreKnown() {
        work(Explained.NOW);
        model.begin();
        final LaptopModel.Opening opening = (LaptopModel.Opening) model.stage().get();
        assertThat(opening.known()).extracting(KnownSheet::mark).containsExactly(SHEET.mark());
        model.openMark(opening.known().get(0).mark());
        final LaptopModel.Who who = (LaptopModel.Who) model.stage().get();
        assertThat(who.file().names().names()).containsExactly("Finch", "Wren");
        assertThat(who.file().explained()).isEqualTo(Explained.NOW);
    }

    @Test
    void allThatWasPutDownIsHandedInAndRight() {
        final SheetWork work = work(Explained.NOT_AT_ALL);
        assertThat(work.learner()).isEqualTo("2 Wren");
        do {
            assertThat(work.keep(work.problem().get(), right(work.exercise()))).isEmpty();
        } while (work.onward());
        assertThat(work.open()).isEmpty();
        model.end(work);
        model.handIn(work, folder.resolve("stick"));
        final HandIns read = HandIns.read(folder.resolve("stick"), SHEET);
        assertThat(read.leftOut()).isEmpty();
        assertThat(read.taken()).containsExactly(work.handIn());
        assertThat(Summary.of(SHEET, read.taken()).slips()).isEmpty();
        assertThat(Summary.of(SHEET, read.taken()).problems())
                .allSatisfy(each -> assertThat(each.wrong()).isZero());
    }

    @Test
    void wordsThatAreNoFigureAreANoteAndStillOpenHereAndAfterARestart() {
        final SheetWork work = work(Explained.NOT_AT_ALL);
        do {
            work.keep(work.problem().get(), right(work.exercise()));
        } while (work.onward());
        final int number = figures(work);
        final List<String> typed = new ArrayList<>(work.handIn().reply(number).get().typed());
        typed.set(0, "about 7 hundredths");
        assertThat(work.keep(number, typed)).isEmpty();
        assertThat(work.note(number)).isPresent();
        assertThat(work.open()).containsExactly(number);
        model = fresh();
        model.goOn(((LaptopModel.Opening) model.stage().get()).begun().get(0));
        assertThat(work().open()).containsExactly(number);
        work().keep(number, right(work().exercise()));
        assertThat(work().open()).isEmpty();
    }

    private static int figures(final SheetWork work) {
        for (int number = 1; number <= work.size(); number++) {
            work.go(number);
            if (work.exercise() instanceof wireworthy.practice.Problem) {
                return number;
            }
        }
        throw new AssertionError("no figure is asked for");
    }

    @Test
    void anAnswerCorrectedAfterTheLastIsFollowedByTheProblemBehindIt() {
        final SheetWork work = work(Explained.AT_THE_END);
        do {
            work.keep(work.problem().get(), right(work.exercise()));
        } while (work.onward());
        work.go(3);
        work.keep(3, right(work.exercise()));
        assertThat(work.onward()).isTrue();
        assertThat(work.problem().get()).isEqualTo(4);
        work.go(work.size());
        assertThat(work.onward()).isFalse();
    }

    @Test
    void afterACrashItGoesOnWhereItStopped() {
        final SheetWork work = work(Explained.AT_THE_END);
        work.keep(1, right(work.exercise()));
        work.wantHelp(3, Asked.count(SHEET.templates().get(2)), true);
        model = fresh();
        final LaptopModel.Opening opening = (LaptopModel.Opening) model.stage().get();
        model.goOn(opening.begun().get(0));
        assertThat(work().handIn()).isEqualTo(work.handIn());
        assertThat(work().problem().get()).isEqualTo(2);
        assertThat(work().sheet().explained()).isEqualTo(Explained.AT_THE_END);
    }

    @Test
    void withExplanationsAtOnceTheFirstAnswerCounts() {
        final SheetWork work = work(Explained.NOW);
        final int answers = right(work.exercise()).size();
        final List<String> first = java.util.Collections.nCopies(answers, "1");
        work.keepFirst(1, first);
        work.keepFirst(1, right(work.exercise()));
        assertThat(work.handIn().reply(1).orElseThrow().typed()).isEqualTo(first);
    }

    @Test
    void onceItWasSaidWhatIsRightNothingCounts() {
        final SheetWork work = work(Explained.AT_THE_END);
        work.keep(1, right(work.exercise()));
        model.handIn(work, folder.resolve("stick"));
        model.lookBack(work);
        work().keepFirst(2, List.of("1"));
        assertThat(work().handIn().reply(2)).isEmpty();
        assertThat(work().tells()).isTrue();
    }

    @Test
    void answersTakenAwayAreGone() {
        final SheetWork work = work(Explained.NOW);
        model.forget(work);
        assertThat(((LaptopModel.Opening) model.stage().get()).begun()).isEmpty();
    }

    @Test
    void afterARestartWhatWasHandedInCanStillBeTakenAwayAndNothingOfItStays() throws IOException {
        final SheetWork work = work(Explained.NOW);
        work.keep(1, right(work.exercise()));
        model.handIn(work, folder.resolve("stick"));
        final Path begun = TestDesks.desk(folder.resolve("data"), folder).folder().sheets();
        Files.writeString(
                begun.resolve("begun/hand-in-" + SHEET.mark() + "-2.json.damaged"), "{\"name\":");
        model = fresh();
        model.goOn(((LaptopModel.Opening) model.stage().get()).begun().get(0));
        final LaptopModel.Ending ending = (LaptopModel.Ending) model.stage().get();
        assertThat(model.wasHandedIn(ending.work())).isTrue();
        model.forget(ending.work());
        assertThat(((LaptopModel.Opening) model.stage().get()).forgotten()).isEqualTo("2 Wren");
        assertThat(begun.resolve("begun")).isEmptyDirectory();
    }

    @Test
    void theSheetStaysAsLongAsSomebodyElseAnswersItHere() {
        final SheetWork wren = work(Explained.NOW);
        model.openMark(SHEET.mark());
        model.choose((LaptopModel.Who) model.stage().get(), 1, "");
        model.forget(wren);
        assertThat(((LaptopModel.Opening) model.stage().get()).begun()).hasSize(1);
    }

    @Test
    void whereNothingCanBeKeptItSaysSoBeforeAnythingIsAnswered() throws IOException {
        Files.writeString(folder.resolve("data"), "a file where the folder should be");
        model.openMark(SHEET.mark());
        model.choose((LaptopModel.Who) model.stage().get(), 1, "");
        assertThat(model.trouble().get()).startsWith("Nothing can be kept in");
        assertThat(model.stage().get()).isInstanceOf(LaptopModel.Who.class);
    }

    @ParameterizedTest
    @ValueSource(ints = {1, 2, 3})
    void answersPutBackAreThoseOfTheHandIn(final int seed) {
        for (final Template template : SHELF.templates(false)) {
            final Exercise exercise =
                    new wireworthy.practice.Draw(new wireworthy.working.Solver())
                            .exercise(template, seed);
            final List<String> typed = right(exercise);
            final ExerciseModel done = model(exercise);
            PutDown.marked(done, typed);
            assertThat(PutDown.of(done)).as(template.fullId()).isEqualTo(typed);
        }
    }

    private static ExerciseModel model(final Exercise exercise) {
        return ExerciseModel.of(exercise, new SheetDesk(Optional::empty), any -> {});
    }
}
