package wireworthy.window.figures;

import static org.assertj.core.api.Assertions.assertThat;
import static wireworthy.window.figures.BuiltInFigures.SOLVER;
import static wireworthy.window.figures.BuiltInFigures.kept;
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

/** What heat and company leave of the ampacity in the table. */
class DeratedAmpacityTest {
    @ParameterizedTest
    @CsvSource({
        "thin-wall, 0, 0, 0, no, no",
        "thin-wall, 2, 25, 1, no, no",
        "thin-wall, 4, 60, 11, no, yes",
        "boat-cable, 3, 10, 2, yes, no",
        "boat-cable, 3, 50, 2, yes, yes",
        "iso-10133, 2, 30, 4, no, yes"
    })
    void theLastBarIsTheEnginesAmpacity(
            final String table,
            final int section,
            final int ambient,
            final int cables,
            final String engineSpace,
            final String inWall) {
        final DeratedAmpacity model = model(table);
        move(model, section, ambient, cables);
        model.ticks()
                .forEach(tick -> tick.on().set("yes".equals(answer(tick, engineSpace, inWall))));
        final String given =
                ("\"section\": \"%s\", \"ambient-temperature\": \"%s\", \"bundled\": %d,"
                                + " \"engine-space\": \"%s\", \"in-thermal-insulation\": \"%s\","
                                + " \"cable-table\": \"%s\"")
                        .formatted(
                                model.knobs().get(0).text(),
                                model.knobs().get(1).text(),
                                2 * (cables + 1),
                                engineSpace,
                                inWall,
                                table);
        final DeratedAmpacity.Shown shown = model.now().get();
        final List<Factor> factors = shown.factors();
        assertThat(shown.inTable()).isCloseTo(asked(Quantity.TABLE_AMPACITY, given), near());
        assertThat(factors.get(0).value()).isCloseTo(asked(Quantity.AMBIENT_FACTOR, given), near());
        assertThat(factors.get(1).value()).isCloseTo(asked(Quantity.BUNDLE_FACTOR, given), near());
        assertThat(shown.ampacity()).isCloseTo(asked(Quantity.FUSE_CEILING, given), near());
        assertThat(factors.get(factors.size() - 1).left()).isCloseTo(shown.ampacity(), near());
        assertThat(shown.fuse().orElse(0)).isLessThanOrEqualTo(shown.ampacity());
    }

    private static String answer(final Tick tick, final String engineSpace, final String inWall) {
        return tick.label().contains("engine") ? engineSpace : inWall;
    }

    @Test
    void onlyTablesWithAFactorForEngineSpacesHaveTheBox() {
        assertThat(model("thin-wall").ticks()).hasSize(1);
        assertThat(model("boat-cable").ticks()).hasSize(2);
    }

    @Test
    void airAsHotAsTheInsulationLeavesNothingAndSaysSo() {
        final DeratedAmpacity model = model("iso-10133");
        move(model, 2, 60, 0);
        assertThat(model.now().get().ampacity()).isZero();
        assertThat(model.now().get().words()).contains("too hot for this insulation");
        assertThat(model.now().get().usable()).isFalse();
    }

    @Test
    void theWordsSayEveryFactorWithItsSource() {
        final DeratedAmpacity model = model("thin-wall");
        move(model, 2, 25, 1);
        model.ticks().get(0).on().set(true);
        final DeratedAmpacity.Shown shown = model.now().get();
        shown.factors()
                .forEach(
                        factor ->
                                assertThat(shown.words())
                                        .contains(
                                                factor.name(),
                                                factor.text(),
                                                factor.leftAmps(),
                                                factor.source()));
        assertThat(shown.words())
                .contains("common practice, no source", "33 CFR 183.425", "unconfirmed");
    }

    private static DeratedAmpacity model(final String table) {
        final Map<FigureOption, Handle> handles =
                new EnumMap<>(kept(FigureKind.DERATED_AMPACITY).handles());
        handles.put(FigureOption.CABLE_TABLE, new Handle.Named(Quantity.CABLE_TABLE, table));
        return new DeratedAmpacity(new Figure(FigureKind.DERATED_AMPACITY, handles, ""), SOLVER);
    }
}
