package wireworthy.vehicle.check;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Random;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import wireworthy.rules.Dimension;
import wireworthy.rules.Quantity;
import wireworthy.working.Danger;
import wireworthy.working.Remedy;

/** What is proposed against too much drop passes the same check once it is taken over. */
class WaysOutTest {
    private static final List<String> COMPLAINTS =
            List.of("drop-over-limit", "limit-met-only-cold");

    /** A circuit of lamps of one kind. */
    private record Plan(
            double volts, double watts, int count, double metres, String section, String others) {
        private String circuit() {
            return """
                   {"name": "Lamps", "given": {%s "one-way-length": "%s m", "section": "%s",
                    "loads": [{"name": "lamp", "power": "%s W", "count": %d}]}}
                   """
                    .formatted(others, metres, section, watts, count);
        }

        private CheckedCircuit checked() {
            final String supply = "{\"given\": {\"supply-voltage\": \"%s V\"}}".formatted(volts);
            return Checked.check(Checked.read(supply, "{}", circuit())).circuits().get(0);
        }

        /** As it is with a way out taken; empty where none can be taken over. */
        private Optional<Plan> with(final Remedy way) {
            return switch (way.id()) {
                case "shorter-run" ->
                        Optional.of(new Plan(volts, watts, count, way.value(), section, others));
                case "split-circuit" -> {
                    final int some = (int) (way.value() * volts / watts * (1 + 1e-9));
                    yield Optional.of(new Plan(volts, watts, some, metres, section, others));
                }
                case "higher-voltage" ->
                        Optional.of(new Plan(way.value(), watts, count, metres, section, others));
                default ->
                        way.quantity() == Quantity.STANDARD_SECTION
                                ? Optional.of(
                                        new Plan(volts, watts, count, metres, mm2(way), others))
                                : Optional.empty();
            };
        }

        private static String mm2(final Remedy way) {
            return way.value() / Dimension.AREA.scale() + " mm2";
        }
    }

    private static <T> T any(final Random random, final List<T> of) {
        return of.get(random.nextInt(of.size()));
    }

    private static Plan drawn(final Random random) {
        final String table =
                any(random, List.of("thin-wall", "boat-cable", "iso-10133", "standard-wall"));
        final String limit = any(random, List.of("3 %", "5 %", "10 %", "0.3 V", "0.9 V"));
        final String stock =
                any(random, List.of("", "", "\"available-sections\": [\"2.5 mm2\", \"6 mm2\"],"));
        final String back = any(random, List.of("", "", "\"conductor-temperature\": \"90 degC\","));
        return new Plan(
                any(random, List.of(12.0, 12.8, 24.0)),
                Math.round(10 * Math.pow(10, 2 * random.nextDouble())) / 10.0,
                1 + random.nextInt(12),
                Math.round(10 * Math.pow(10, 1.5 * random.nextDouble())) / 10.0,
                any(random, List.of("1 mm2", "1.5 mm2", "2.5 mm2", "4 mm2", "6 mm2", "10 AWG")),
                "\"cable-table\": \"%s\", \"drop-limit\": \"%s\", %s %s"
                        .formatted(table, limit, stock, back));
    }

    private static Stream<Plan> plans() {
        final Random random = new Random(7);
        return Stream.generate(() -> drawn(random)).limit(600);
    }

    private static List<String> complaints(final CheckedCircuit circuit) {
        return Checked.ids(circuit.cautions()).stream().filter(COMPLAINTS::contains).toList();
    }

    @ParameterizedTest
    @MethodSource("plans")
    void aWayOutOnceTakenIsAWayOut(final Plan plan) {
        final CheckedCircuit before = plan.checked();
        for (final Way way : before.ways()) {
            plan.with(way.remedy())
                    .ifPresent(
                            taken ->
                                    assertThat(complaints(taken.checked()))
                                            .as("%s, then %s", way.text(), taken)
                                            .isEmpty());
        }
    }

    @Test
    void theyAreProposedWhereverThereIsAComplaint() {
        final List<String> ids = new ArrayList<>();
        plans().limit(200)
                .map(Plan::checked)
                .filter(each -> !complaints(each).isEmpty())
                .forEach(
                        each -> {
                            assertThat(each.ways()).isNotEmpty();
                            each.ways().forEach(way -> ids.add(way.remedy().id()));
                        });
        assertThat(ids)
                .contains("shorter-run", "split-circuit", "larger-section", "higher-voltage");
    }

    private static Plan strips(final String section, final String others) {
        return new Plan(12, 84, 1, 7, section, others);
    }

    private static String larger(final Plan plan) {
        return plan.checked().ways().stream()
                .filter(way -> way.remedy().id().equals("larger-section"))
                .map(Way::text)
                .findFirst()
                .orElse("");
    }

    /** 84 W over 7 m: 4.7 mm2 in cold copper, 6.3 mm2 in warm. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "2.5 mm2 | '' | 8.5 mm² keeps the limit in warm cable as well.",
                "6 mm2 | '' | 8.5 mm² keeps the limit in warm cable as well.",
                "2.5 mm2 | \"cable-table\": \"iso-10133\", | 10 mm² keeps the limit in warm cable as well.",
                "2.5 mm2 | \"cable-table\": \"standard-wall\", | No section of the table"
                        + " standard-wall is enough: about 6.285 mm² would be needed."
                        + " These tables go so far: thin-wall, boat-cable, iso-10133.",
                "2.5 mm2 | \"available-sections\": [\"4 mm2\"], | None of the sections you can buy",
            })
    void theSizeProposedHoldsWarmOrItIsSaidThatNoneDoes(
            final String section, final String others, final String said) {
        assertThat(larger(strips(section, others))).contains(said.strip());
    }

    private static List<String> ids(final Plan plan) {
        return plan.checked().ways().stream().map(way -> way.remedy().id()).toList();
    }

    /** 144 W at 12 V: 1 mm2 in a bundle of six carries no fuse for 12 A. */
    private static Plan overheating(final int count) {
        return new Plan(
                12,
                144.0 / count,
                count,
                7,
                "1 mm2",
                "\"bundled\": 6, \"cable-table\": \"iso-10133\", ");
    }

    @ParameterizedTest
    @ValueSource(ints = {1, 12})
    void whereTheCableCouldOverheatALargerOneIsSaidFirstAndAShorterOneNotAtAll(final int count) {
        final Plan plan = overheating(count);
        assertThat(plan.checked().cautions().get(0).danger()).isEqualTo(Danger.FIRE);
        assertThat(ids(plan)).startsWith("larger-section").doesNotContain("shorter-run");
    }

    @Test
    void aWayOutLeavesNoCableWithoutAFuseThatFits() {
        for (final Plan plan : plans().toList()) {
            for (final Way way : plan.checked().ways()) {
                plan.with(way.remedy())
                        .map(Plan::checked)
                        .filter(taken -> taken.fuse().known())
                        .ifPresent(
                                taken ->
                                        assertThat(taken.fuse().between())
                                                .as("%s, then %s", way.text(), plan)
                                                .isNotEmpty());
            }
        }
    }

    @Test
    void aFuseTooLargeForTheCableIsAMatterOfTheCableToo() {
        final Plan plan = new Plan(12, 24, 1, 13, "1 mm2", "\"fuse\": \"30 A\", ");
        assertThat(ids(plan)).startsWith("larger-section");
    }

    @ParameterizedTest
    @CsvSource({"7, 2.2 %, 4.9 m", "5, 2.2 %, 4.9 m", "1.2, 0.04 V, 0.74 m"})
    void aRunIsShortenedToWhatCanBeCut(final double metres, final String limit, final String said) {
        final Plan plan =
                new Plan(12, 84, 1, metres, "6 mm2", "\"drop-limit\": \"" + limit + "\",");
        assertThat(plan.checked().ways().stream().map(Way::text))
                .filteredOn(text -> text.startsWith("Shorten"))
                .singleElement()
                .satisfies(text -> assertThat(text).contains("run to " + said + " one way"));
    }

    @Test
    void shorteningByMoreThanHalfIsSaidLastAndSaysThatItIsHardlyAWay() {
        final List<Way> ways =
                new Plan(12, 84, 1, 16, "6 mm2", "\"cable-table\": \"iso-10133\", ")
                        .checked()
                        .ways();
        assertThat(ways.get(ways.size() - 1).text())
                .startsWith("Shortening alone would have to go down to")
                .contains("6.7 m", "less than half");
    }

    @Test
    void aSingleLoadIsNotSplit() {
        assertThat(strips("2.5 mm2", "").checked().ways())
                .extracting(way -> way.remedy().id())
                .doesNotContain("split-circuit");
    }

    @Test
    void whatIsTooLittleOnlyInWarmCableIsALesserCautionWithItsWayOut() {
        final CheckedCircuit strips = strips("6 mm2", "").checked();
        assertThat(strips.cautions())
                .singleElement()
                .satisfies(
                        it -> {
                            assertThat(it.danger()).isEqualTo(wireworthy.working.Danger.ONLY_JUST);
                            assertThat(it.text().toLowerCase(Locale.ROOT))
                                    .contains(
                                            "with 8.5 mm², or with a run of at most 6.7 m one way");
                        });
    }

    @Test
    void whereNoSectionIsTypedTheOneToTakeHoldsWarmToo() {
        final String open = strips("6 mm2", "").circuit().replace("\"section\": \"6 mm2\",", "");
        final CheckedCircuit circuit = Checked.circuit(open);
        assertThat(circuit.notesAt("given.section"))
                .singleElement()
                .satisfies(it -> assertThat(it.text()).contains("8.5 mm² (6 mm² in cold copper)"));
        assertThat(complaints(strips("8.5 mm2", "").checked())).isEmpty();
    }

    /** The feeder takes 0.115 V of the 0.36 V. */
    @Test
    void whatTheCableBeforeTakesIsCounted() {
        final String feeder =
                """
                {"name": "Trunk", "given": {"one-way-length": "2 m", "section": "6 mm2",
                 "loads": [{"name": "l", "current": "5 A"}]}}
                """;
        final String tap =
                """
                {"name": "Tap", "fed-from": "Trunk", "own-fuse": true,
                 "given": {"one-way-length": "%s m", "section": "2.5 mm2",
                 "loads": [{"name": "l", "current": "5 A"}]}}
                """;
        final CheckedCircuit before =
                Checked.check(Checked.vehicle(feeder, tap.formatted("5"))).circuits().get(1);
        assertThat(complaints(before)).isNotEmpty();
        final double metres = before.ways().get(0).remedy().value();
        final CheckedCircuit after =
                Checked.check(Checked.vehicle(feeder, tap.formatted(metres))).circuits().get(1);
        assertThat(complaints(after)).isEmpty();
    }
}
