package wireworthy.vehicle.check;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import wireworthy.rules.Quantity;
import wireworthy.vehicle.Heron;
import wireworthy.working.Caution;

/** What a cable tapped off another loses is told in one way: from the fuse board on. */
class FarDropTest {
    private static final String ONLY_COLD = "limit-met-only-cold";
    private static final String OVER = "drop-over-limit";

    private static String trunk(final String metres) {
        return """
               {"name": "Trunk", "given": {"one-way-length": "%s", "section": "6 mm2",
                "loads": [{"name": "l", "current": "5 A"}]}}
               """
                .formatted(metres);
    }

    private static String tap(final String metres, final String section) {
        return """
               {"name": "Tap", "fed-from": "Trunk", "own-fuse": true,
                "given": {"one-way-length": "%s", "section": "%s",
                "loads": [{"name": "l", "current": "5 A"}]}}
               """
                .formatted(metres, section);
    }

    private static CheckedCircuit tapped(final String trunk, final String tap) {
        return Checked.check(Checked.vehicle(trunk, tap)).circuits().get(1);
    }

    private static List<Caution> lost(final CheckedCircuit circuit) {
        return circuit.cautions().stream()
                .filter(each -> List.of(ONLY_COLD, OVER).contains(each.id()))
                .toList();
    }

    private static String said(final CheckedCircuit circuit) {
        assertThat(lost(circuit)).hasSize(1);
        return lost(circuit).get(0).text();
    }

    /** 5 A over 6 m of 2.5 mm2: 0.31 V cold, 0.41 V warm of its own, 0.43 V with the trunk. */
    @Test
    void whatFailsFromTheBoardIsNotCalledMetInColdCopper() {
        final CheckedCircuit fails = tapped(trunk("2 m"), tap("4.5 m", "2.5 mm2"));
        assertThat(Checked.ids(lost(fails))).containsExactly(OVER);
        assertThat(fails.warmDrop().orElseThrow())
                .isGreaterThan(fails.dropFromBoard().orElseThrow());
    }

    /** Each cable alone keeps 0.36 V warm, too; both together only in cold copper. */
    @Test
    void theWarmCaseIsWorkedFromTheBoardToo() {
        final CheckedCircuit both = tapped(trunk("2 m"), tap("3.2 m", "2.5 mm2"));
        assertThat(Checked.ids(lost(both))).containsExactly(ONLY_COLD);
        assertThat(said(both))
                .startsWith("Counted from the fuse board, with the cable of \"Trunk\"");
        assertThat(both.ways()).isNotEmpty();
    }

    @ParameterizedTest
    @CsvSource({"2 m, 3.2 m", "2 m, 4.5 m", "2 m, 9 m", "4 m, 2 m"})
    void aWayOutHoldsFromTheBoardInWarmCable(final String before, final String own) {
        final CheckedCircuit circuit = tapped(trunk(before), tap(own, "2.5 mm2"));
        final Stream<Way> runs =
                circuit.ways().stream().filter(it -> it.remedy().id().equals("shorter-run"));
        assertThat(runs)
                .isNotEmpty()
                .allSatisfy(
                        way ->
                                assertThat(
                                                lost(
                                                        tapped(
                                                                trunk(before),
                                                                tap(
                                                                        way.remedy().value() + " m",
                                                                        "2.5 mm2"))))
                                        .as(way.text())
                                        .isEmpty());
    }

    /** 10 A over 7 m of 6 mm2 lose 0.4 V: over the limit already, or once warm. */
    @ParameterizedTest
    @CsvSource({"7 m", "6 m"})
    void whereTheCablesBeforeTakeItAllThatIsSaidAndNoWayNamed(final String before) {
        final CheckedCircuit circuit = tapped(trunk(before), tap("0.2 m", "2.5 mm2"));
        assertThat(said(circuit))
                .contains("The cables before it take all that may be lost")
                .doesNotContain("as well");
        assertThat(circuit.ways()).isEmpty();
    }

    @Test
    void whereTheCableBeforeIsNotKnownNoWayIsNamedEither() {
        final CheckedCircuit circuit =
                tapped(trunk("2 m").replace("6 mm2", ""), tap("4.8 m", "2.5 mm2"));
        assertThat(said(circuit)).contains("this cable alone", "is not known yet");
        assertThat(circuit.ways()).isEmpty();
    }

    /** Alone 2.5 mm2 are enough for 3 m, with 2 m of trunk before it they are not. */
    @ParameterizedTest
    @CsvSource({"2 m, counted from the fuse board", "7 m, for this cable alone"})
    void theSectionToTakeHoldsFromTheBoardOrSaysThatItDoesNot(
            final String before, final String said) {
        final CheckedCircuit open = tapped(trunk(before), tap("3 m", ""));
        final String size = open.found(Quantity.STANDARD_SECTION).orElseThrow().text();
        assertThat(size).contains(said);
        assertThat(open.notesAt("given.section"))
                .singleElement()
                .satisfies(note -> assertThat(note.text()).endsWith("To take: " + size + "."));
        if (before.equals("2 m")) {
            final String taken = size.substring(0, size.indexOf(" mm")) + " mm2";
            assertThat(lost(tapped(trunk(before), tap("3 m", taken)))).isEmpty();
        }
    }

    @Test
    void theExampleSaysOfItsTapOneThingOnly() {
        final CheckedCircuit fan =
                Checked.check(Heron.vehicle()).circuits().stream()
                        .filter(each -> each.circuit().feed().isTap())
                        .findFirst()
                        .orElseThrow();
        assertThat(said(fan)).contains("0.646 V", "The cables before it take all");
    }
}
