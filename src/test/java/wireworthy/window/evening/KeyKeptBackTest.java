package wireworthy.window.evening;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.Locale;
import java.util.Set;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Named;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import wireworthy.evening.Sheet;
import wireworthy.evening.Shelf;
import wireworthy.evening.wish.Wish;
import wireworthy.rules.Skill;
import wireworthy.window.Background;

/** On the laptop of a learner who answers a sheet its key is shown only to who leads the class. */
class KeyKeptBackTest {
    private static final Sheet SHEET =
            Wish.USUAL
                    .withWho(Wish.USUAL.who().withOwnNumbers(false))
                    .withSeed(77)
                    .sheet(Shelf.builtIn());

    @TempDir Path folder;

    private EveningDesk desk;
    private LaptopModel laptop;

    @BeforeEach
    void aLearnerBeginsTheSheet() {
        desk = TestDesks.desk(folder, folder);
        laptop = new LaptopModel(desk, Background.atOnce());
        laptop.openMark(SHEET.mark());
        laptop.choose((LaptopModel.Who) laptop.stage().get(), 1, "Wren");
    }

    private MakeModel made(final String typed) {
        final MakeModel model = new MakeModel(desk, Background.atOnce());
        model.begin();
        model.openMark(typed);
        assertThat(model.sheet()).map(Sheet::mark).contains(SHEET.mark());
        return model;
    }

    private ProjectorSetup wall(final String typed) {
        final ProjectorSetup setup = new ProjectorSetup(desk, () -> 5, Background.atOnce());
        setup.mark(typed);
        assertThat(setup.sheet().get()).map(Sheet::mark).contains(SHEET.mark());
        return setup;
    }

    static Stream<Named<UnaryOperator<String>>> writings() {
        return Stream.of(
                Named.of("as printed", it -> it),
                Named.of("small letters", it -> it.toLowerCase(Locale.ROOT)),
                Named.of("without hyphens", it -> it.replace("-", "")),
                Named.of("with spaces", it -> " " + it.replace("-", "  ") + "\t"),
                Named.of("in pairs", it -> it.replace("-", "").replaceAll("(..)", "$1-")));
    }

    @ParameterizedTest
    @MethodSource("writings")
    void howeverItsMarkIsWritten(final UnaryOperator<String> writing) {
        assertThat(made(writing.apply(SHEET.mark())).held().get()).isTrue();
        assertThat(wall(writing.apply(SHEET.mark())).held()).isTrue();
    }

    @Test
    void alsoWhereTheSameNumbersAreAskedForOneLearnerMore() {
        final MakeModel model = made(SHEET.mark());
        model.change(it -> it.withWho(it.who().withCopies(it.who().copies() + 1)));
        assertThat(model.sheet()).map(Sheet::mark).isPresent().get().isNotEqualTo(SHEET.mark());
        assertThat(model.held().get()).isTrue();
    }

    /** Its problems are others, though the lots were drawn alike. */
    @Test
    void aSheetWithoutAnyOfItsProblemsTellsNothing() {
        final MakeModel model = made(SHEET.mark());
        model.change(it -> it.withWanted(it.wanted().withSkills(Set.of(Skill.ENERGY_AND_RUNTIME))));
        assertThat(model.sheet()).isPresent();
        assertThat(model.held().get()).isFalse();
    }

    @Test
    void otherNumbersTellNothing() {
        final MakeModel model = made(SHEET.mark());
        model.change(it -> it.withSeed(78));
        assertThat(model.held().get()).isFalse();
    }

    @Test
    void whoLeadsSeesIt() {
        final MakeModel model = made(SHEET.mark());
        model.lead();
        assertThat(model.held().get()).isFalse();
        assertThat(wall(SHEET.mark()).held()).isFalse();
    }

    @Test
    void onceItIsHandedInItIsShown() {
        final LaptopModel.Working working = (LaptopModel.Working) laptop.stage().get();
        laptop.handIn(working.work(), folder.resolve("stick"));
        assertThat(made(SHEET.mark()).held().get()).isFalse();
        assertThat(wall(SHEET.mark()).held()).isFalse();
    }
}
