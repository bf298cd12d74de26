package wireworthy.window.figures;

import static org.assertj.core.api.Assertions.assertThat;
import static wireworthy.window.figures.BuiltInFigures.SOLVER;
import static wireworthy.window.figures.BuiltInFigures.kept;
import static wireworthy.window.figures.Engine.asked;
import static wireworthy.window.figures.Engine.move;
import static wireworthy.window.figures.Engine.near;

import java.util.List;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import wireworthy.lessons.FigureKind;
import wireworthy.rules.Quantity;
import wireworthy.working.Remedies;
import wireworthy.working.Remedy;

/** The four ways out of too much drop, side by side. */
class FourWaysTest {
    private final FourWays model = new FourWays(kept(FigureKind.FOUR_WAYS), SOLVER);

    private String given() {
        return ("\"circuit-current\": \"%s\", \"section\": \"%s\", \"one-way-length\": \"%s\","
                        + " \"supply-voltage\": \"%s\", \"drop-limit\": \"3 %%\","
                        + " \"resistivity\": \"0.0172 ohm mm2/m\", \"cable-table\": \"boat-cable\"")
                .formatted(model.knobs().stream().map(Knob::text).toArray());
    }

    private List<Remedy> remedies() {
        return Remedies.of(SOLVER.widely(Engine.question(Quantity.DROP, given())));
    }

    @ParameterizedTest
    @CsvSource({"88, 2, 60, 0", "200, 3, 120, 0", "295, 0, 190, 1", "150, 1, 90, 1"})
    void theWaysAreTheEnginesRemediesAndEachMeetsTheLimit(
            final int current, final int section, final int length, final int voltage) {
        move(model, current, section, length, voltage);
        final FourWays.Shown shown = model.now().get();
        assertThat(shown.asItIs().drop()).isCloseTo(asked(Quantity.DROP, given()), near());
        assertThat(shown.asItIs().share()).isCloseTo(asked(Quantity.DROP_PERCENT, given()), near());
        assertThat(shown.ways()).hasSameSizeAs(remedies()).hasSizeGreaterThan(2);
        assertThat(shown.ways()).allMatch(Way::within);
        assertThat(shown.ways()).extracting(Way::share).allMatch(share -> share <= 0.03001);
    }

    @Test
    void theCircuitsAreAsManyAsTheRemedySays() {
        final Remedy split = remedies().get(1);
        assertThat(split.text()).contains("over 3 circuits");
        assertThat(model.now().get().ways().get(1).name()).isEqualTo("3 circuits");
    }

    @Test
    void copperIsSectionTimesLengthOutAndBackOfAllCircuits() {
        assertThat(model.now().get().asItIs().copper()).isCloseTo(2.5e-6 * 14, tiny());
        final List<Way> ways = model.now().get().ways();
        assertThat(ways.get(0).copper()).isCloseTo(2.5e-6 * 2 * remedies().get(0).value(), tiny());
        assertThat(ways.get(1).copper()).isCloseTo(3 * 2.5e-6 * 14, tiny());
        assertThat(ways.get(2).copper()).isCloseTo(remedies().get(2).value() * 14, tiny());
        assertThat(ways.get(3).copper()).isCloseTo(2.5e-6 * 14, tiny());
    }

    @Test
    void theSameWattsAtTwiceTheVoltageLoseAQuarterOfTheShare() {
        final FourWays.Shown shown = model.now().get();
        assertThat(shown.ways().get(3).change()).isEqualTo("24 V, 4.65 A");
        assertThat(shown.ways().get(3).share()).isCloseTo(shown.asItIs().share() / 4, near());
    }

    @Test
    void aSizeSoldByGaugeIsCalledByItsGauge() {
        assertThat(model.now().get().ways().get(2).change()).isEqualTo("8 AWG, 8.366 mm²");
    }

    @Test
    void withinTheLimitNothingHasToChange() {
        move(model, 0, 4, 0, 0);
        assertThat(model.now().get().ways()).isEmpty();
        assertThat(model.now().get().words()).contains("nothing has to change");
    }

    @Test
    void theWordsSayEveryFigureThatIsDrawn() {
        final FourWays.Shown shown = model.now().get();
        shown.ways()
                .forEach(
                        way ->
                                assertThat(shown.words())
                                        .contains(
                                                Told.capital(way.name()),
                                                way.change(),
                                                way.dropVolts(),
                                                way.percent(),
                                                way.copperText()));
    }

    @Test
    void noSizeIsOfferedThatOneMayNotChooseByTheTable() {
        final String thinWall =
                "\"circuit-current\": \"20 A\", \"section\": \"8.5 mm2\","
                        + " \"one-way-length\": \"12 m\", \"supply-voltage\": \"12 V\","
                        + " \"cable-table\": \"thin-wall\"";
        assertThat(Remedies.of(SOLVER.widely(Engine.question(Quantity.DROP, thinWall))))
                .filteredOn(remedy -> remedy.id().equals("larger-section"))
                .singleElement()
                .satisfies(
                        remedy -> {
                            assertThat(remedy.quantity()).isEqualTo(Quantity.SECTION_FOR_DROP);
                            assertThat(remedy.text()).contains("no size on offer is as large");
                        });
    }

    private static Offset<Double> tiny() {
        return Offset.offset(1e-12);
    }
}
