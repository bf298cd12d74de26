package wireworthy.window.figures;

import static org.assertj.core.api.Assertions.assertThat;
import static wireworthy.window.figures.BuiltInFigures.SOLVER;
import static wireworthy.window.figures.Engine.asked;
import static wireworthy.window.figures.Engine.move;
import static wireworthy.window.figures.Engine.near;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import wireworthy.lessons.FigureKind;
import wireworthy.rules.Quantity;

class DaysEnergyTest {
    private static final String TWO_LOADS =
            "\"supply-voltage\": \"12 V\", \"loads\": ["
                    + "{\"name\": \"a\", \"power\": \"45 W\", \"share-of-time\": \"33.3333333333 %\"},"
                    + "{\"name\": \"b\", \"power\": \"9 W\", \"count\": 6,"
                    + " \"share-of-time\": \"16.6666666667 %\"}]";

    private final DaysEnergy model =
            new DaysEnergy(BuiltInFigures.kept(FigureKind.DAYS_ENERGY), SOLVER);

    @ParameterizedTest
    @CsvSource({"15, 6, 2, 15", "55, 14, 16, 35", "0, 1, 1, 0"})
    void whatComesInAndWhatTheBankHoldsIsWhatPlainQuestionsGive(
            final int panel, final int sun, final int engine, final int bank) {
        move(model, panel, sun, engine, bank);
        final DaysEnergy.Shown shown = model.now().get();
        assertThat(shown.sun())
                .isCloseTo(
                        asked(
                                Quantity.DAILY_ENERGY,
                                ("\"array-power\": \"%d W\", \"sun-hours\": \"%s h\","
                                                + " \"array-efficiency\": \"70 %%\"")
                                        .formatted(50 + 10 * panel, sun / 2.0)),
                        near());
        assertThat(shown.engine())
                .isCloseTo(
                        asked(
                                Quantity.CHARGE_ENERGY,
                                ("\"bank-voltage\": \"12 V\", \"charge-current\": \"30 A\","
                                                + " \"charge-time\": \"%s h\","
                                                + " \"charge-efficiency\": \"80 %%\"")
                                        .formatted(engine / 2.0)),
                        near());
        assertThat(shown.usable())
                .isCloseTo(
                        asked(
                                Quantity.USABLE_ENERGY,
                                ("\"bank-voltage\": \"12 V\", \"bank-capacity\": \"%d Ah\","
                                                + " \"usable-share\": \"50 %%\"")
                                        .formatted(50 + 10 * bank)),
                        near());
    }

    @Test
    void whatGoesOutIsWhatAPlainQuestionGives() {
        final double joule = model.now().get().out();
        assertThat(joule / asked(Quantity.DAILY_ENERGY, TWO_LOADS)).isCloseTo(1, near());
        assertThat(model.now().get().loads())
                .extracting(DaysEnergy.Load::wattHours)
                .containsExactly("360 Wh", "216 Wh", "off", "off");
    }

    @Test
    void aDayThatFallsShortSaysHowLongTheBankLasts() {
        // 576 Wh out, 420 Wh in; 1200 Wh usable: 1200 / 156 and 1200 / 576.
        final DaysEnergy.Shown shown = model.now().get();
        assertThat(shown.covered()).isFalse();
        assertThat(shown.verdict())
                .isEqualTo("short by 156 Wh a day: a full bank is down to its limit in 7.69 days");
        assertThat(shown.lasts()).isEqualTo("without any charge it lasts 2.08 days");
        assertThat(shown.days().orElseThrow())
                .isCloseTo(
                        asked(
                                Quantity.DAYS_WITHOUT_CHARGE,
                                "\"usable-energy\": \"1200 Wh\", \"daily-energy\": \"576 Wh\""),
                        near());
    }

    @Test
    void theEngineMakesUpADayWithoutSun() {
        move(model, 15, 0, 4);
        assertThat(model.now().get().sun()).isZero();
        assertThat(model.now().get().verdict())
                .isEqualTo("the day is covered, with 0 Wh left over");
        move(model, 15, 0, 3);
        assertThat(model.now().get().covered()).isFalse();
    }

    @Test
    void withoutSunAndEngineHowLongItLastsIsSaidOnce() {
        move(model, 15, 0, 0);
        assertThat(model.now().get().verdict()).contains("in 2.08 days");
        assertThat(model.now().get().further()).isEmpty();
        assertThat(model.now().get().words()).containsOnlyOnce("2.08 days");
    }

    @Test
    void withNothingOnNothingGoesOut() {
        model.switches().forEach(each -> each.on().set(false));
        assertThat(model.now().get().out()).isZero();
        assertThat(model.now().get().days()).isEmpty();
        assertThat(model.now().get().words()).contains("Nothing is switched on");
    }

    @Test
    void itsWordsSayAllThatIsDrawn() {
        assertThat(model.now().get().words())
                .contains(
                        "fridge, 45 W, 8 h a day: 360 Wh",
                        "house lamps, 6 × 9 W, 4 h a day: 216 Wh",
                        "Together 576 Wh",
                        "420 Wh from the sun",
                        "0 Wh from the alternator",
                        "Short by 156 Wh a day",
                        "200 Ah at 12 V",
                        "50 % may be used",
                        "1200 Wh",
                        "2.08 days");
    }
}
