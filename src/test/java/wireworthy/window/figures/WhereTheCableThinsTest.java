package wireworthy.window.figures;

import static org.assertj.core.api.Assertions.assertThat;
import static wireworthy.window.figures.BuiltInFigures.SOLVER;
import static wireworthy.window.figures.BuiltInFigures.kept;
import static wireworthy.window.figures.Engine.asked;
import static wireworthy.window.figures.Engine.move;
import static wireworthy.window.figures.Engine.near;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import wireworthy.lessons.FigureKind;
import wireworthy.rules.Quantity;
import wireworthy.working.Caution;
import wireworthy.working.Cautions;

/** The fuses before and at the place where a cable gets thinner. */
class WhereTheCableThinsTest {
    private static final String GIVEN =
            "\"circuit-current\": \"%s\", \"section\": \"%s\", \"fuse\": \"%s\","
                    + " \"margin\": \"1.25\", \"cable-table\": \"thin-wall\"";

    private final WhereTheCableThins model =
            new WhereTheCableThins(kept(FigureKind.WHERE_THE_CABLE_THINS), SOLVER);

    @ParameterizedTest
    @CsvSource({"0, 0, 0, 0, 0", "45, 2, 2, 5, 2", "45, 0, 4, 2, 1", "195, 3, 1, 6, 5"})
    void everyFuseStandsBetweenTheEnginesFloorAndCeiling(
            final int current, final int feed, final int thinner, final int fuse, final int last) {
        model.ticks().get(0).on().set(true);
        move(model, current, feed, thinner, fuse, last);
        holds(model.now().get().board(), 1);
        holds(model.now().get().beforeThinner(), 2);
    }

    private void holds(final Guard guard, final int section) {
        final String given =
                GIVEN.formatted(
                        model.knobs().get(0).text(),
                        model.knobs().get(section).text(),
                        guard.amps());
        assertThat(guard.floor()).isCloseTo(asked(Quantity.FUSE_FLOOR, given), near());
        assertThat(guard.ceiling()).isCloseTo(asked(Quantity.FUSE_CEILING, given), near());
        assertThat(guard.overCable()).isEqualTo(cautioned(given, "fuse-above-cable"));
        assertThat(guard.opensForNothing()).isEqualTo(cautioned(given, "fuse-below-floor"));
    }

    private static boolean cautioned(final String given, final String id) {
        final var question = Engine.question(Quantity.FUSE_CEILING, given);
        return Cautions.of(question, SOLVER.widely(question)).stream()
                .map(Caution::id)
                .anyMatch(id::equals);
    }

    @Test
    void withoutASecondFuseTheThinnerCableIsTheCeilingAndFireIsSaidFirst() {
        final WhereTheCableThins.Shown shown = model.now().get();
        assertThat(shown.guards()).hasSize(1);
        assertThat(shown.board().cable()).isEqualTo("1 mm²");
        assertThat(shown.board().ceiling()).isEqualTo(16.5);
        assertThat(shown.sound()).isFalse();
        assertThat(shown.words())
                .startsWith("Fire: the 25 A fuse at the board is above the 16.5 A")
                .contains("fit a second fuse where the cable gets thinner");
    }

    @Test
    void aSecondFuseLeavesTheFirstOneTheCeilingOfItsOwnCable() {
        model.ticks().get(0).on().set(true);
        final WhereTheCableThins.Shown shown = model.now().get();
        assertThat(shown.board().ceiling()).isEqualTo(39);
        assertThat(shown.beforeThinner().ceiling()).isEqualTo(16.5);
        assertThat(shown.verdict()).isEqualTo("each fuse guards the cable behind it");
    }

    @Test
    void theThinnerOfTheTwoIsTheCeilingWhicheverComesFirst() {
        move(model, 45, 0, 4);
        assertThat(model.now().get().board().cable()).isEqualTo("1.5 mm²");
    }

    @Test
    void fireStandsBeforeAFuseThatOnlyOpensForNothing() {
        model.ticks().get(0).on().set(true);
        move(model, 100, 3, 0, 0, 5);
        assertThat(model.now().get().verdict())
                .startsWith("Fire: the 20 A fuse where the cable thins")
                .contains("The 5 A fuse at the board is below its floor");
        assertThat(model.now().get().words()).contains("take a thicker cable");
    }

    @Test
    void theWordsSayEveryFigureThatIsDrawn() {
        assertThat(model.now().get().words())
                .contains("5 A", "4 mm²", "39 A", "1 mm²", "16.5 A", "25 A", "6.25 A");
    }
}
