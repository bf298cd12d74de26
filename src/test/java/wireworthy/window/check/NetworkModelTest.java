package wireworthy.window.check;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;
import static org.assertj.core.api.Assertions.within;
import static wireworthy.rules.Quantity.*;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import wireworthy.rules.Quantity;
import wireworthy.vehicle.Circuit;
import wireworthy.vehicle.Feed;
import wireworthy.vehicle.Load;
import wireworthy.vehicle.LoadEntry;
import wireworthy.vehicle.Stretch;
import wireworthy.vehicle.check.CheckedCircuit;

/** A cable that feeds several places, typed stretch by stretch. */
class NetworkModelTest {
    private static final Spot FIRST = new Spot.OfCircuit(0);

    @TempDir private Path folder;
    private VehicleModel model;
    private NetworkEntries entries;

    /** What is written a little later has to be written before its folder goes. */
    @AfterEach
    void close() {
        model.close();
    }

    @BeforeEach
    void begin() {
        model = Models.in(folder);
        EntryList.supply(model).given(List.of(SUPPLY_VOLTAGE)).get(0).type("12 V");
        model.addCircuit();
        EntryList.ofLoad(model, 0, 0, LoadEntry.CURRENT).type("2 A");
        EntryList.circuit(model, 0).given(List.of(ONE_WAY_LENGTH)).get(0).type("4 m");
        EntryList.circuit(model, 0).given(List.of(SECTION)).get(0).type("2.5 mm2");
        entries = new NetworkEntries(model, 0);
    }

    private Circuit circuit() {
        return model.now().circuits().get(0);
    }

    private CheckedCircuit checked() {
        return model.checking().circuit(0).orElseThrow();
    }

    private Entry of(final int stretch, final Quantity quantity) {
        return entries.of(stretch, List.of(quantity)).get(0);
    }

    private void second() {
        model.addStretch(0);
        of(1, ONE_WAY_LENGTH).type("3 m");
        of(1, SECTION).type("1 mm2");
        model.addLoad(0);
        EntryList.ofLoad(model, 0, 1, LoadEntry.CURRENT).type("1.5 A");
    }

    @Test
    void theFirstStretchTakesOverWhatWasTypedForTheCable() {
        model.addStretch(0);
        assertThat(circuit().stretches())
                .extracting(Stretch::from, Stretch::to)
                .containsExactly(tuple("source", "A"));
        assertThat(of(0, ONE_WAY_LENGTH).text()).isEqualTo("4 m");
        assertThat(circuit().part().given().typed()).doesNotContainKeys(ONE_WAY_LENGTH, SECTION);
        assertThat(circuit().loads()).extracting(Load::at).containsExactly("A");
        assertThat(model.checking().state(FIRST)).contains(State.SOUND);
    }

    @Test
    void oneUndoMakesItOneCableAgain() {
        final Circuit before = circuit();
        model.addStretch(0);
        model.undo();
        assertThat(circuit()).isEqualTo(before);
    }

    @Test
    void theLastStretchTakenAwayGivesItsFiguresBack() {
        final Circuit before = circuit();
        model.addStretch(0);
        model.removeStretch(0, 0);
        assertThat(circuit()).isEqualTo(before);
    }

    @Test
    void aStretchSaysWhatItStillNeedsWithoutAlarm() {
        model.addStretch(0);
        model.addStretch(0);
        assertThat(entries.from(1).text()).isEqualTo("A");
        assertThat(entries.to(1).text()).isEqualTo("B");
        assertThat(of(1, SECTION).under()).isEqualTo("Give the section of this stretch.");
        assertThat(of(1, SECTION).troubled()).isFalse();
        assertThat(model.checking().state(FIRST)).contains(State.INCOMPLETE);
    }

    @Test
    void eachLoadHasItsOwnVoltsAsOneTypes() {
        model.addStretch(0);
        second();
        final double first = 3.5 * 2 * 0.0172 * 4 / 2.5;
        final double then = 1.5 * 2 * 0.0172 * 3 / 1;
        assertThat(checked().network()).isPresent();
        assertThat(checked().loads().get(1).predicted().orElseThrow())
                .isCloseTo(12 - first - then, within(1e-9));
        assertThat(AlongCable.of(checked(), checked().network().orElseThrow()).rows())
                .map(row -> String.join("; ", row).replace('\u00a0', ' '))
                .containsExactly("load 1; A; 11.81 V; 0.1926 V", "load 2; B; 11.65 V; 0.3474 V");
    }

    @Test
    void loadsAndStretchesFollowAPlaceThatIsCalledOtherwise() {
        model.addStretch(0);
        second();
        entries.to(0).type("");
        entries.to(0).type("g");
        entries.to(0).type("galley");
        assertThat(entries.from(1).text()).isEqualTo("galley");
        assertThat(circuit().loads()).extracting(Load::at).containsExactly("galley", "B");
        assertThat(entries.places()).containsExactly("source", "galley", "B");
    }

    @Test
    void aNameThatIsThereAlreadyLeadsBackToThatPlace() {
        model.addStretch(0);
        second();
        model.addStretch(0);
        entries.to(2).type("source");
        of(2, ONE_WAY_LENGTH).type("6 m");
        of(2, SECTION).type("2.5 mm2");
        assertThat(checked().network()).as("a ring").isPresent();
        assertThat(checked().network().orElseThrow().current()).isEqualTo(3.5);
        assertThat(circuit().loads()).extracting(Load::at).containsExactly("A", "B");
    }

    @Test
    void aLoadThatCantBeFedIsNamed() {
        model.addStretch(0);
        second();
        EntryList.ofLoad(model, 0, 1, LoadEntry.CURRENT).type("");
        EntryList.ofLoad(model, 0, 1, LoadEntry.POWER).type("900 W");
        EntryList.loadName(model, 0, 1).type("oven");
        assertThat(model.checking().state(FIRST)).contains(State.WILL_NOT_WORK);
        assertThat(checked().cautions().get(0).text()).contains("can't deliver").contains("oven");
    }

    @Test
    void anUnknownPlaceIsSaidAtItsLoad() {
        model.addStretch(0);
        entries.at(0).type("attic");
        assertThat(entries.at(0).troubled()).isTrue();
        assertThat(entries.at(0).under()).contains("No stretch leads to \"attic\"");
    }

    @Test
    void aCircuitTappedOffSuchACableStopsItsSums() {
        model.addStretch(0);
        model.addCircuit();
        EntryList.ofLoad(model, 1, 0, LoadEntry.CURRENT).type("5 A");
        model.change(
                "",
                it ->
                        it.withCircuit(
                                1, it.circuits().get(1).fedFrom(new Feed("Circuit 1", false))));
        assertThat(checked().fuse().floor()).isEmpty();
        assertThat(checked().notesAt("given.network").get(0).text()).contains("Circuit 2");
    }

    @Test
    void ofWarmThinCableMoreIsLost() {
        model.addStretch(0);
        second();
        assertThat(checked().warmDrop().orElseThrow())
                .isGreaterThan(checked().dropFromBoard().orElseThrow());
    }
}
