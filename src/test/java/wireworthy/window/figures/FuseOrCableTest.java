package wireworthy.window.figures;

import static org.assertj.core.api.Assertions.assertThat;
import static wireworthy.window.figures.BuiltInFigures.SOLVER;
import static wireworthy.window.figures.Engine.asked;
import static wireworthy.window.figures.Engine.move;
import static wireworthy.window.figures.Engine.near;

import java.util.EnumMap;
import java.util.Map;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import wireworthy.lessons.Figure;
import wireworthy.lessons.FigureKind;
import wireworthy.lessons.FigureOption;
import wireworthy.lessons.Handle;
import wireworthy.rules.Quantity;
import wireworthy.window.parts.Verdict;
import wireworthy.working.Caution;

/** Stops of the handles: fuse, section, insulation, voltage, resistance inside, length. */
class FuseOrCableTest {
    private final FuseOrCable model = new FuseOrCable(figure(), SOLVER);

    private static Figure figure() {
        return BuiltInFigures.kept(FigureKind.FUSE_OR_CABLE);
    }

    @ParameterizedTest
    @CsvSource({
        "2, 2, 0, 0, 8, 9",
        "4, 4, 2, 1, 0, 0",
        "0, 0, 1, 0, 48, 29",
        "3, 1, 2, 2, 20, 4",
        "4, 0, 0, 0, 48, 29"
    })
    void itsTimesAreThoseOfAPlainQuestion(
            final int fuse,
            final int section,
            final int insulation,
            final int voltage,
            final int resistance,
            final int length) {
        move(model, fuse, section, insulation, voltage, resistance, length);
        final String given =
                ("\"fuse\": \"%s\", \"section\": \"%s\", \"insulation-temperature\": \"%s\","
                                + " \"supply-voltage\": \"%s\", \"internal-resistance\": \"%s\","
                                + " \"one-way-length\": \"%s\","
                                + " \"resistivity\": \"0.0172 ohm mm2/m\","
                                + " \"fuse-series\": \"blade\", \"cable-table\": \"boat-cable\"")
                        .formatted(model.knobs().stream().map(Knob::text).toArray());
        final Fault shown = model.now().get();
        assertThat(shown.current()).isCloseTo(asked(Quantity.SHORT_CIRCUIT_CURRENT, given), near());
        same(shown.cable(), Quantity.ADIABATIC_TIME, given);
        same(shown.shortest(), Quantity.FUSE_TIME_SHORTEST, given);
        same(shown.longest(), Quantity.FUSE_TIME_LONGEST, given);
    }

    /** Both values, or neither. */
    private static void same(
            final OptionalDouble shown, final Quantity quantity, final String given) {
        assertThat(shown.orElse(-1)).isCloseTo(value(quantity, given), near());
    }

    private static double value(final Quantity quantity, final String given) {
        try {
            return asked(quantity, given);
        } catch (final wireworthy.working.Unworkable none) {
            return -1;
        }
    }

    @ParameterizedTest
    @CsvSource({"300", "700", "1900"})
    void theLineOfTheCableRunsThroughWhatTheEngineGives(final double amps) {
        final Fault shown = model.now().get();
        assertThat(shown.heat() / (amps * amps))
                .isCloseTo(
                        asked(
                                Quantity.ADIABATIC_TIME,
                                ("\"section\": \"2.5 mm2\", \"insulation-temperature\": \"75 degC\","
                                                + " \"short-circuit-current\": \"%s A\"")
                                        .formatted(amps)),
                        near());
    }

    @Test
    void aSmallFuseOnAThickCableOpensFirst() {
        assertThat(model.now().get().first()).isEqualTo(Fault.First.FUSE);
        assertThat(model.now().get().verdict()).isEqualTo(Verdict.SOUND);
        assertThat(model.now().get().fuseTime()).isEqualTo("at most 0.1 s");
        assertThat(model.now().get().cableTime()).isEqualTo("about 3 s");
    }

    @Test
    void aLargeFaultCanHeatAThinCableFirst() {
        move(model, 0, 0, 0, 2, 0, 0);
        final Fault shown = model.now().get();
        assertThat(shown.first()).isEqualTo(Fault.First.CABLE);
        assertThat(shown.verdict()).isEqualTo(Verdict.UNSOUND);
    }

    @Test
    void aLittleMoreThanItsRatingNeedNotOpenTheFuse() {
        // 12 V through 15 m of 1 mm2 out and back: about 21 A, not much over 20 A.
        move(model, 3, 0, 0, 0, 48, 29);
        final Fault shown = model.now().get();
        assertThat(shown.first()).isEqualTo(Fault.First.NEVER);
        assertThat(shown.verdict()).isEqualTo(Verdict.UNSOUND);
        assertThat(shown.fuseTime()).isEqualTo("need not open");
    }

    @Test
    void pastFiveSecondsTheSumNoLongerHoldsAndIsNotUsed() {
        move(model, 4, 4, 2, 0, 48, 29);
        final Fault shown = model.now().get();
        assertThat(shown.cable()).isEmpty();
        assertThat(shown.cableTime()).isEqualTo("more than 5 s");
        assertThat(shown.first()).isEqualTo(Fault.First.BEYOND);
        assertThat(shown.verdict()).isEqualTo(Verdict.CAUTION);
        assertThat(shown.order()).contains("this sum no longer holds");
    }

    @Test
    void whatTheFuseCanNotBearIsSaidFirst() {
        move(model, 2, 4, 2, 2, 0, 0);
        final Fault shown = model.now().get();
        assertThat(shown.dangers())
                .extracting(Caution::id)
                .containsExactlyInAnyOrder("fuse-voltage-low", "breaking-capacity-low");
        assertThat(shown.verdict()).isEqualTo(Verdict.UNSOUND);
        assertThat(shown.says()).contains("32 V", "59.2 V", "1000 A", "burst");
        assertThat(shown.words()).contains(shown.dangers().get(0).text());
    }

    @Test
    void aFuseAboveItsCableIsUnsoundHoweverFastItOpens() {
        move(model, 4, 0, 0, 0, 8, 0);
        assertThat(model.now().get().dangers())
                .extracting(Caution::id)
                .contains("fuse-above-cable");
        assertThat(model.now().get().verdict()).isEqualTo(Verdict.UNSOUND);
    }

    @Test
    void aStripFuseLeavesItsBreakingCapacityToTheMaker() {
        final Map<FigureOption, Handle> handles = new EnumMap<>(figure().handles());
        handles.put(FigureOption.FUSE_SERIES, new Handle.Named(Quantity.FUSE_SERIES, "strip-30"));
        handles.put(FigureOption.FUSE, new Handle.Fixed(Quantity.FUSE, 30));
        handles.put(FigureOption.SECTION, new Handle.Fixed(Quantity.SECTION, 16e-6));
        final Fault shown =
                new FuseOrCable(new Figure(FigureKind.FUSE_OR_CABLE, handles, ""), SOLVER)
                        .now()
                        .get();
        assertThat(shown.dangers())
                .extracting(Caution::id)
                .containsExactly("breaking-capacity-unknown");
        assertThat(shown.verdict()).isEqualTo(Verdict.CAUTION);
    }

    @Test
    void itsWordsSayAllThatIsDrawnAndNeverThatTheCableGetsAway() {
        final Fault shown = model.now().get();
        assertThat(shown.words())
                .contains(
                        "152.3 A", "15 A", "2.5 mm² for 75 °C", shown.fuseTime(), shown.cableTime())
                .contains("ISO 8820-3, from memory, unconfirmed", "IEC 60364-4-43 and 60949")
                .contains("below 5 s", "order of magnitude", Told.capital(shown.order()))
                .doesNotContain("surviv");
    }
}
