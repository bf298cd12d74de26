package wireworthy.rules;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Random;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import wireworthy.facts.CableTables;
import wireworthy.facts.FuseSeriesTable;

/** What a line says is what it does: each formula's text, worked out, equals its arithmetic. */
class FormulaTextTest {
    private static final int DRAWS = 20;
    private static final double SAME = 1e-9;

    /** Every quantity given, so that no slip holds back for want of one. */
    private static final Setting ALL_GIVEN =
            new Setting(
                    CableTables.named("thin-wall"),
                    FuseSeriesTable.named("blade"),
                    false,
                    false,
                    false,
                    false,
                    List.of(),
                    EnumSet.allOf(Quantity.class));

    private static final Set<Quantity> EACH =
            EnumSet.of(Quantity.LOAD_COUNT, Quantity.EFFICIENCY, Quantity.SHARE_OF_TIME);

    record Text(String name, Quantity output, Formula formula, Arithmetic arithmetic) {
        @Override
        public String toString() {
            return name + ": " + output.id() + " = " + formula.fill(ref -> ref.quantity().id());
        }
    }

    private static Stream<Direction> directions() {
        final List<Set<Quantity>> loads =
                List.of(
                        Set.of(Quantity.LOAD_POWER),
                        Set.of(Quantity.LOAD_CURRENT, Quantity.LOAD_COUNT),
                        with(EACH, Quantity.LOAD_POWER),
                        Set.of(Quantity.RESISTANCE, Quantity.START_MULTIPLE));
        final List<Set<Quantity>> one = List.of(Set.of(Quantity.RESISTANCE, Quantity.LOAD_COUNT));
        return Stream.of(RuleBook.directions(), ListRules.joining(loads), ListRules.joining(one))
                .flatMap(List::stream);
    }

    private static Set<Quantity> with(final Set<Quantity> some, final Quantity more) {
        final Set<Quantity> all = EnumSet.copyOf(some);
        all.add(more);
        return all;
    }

    static List<Text> sums() {
        return texts(
                directions()
                        .map(d -> new Text(d.rule(), quantity(d), d.formula(), d.arithmetic())));
    }

    static List<Text> slips() {
        return texts(
                directions()
                        .flatMap(
                                d ->
                                        d.slips().stream()
                                                .map(
                                                        slip ->
                                                                new Text(
                                                                        slip.id(),
                                                                        quantity(d),
                                                                        slip.formula(),
                                                                        slip.arithmetic()))));
    }

    private static Quantity quantity(final Direction direction) {
        return direction.output().quantity();
    }

    private static List<Text> texts(final Stream<Text> all) {
        return all.filter(text -> !text.formula().inWords()).toList();
    }

    @ParameterizedTest
    @MethodSource("sums")
    void aLineDoesWhatItSays(final Text text) {
        agrees(text);
    }

    @ParameterizedTest
    @MethodSource("slips")
    void aSlipDoesWhatItSays(final Text text) {
        agrees(text);
    }

    private static void agrees(final Text text) {
        final Random random = new Random(text.toString().hashCode());
        final List<Double> worked = new ArrayList<>();
        for (int draw = 0; draw < DRAWS; draw++) {
            final Map<Ref, BigDecimal> numbers = drawn(text.formula().inputs(), random);
            final double done = done(text, numbers);
            if (!Double.isNaN(done)) {
                final double said = said(text, numbers);
                assertThat(done).as("with %s", numbers).isCloseTo(said, within(share(said)));
                worked.add(done);
            }
        }
        assertThat(worked).as("draws that gave a value").isNotEmpty();
    }

    private static double share(final double value) {
        return SAME * Math.max(Math.abs(value), 1e-9);
    }

    private static double said(final Text text, final Map<Ref, BigDecimal> numbers) {
        return Sum.of(text.formula().fill(ref -> number(numbers, ref).toPlainString()));
    }

    private static double done(final Text text, final Map<Ref, BigDecimal> numbers) {
        final double[] x =
                text.formula().inputs().stream()
                        .mapToDouble(ref -> number(numbers, ref).doubleValue() * scale(ref))
                        .toArray();
        return text.arithmetic().of(x, ALL_GIVEN) / outputScale(text.output());
    }

    private static BigDecimal number(final Map<Ref, BigDecimal> numbers, final Ref ref) {
        return Objects.requireNonNull(numbers.get(ref));
    }

    /** Shares stand in a sum as fractions, all else in its field unit. */
    private static double scale(final Ref ref) {
        final Dimension dimension = ref.quantity().dimension();
        return dimension == Dimension.SHARE ? 1 : dimension.scale();
    }

    /** Only the drop is worked out in per cent, the other shares as fractions. */
    private static double outputScale(final Quantity output) {
        return output == Quantity.DROP_PERCENT ? 0.01 : scale(Ref.circuit(output));
    }

    private static Map<Ref, BigDecimal> drawn(final List<Ref> inputs, final Random random) {
        final Map<Ref, BigDecimal> numbers = new HashMap<>();
        inputs.forEach(ref -> numbers.put(ref, drawn(ref.quantity(), random)));
        return numbers;
    }

    private static BigDecimal drawn(final Quantity quantity, final Random random) {
        final double least;
        final double most;
        switch (quantity) {
            case SHORT_CIRCUIT_CURRENT -> {
                least = 500;
                most = 3000;
            }
            case MARGIN -> {
                least = 1.1;
                most = 1.5;
            }
            case AMBIENT_FACTOR, BUNDLE_FACTOR -> {
                least = 0.6;
                most = 0.95;
            }
            default -> {
                least = quantity.dimension() == Dimension.SHARE ? 0.05 : 1.5;
                most = quantity.dimension() == Dimension.SHARE ? 0.95 : 100;
            }
        }
        final double value = least + (most - least) * random.nextDouble();
        return new BigDecimal(String.format(java.util.Locale.ROOT, "%.6f", value));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "2 + 3 × 4 | 14",
                "(2 + 3) × 4 | 20",
                "12 ÷ 4 ÷ 3 | 1",
                "9 − 4 − 3 | 2",
                "√(3² + 4²) | 5",
                "2 × π | 6.283185307179586",
                "ln(√(1)) | 0",
                "1 ÷ (1 ÷ 2 + 1 ÷ 2) | 1"
            })
    void sumsAreWorkedAsWritten(final String text, final double value) {
        assertThat(Sum.of(text)).isEqualTo(value);
    }

    @Test
    void mostLinesAndSlipsAreSumsRatherThanWords() {
        assertThat(sums()).hasSizeGreaterThan(150);
        assertThat(slips()).hasSizeGreaterThan(90);
    }
}
