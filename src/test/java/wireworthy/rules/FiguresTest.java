package wireworthy.rules;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The table of ways of typing is the specification of what is read, asked and refused. */
class FiguresTest {

    private static final double TINY_PERCENTAGE = 1e-6;

    @ParameterizedTest(name = "{0} as {1}: {3}")
    @CsvFileSource(
            resources = "ways-of-typing.csv",
            numLinesToSkip = 1,
            delimiter = '|',
            quoteCharacter = '§',
            emptyValue = "",
            maxCharsPerColumn = 200)
    void readsAsksOrRefuses(
            final String typed,
            final Dimension dimension,
            final String unit,
            final String outcome,
            final String expected,
            final String text) {
        final Reading reading = Figures.read(typed, dimension, unit.equals("needed"));

        switch (outcome) {
            case "read" -> assertRead(reading, expected, text);
            case "ask" -> assertAsked(reading, expected.split(" or "), text);
            case "refuse" -> assertRefused(reading, expected);
            default -> throw new IllegalArgumentException(outcome);
        }
    }

    private static void assertRead(final Reading reading, final String value, final String text) {
        assertThat(reading).isInstanceOf(Reading.Read.class);
        final Reading.Read read = (Reading.Read) reading;
        assertValue(read, value);
        if (text != null) {
            assertThat(read.text()).isEqualTo(text);
        }
    }

    private static void assertAsked(
            final Reading reading, final String[] values, final String question) {
        assertThat(reading).isInstanceOf(Reading.Unclear.class);
        final Reading.Unclear unclear = (Reading.Unclear) reading;
        assertValue(unclear.first(), values[0]);
        assertValue(unclear.second(), values[1]);
        assertThat(unclear.question())
                .contains(unclear.first().text(), unclear.second().text())
                .endsWith("?");
        if (question != null) {
            assertThat(unclear.question()).isEqualTo(question);
        }
    }

    private static void assertValue(final Reading.Read read, final String value) {
        assertThat(read.value())
                .isCloseTo(Double.parseDouble(value), withinPercentage(TINY_PERCENTAGE));
    }

    private static void assertRefused(final Reading reading, final String words) {
        assertThat(reading).isInstanceOf(Reading.Unreadable.class);
        assertThat(((Reading.Unreadable) reading).message()).contains(words);
    }

    @ParameterizedTest
    @CsvSource({
        "0.526 V, VOLTAGE, 0.001, 3",
        "120 V, VOLTAGE, 1, 3",
        "12.50 V, VOLTAGE, 0.01, 4",
        "0.0250 V, VOLTAGE, 0.0001, 3",
        "0 V, VOLTAGE, 1, 1",
        "250 mA, CURRENT, 0.001, 3",
        "1.2e3 W, POWER, 100, 2",
        "1 200 W, POWER, 1, 4",
        "½ V, VOLTAGE, 0.1, 1",
        "1/3 V, VOLTAGE, 0.001, 3",
        "1 1/4 V, VOLTAGE, 0.01, 3",
        "2.5 mm2, AREA, 1e-7, 2",
        "12 AWG, AREA, 1e-8, 3",
        "12 AWG, GAUGE, 1, 2",
        "4/0, GAUGE, 1, 1",
        "7 ft 6 in, LENGTH, 0.0254, 2",
        "1 h 30 min, TIME, 60, 2",
        "10 ft, LENGTH, 0.3048, 2",
        "81.5 °F, TEMPERATURE, 0.05555555555555555, 3",
        "85 %, SHARE, 0.01, 2"
    })
    void keepsHowFinelyTheFigureWasTyped(
            final String typed,
            final Dimension dimension,
            final double lastDigit,
            final int significantDigits) {
        final Reading.Read read = (Reading.Read) Figures.read(typed, dimension, false);

        assertThat(read.lastDigit()).isCloseTo(lastDigit, withinPercentage(TINY_PERCENTAGE));
        assertThat(read.significantDigits()).isEqualTo(significantDigits);
    }

    @ParameterizedTest
    @CsvSource({
        "250 mA, CURRENT, mA, true",
        "250, CURRENT, A, false",
        "2.5 mm², AREA, mm2, true",
        "12 awg, AREA, AWG, true",
        "12, GAUGE, AWG, false",
        "7' 6\", LENGTH, ft in, true",
        "1:30, TIME, h min, true",
        "0.0172 Ω·mm²/m, RESISTIVITY, ohm mm2/m, true",
        "85, SHARE, %, false",
        "1.25, FACTOR, '', false"
    })
    void namesTheUnitInPlainLetters(
            final String typed,
            final Dimension dimension,
            final String unit,
            final boolean unitTyped) {
        final Reading.Read read = (Reading.Read) Figures.read(typed, dimension, false);

        assertThat(read.unit()).isEqualTo(unit);
        assertThat(read.unitTyped()).isEqualTo(unitTyped);
    }

    @Test
    void aDecimalFractionGivesTheNearestDouble() {
        final Reading.Read read = (Reading.Read) Figures.read("1.5 mm2", Dimension.AREA, true);

        assertThat(read.value()).isEqualTo(1.5e-6);
    }

    @ParameterizedTest
    @ValueSource(strings = {"", " ", "\t\n", "~", "\uFEFF"})
    void anEmptyFieldIsToldWhatToWrite(final String typed) {
        assertRefused(
                Figures.read(typed, Dimension.POWER, true),
                "Nothing is written here; this needs watts, for example 54 W");
    }

    @Test
    void spacesRoundAFigureAreNoMatter() {
        assertRead(Figures.read(" \u00A054 W\n", Dimension.POWER, true), "54", "54 W");
    }

    @Test
    void aLongTextIsRefusedAndQuotedInShort() {
        final String digits = "7".repeat(201);

        assertRefused(
                Figures.read(digits, Dimension.POWER, false),
                "'" + "7".repeat(40) + "…' is too long for a figure");
    }

    @Test
    void anyTextEndsInAReading() {
        final String usual = "0123456789.,'\"eExX+-/ ½²·^%ΩµmkMVAWhftinoCFK#awg:°\u00A0１٣";
        final Random random = new Random(20260101);
        final Dimension[] dimensions = Dimension.values();
        for (int i = 0; i < 100_000; i++) {
            final String typed = i % 4 == 0 ? anyText(random) : textOf(usual, random);
            final Dimension dimension = dimensions[i % dimensions.length];

            final Reading reading = Figures.read(typed, dimension, random.nextBoolean());

            if (reading instanceof final Reading.Read read) {
                assertThat(read.value()).as(typed).isFinite();
                assertThat(read.lastDigit()).as(typed).isFinite().isPositive();
                assertThat(read.significantDigits()).as(typed).isPositive();
            }
        }
    }

    private static String anyText(final Random random) {
        final char[] text = new char[random.nextInt(12)];
        for (int i = 0; i < text.length; i++) {
            text[i] = (char) random.nextInt(Character.MAX_VALUE + 1);
        }
        return new String(text);
    }

    private static String textOf(final String characters, final Random random) {
        final char[] text = new char[random.nextInt(14)];
        for (int i = 0; i < text.length; i++) {
            text[i] = characters.charAt(random.nextInt(characters.length()));
        }
        return new String(text);
    }
}
