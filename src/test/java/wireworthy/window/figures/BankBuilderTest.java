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

class BankBuilderTest {
    private final BankBuilder model =
            new BankBuilder(BuiltInFigures.kept(FigureKind.BANK_BUILDER), SOLVER);

    @ParameterizedTest
    @CsvSource({"0, 0, 0, 0", "1, 1, 10, 4", "3, 0, 30, 12", "0, 3, 7, 9", "3, 3, 21, 1"})
    void itsFiguresAreThoseOfAPlainQuestion(
            final int series, final int parallel, final int capacity, final int share) {
        move(model, series, parallel, capacity, share);
        final String given =
                ("\"in-series\": \"%d\", \"in-parallel\": \"%d\", \"battery-voltage\": \"12 V\","
                                + " \"battery-capacity\": \"%d Ah\", \"usable-share\": \"%d %%\","
                                + " \"battery-resistance\": \"5 mohm\"")
                        .formatted(series + 1, parallel + 1, 50 + 5 * capacity, 30 + 5 * share);
        final BankBuilder.Shown shown = model.now().get();
        assertThat(shown.bankVolts()).isCloseTo(asked(Quantity.BANK_VOLTAGE, given), near());
        assertThat(shown.shortCircuit())
                .isCloseTo(asked(Quantity.SHORT_CIRCUIT_CURRENT, given), near());
        assertThat(shown.series()).isEqualTo(series + 1);
        assertThat(shown.parallel()).isEqualTo(parallel + 1);
    }

    @Test
    void twoStringsOfTwoInWorkingOrder() {
        assertThat(model.now().get().rows())
                .extracting(BankBuilder.Row::name, BankBuilder.Row::sum, BankBuilder.Row::result)
                .map(Object::toString)
                .containsExactly(
                        "(\"voltage\", \"2 × 12\", \"24 V\")",
                        "(\"capacity\", \"2 × 100\", \"200 Ah\")",
                        "(\"energy\", \"200 × 24\", \"4800 Wh\")",
                        "(\"usable\", \"4800 × 0.5\", \"2400 Wh\")",
                        "(\"inner resistance\", \"2 × 0.005 ÷ 2\", \"0.005 Ω\")",
                        "(\"short circuit\", \"24 ÷ 0.005\", \"4800 A\")");
    }

    @Test
    void everyStringHasItsFuse() {
        assertThat(model.now().get().verdict()).contains("24 V, with a fuse at the plus of each");
        move(model, 1, 0);
        assertThat(model.now().get().verdict()).contains("a fuse at the plus of the string");
    }

    @Test
    void partOfAStringIsNeverTapped() {
        model.tap().set(true);
        assertThat(model.now().get().sound()).isFalse();
        assertThat(model.now().get().verdict()).startsWith("never take 12 V off part of a 24 V");
        assertThat(model.now().get().words()).contains("Unsound: never take 12 V off");
    }

    @Test
    void oneBatteryHasNoPartToTap() {
        move(model, 0);
        model.tap().set(true);
        assertThat(model.now().get().tapped()).isFalse();
        assertThat(model.now().get().sound()).isTrue();
    }

    @Test
    void moreThanABladeFuseCanBreakIsSaid() {
        assertThat(model.now().get().pastBlades()).isTrue();
        assertThat(model.now().get().fault())
                .isEqualTo(
                        "a short circuit can drive 4800 A: more than the 1000 A a blade fuse can"
                                + " break");
    }

    @Test
    void itsWordsSayAllThatIsDrawn() {
        final BankBuilder.Shown shown = model.now().get();
        assertThat(shown.words())
                .startsWith("2 strings, each of 2 batteries in series, each 12 V, 100 Ah.")
                .contains(shown.verdict(), "4800 A", "one type, one age and one capacity");
        shown.rows().forEach(row -> assertThat(shown.words()).contains(row.sum(), row.result()));
    }
}
