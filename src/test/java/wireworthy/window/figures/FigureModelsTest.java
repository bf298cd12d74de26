package wireworthy.window.figures;

import static org.assertj.core.api.Assertions.assertThat;
import static wireworthy.window.figures.BuiltInFigures.SOLVER;
import static wireworthy.window.figures.Engine.asked;
import static wireworthy.window.figures.Engine.move;
import static wireworthy.window.figures.Engine.near;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import wireworthy.lessons.Figure;
import wireworthy.lessons.FigureKind;
import wireworthy.lessons.FigureOption;
import wireworthy.lessons.Handle;
import wireworthy.rules.Quantity;

/** What the figures show is what a plain question gives, wherever the handles stand. */
class FigureModelsTest {
    @ParameterizedTest
    @CsvSource({"0, 0", "24, 0", "57, 1", "117, 2"})
    void theCurrentAtEachVoltage(final int powerStop, final int voltageStop) {
        final PowerCurrentVoltage model =
                new PowerCurrentVoltage(
                        BuiltInFigures.of(FigureKind.POWER_CURRENT_VOLTAGE), SOLVER);
        move(model, powerStop, voltageStop);
        final PowerCurrentVoltage.Shown shown = model.now().get();
        assertThat(shown.voltages()).hasSize(3);
        shown.voltages()
                .forEach(
                        at ->
                                assertThat(at.current())
                                        .isCloseTo(
                                                asked(
                                                        Quantity.LOAD_CURRENT,
                                                        "\"load-power\": \"%s W\", \"supply-voltage\": \"%s V\""
                                                                .formatted(
                                                                        at.power(), at.voltage())),
                                                near()));
        assertThat(shown.voltages().indexOf(shown.chosen())).isEqualTo(voltageStop);
    }

    @Test
    void withTheCurrentHeldThePowerFollowsTheVoltage() {
        final PowerCurrentVoltage model =
                new PowerCurrentVoltage(
                        BuiltInFigures.of(FigureKind.POWER_CURRENT_VOLTAGE), SOLVER);
        model.picks().get(0).chosen().set(place(PowerCurrentVoltage.Held.CURRENT));
        model.knobs().get(1).stop().set(1);
        final PowerCurrentVoltage.Shown shown = model.now().get();
        assertThat(shown.chosen().current()).isCloseTo(4.5, near());
        assertThat(shown.chosen().power())
                .isCloseTo(
                        asked(Quantity.POWER, "\"voltage\": \"24 V\", \"current\": \"4.5 A\""),
                        near());
        assertThat(shown.words()).startsWith("The current is held.").contains("108 W at 24 V");
        model.picks().get(0).chosen().set(place(PowerCurrentVoltage.Held.POWER));
        assertThat(model.now().get().chosen().power()).isCloseTo(108, near());
    }

    @Test
    void onlyWhatIsNotHeldCanBeMoved() {
        final PowerCurrentVoltage model =
                new PowerCurrentVoltage(
                        BuiltInFigures.of(FigureKind.POWER_CURRENT_VOLTAGE), SOLVER);
        final Knob power = model.knobs().get(0);
        final Knob voltage = model.knobs().get(1);
        assertThat(List.of(power.offered().get(), voltage.offered().get()))
                .containsExactly(true, false);
        for (final int held : List.of(1, 2)) {
            model.picks().get(0).chosen().set(held);
            assertThat(List.of(power.offered().get(), voltage.offered().get()))
                    .containsExactly(false, true);
        }
    }

    @Test
    void floorAndCeilingReadAsInTheWorkedExample() {
        final FuseBetween model =
                new FuseBetween(BuiltInFigures.of(FigureKind.FUSE_BETWEEN), SOLVER);
        assertThat(model.now().get().floorAmps()).isEqualTo("11.63 A");
        assertThat(model.now().get().ceilingAmps()).isEqualTo("17.4 A");
        assertThat(model.now().get().words()).contains("rounded up", "rounded down");
    }

    @ParameterizedTest
    @CsvSource({"0, 0, 0", "16, 25, 0", "30, 10, 1", "58, 35, 2"})
    void theCurrentsOnBothSidesOfAConverter(
            final int powerStop, final int efficiencyStop, final int voltageStop) {
        final ConverterCurrent model =
                new ConverterCurrent(BuiltInFigures.of(FigureKind.CONVERTER_CURRENT), SOLVER);
        move(model, powerStop, efficiencyStop, voltageStop);
        final ConverterCurrent.Shown shown = model.now().get();
        assertThat(shown.supply().value())
                .isCloseTo(
                        asked(
                                Quantity.SUPPLY_CURRENT,
                                ("\"load-power\": \"%s W\", \"efficiency\": \"%s %%\","
                                                + " \"supply-voltage\": \"%s V\"")
                                        .formatted(
                                                shown.delivered(),
                                                shown.efficiency() * 100,
                                                shown.voltage())),
                        near());
        assertThat(shown.mains())
                .isCloseTo(
                        asked(
                                Quantity.CURRENT,
                                "\"power\": \"%s W\", \"voltage\": \"230 V\""
                                        .formatted(shown.delivered())),
                        near());
        assertThat(shown.taken())
                .isGreaterThan(shown.delivered())
                .isLessThanOrEqualTo(shown.mostTaken());
    }

    @Test
    void theFeedCarriesWhatItsBranchesCarry() {
        final LampsOnAFeed model =
                new LampsOnAFeed(BuiltInFigures.of(FigureKind.LAMPS_ON_A_FEED), SOLVER);
        model.switches().forEach(each -> each.on().set(true));
        final LampsOnAFeed.Shown shown = model.now().get();
        assertThat(shown.feed())
                .isCloseTo(
                        asked(
                                Quantity.CIRCUIT_CURRENT,
                                "\"supply-voltage\": \"12 V\", \"loads\": ["
                                        + "{\"name\": \"a\", \"power\": \"9 W\", \"count\": 6},"
                                        + "{\"name\": \"b\", \"power\": \"30 W\"},"
                                        + "{\"name\": \"c\", \"power\": \"18 W\"},"
                                        + "{\"name\": \"d\", \"power\": \"21.6 W\"}]"),
                        near());
        assertThat(shown.branches())
                .extracting(LampsOnAFeed.Branch::amps)
                .containsExactly("4.5 A", "2.5 A", "1.5 A", "1.8 A");
        assertThat(shown.branches().get(3).passing()).isCloseTo(1.8, near());
    }

    @Test
    void aLoadSwitchedOffTakesNothingAndTheOthersTheSame() {
        final LampsOnAFeed model =
                new LampsOnAFeed(BuiltInFigures.of(FigureKind.LAMPS_ON_A_FEED), SOLVER);
        model.switches().get(1).on().set(false);
        assertThat(model.now().get().branches())
                .extracting(LampsOnAFeed.Branch::amps)
                .containsExactly("4.5 A", "off", "off", "off");
        model.switches().get(0).on().set(false);
        assertThat(model.now().get().words()).contains("Nothing is switched on");
        assertThat(model.now().get().feed()).isZero();
    }

    @ParameterizedTest
    @CsvSource({"0, 0, 0", "83, 3, 1", "83, 3, 0", "200, 5, 5", "290, 5, 0"})
    void floorCeilingAndTheSmallestFuse(
            final int currentStop, final int sectionStop, final int cablesStop) {
        final FuseBetween model =
                new FuseBetween(BuiltInFigures.of(FigureKind.FUSE_BETWEEN), SOLVER);
        move(model, currentStop, sectionStop, cablesStop);
        final FuseBetween.Shown shown = model.now().get();
        final String given =
                "\"circuit-current\": \"%s\", \"section\": \"%s\", \"bundled\": %d,"
                                .formatted(
                                        model.knobs().get(0).text(),
                                        model.knobs().get(1).text(),
                                        2 * (cablesStop + 1))
                        + " \"cable-table\": \"thin-wall\"";
        assertThat(shown.floor()).isCloseTo(asked(Quantity.FUSE_FLOOR, given), near());
        assertThat(shown.ceiling()).isCloseTo(asked(Quantity.FUSE_CEILING, given), near());
        assertThat(shown.fitting().stream().findFirst().orElse(Double.NaN))
                .isEqualTo(Double.valueOf(asked(Quantity.FUSE, given)));
        assertThat(shown.fitting()).allMatch(each -> each <= shown.ceiling() * (1 + 1e-9));
    }

    @Test
    void everyRatingUpToTheCeilingFits() {
        final FuseBetween model =
                new FuseBetween(BuiltInFigures.of(FigureKind.FUSE_BETWEEN), SOLVER);
        move(model, 83, 3, 0);
        assertThat(model.now().get().fitting()).isEqualTo(List.of(15.0, 20.0, 25.0));
        assertThat(model.now().get().verdict()).isEqualTo("15 A, 20 A and 25 A fit");
    }

    @Test
    void wherePartsMissEachOtherItSaysWhatToChange() {
        final FuseBetween model =
                new FuseBetween(BuiltInFigures.of(FigureKind.FUSE_BETWEEN), SOLVER);
        move(model, 290, 0, 5);
        assertThat(model.now().get().fits()).isFalse();
        assertThat(model.now().get().words())
                .contains("no rating fits", "take a thicker cable", "Never take a fuse above");
    }

    @ParameterizedTest
    @CsvSource({"0, 0, 0, 0", "45, 1, 60, 0", "45, 2, 60, 1", "195, 4, 140, 2"})
    void theDropAlongTheRun(
            final int currentStop, final int sectionStop, final int lengthStop, final int voltage) {
        final VoltsAlongTheRun model =
                new VoltsAlongTheRun(BuiltInFigures.of(FigureKind.VOLTS_ALONG_THE_RUN), SOLVER);
        move(model, currentStop, sectionStop, lengthStop, voltage);
        final VoltsAlongTheRun.Shown shown = model.now().get();
        final String given =
                ("\"circuit-current\": \"%s\", \"section\": \"%s\", \"one-way-length\": \"%s\","
                                + " \"supply-voltage\": \"%s\", \"drop-limit\": \"3 %%\","
                                + " \"resistivity\": \"0.0172 ohm mm2/m\"")
                        .formatted(model.knobs().stream().map(Knob::text).toArray());
        assertThat(shown.drop()).isCloseTo(asked(Quantity.DROP, given), near());
        assertThat(shown.share()).isCloseTo(asked(Quantity.DROP_PERCENT, given), near());
        assertThat(shown.limit()).isCloseTo(0.03 * shown.supply(), near());
        assertThat(shown.left().orElseThrow())
                .isCloseTo(asked(Quantity.VOLTAGE_AT_LOAD, given), near());
    }

    @Test
    void aCableThatTakesAllTheVoltsIsSaidSo() {
        final Map<FigureOption, Handle> handles =
                new EnumMap<>(BuiltInFigures.of(FigureKind.VOLTS_ALONG_THE_RUN).handles());
        handles.put(FigureOption.ONE_WAY_LENGTH, new Handle.Fixed(Quantity.ONE_WAY_LENGTH, 60));
        final VoltsAlongTheRun model =
                new VoltsAlongTheRun(
                        new Figure(FigureKind.VOLTS_ALONG_THE_RUN, handles, ""), SOLVER);
        move(model, 195, 0, 0);
        assertThat(model.now().get().left()).isEmpty();
        assertThat(model.now().get().words()).contains("would take all the volts there are");
    }

    private static int place(final PowerCurrentVoltage.Held held) {
        return List.of(PowerCurrentVoltage.Held.values()).indexOf(held);
    }
}
