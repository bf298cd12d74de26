package wireworthy.window.check;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.Queue;
import java.util.concurrent.ConcurrentLinkedQueue;
import java.util.function.Consumer;
import java.util.function.Supplier;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import wireworthy.record.SumsInUse;
import wireworthy.record.WireSizes;
import wireworthy.rules.Quantity;
import wireworthy.vehicle.Circuit;
import wireworthy.vehicle.Feed;
import wireworthy.vehicle.Heron;
import wireworthy.vehicle.LoadEntry;
import wireworthy.vehicle.VehicleFile;
import wireworthy.vehicle.VehicleRead;
import wireworthy.vehicle.check.CheckedCircuit;
import wireworthy.vehicle.check.VoltsLost;
import wireworthy.window.Background;

/** What the place does while one types, without a control. */
class VehicleModelTest {
    private static final Spot FIRST = new Spot.OfCircuit(0);

    @TempDir private Path folder;
    private VehicleModel model;

    /** What is written a little later has to be written before its folder goes. */
    @AfterEach
    void close() {
        model.close();
    }

    @BeforeEach
    void begin() {
        model = Models.in(folder);
        given(EntryList.supply(model), Quantity.SUPPLY_VOLTAGE).type("12 V");
        model.addCircuit();
    }

    private static Entry given(final EntryList entries, final Quantity quantity) {
        return entries.given(List.of(quantity)).get(0);
    }

    private Entry cable(final Quantity quantity) {
        return given(EntryList.circuit(model, 0), quantity);
    }

    private Entry own(final Quantity quantity) {
        return EntryList.circuit(model, 0).own(quantity);
    }

    private Entry load(final LoadEntry entry) {
        return EntryList.ofLoad(model, 0, 0, entry);
    }

    private CheckedCircuit first() {
        return model.checking().circuit(0).orElseThrow();
    }

    private void lamps() {
        load(LoadEntry.POWER).type("24 W");
        cable(Quantity.ONE_WAY_LENGTH).type("5 m");
        cable(Quantity.SECTION).type("2.5 mm2");
    }

    @Test
    void aCircuitAddedIsShownAndSaysWhatItStillNeeds() {
        assertThat(model.chosen().get()).isEqualTo(FIRST);
        assertThat(model.checking().state(FIRST)).contains(State.INCOMPLETE);
        assertThat(load(LoadEntry.POWER).under()).isEqualTo("Give its power or its current.");
        assertThat(load(LoadEntry.POWER).troubled()).isFalse();
    }

    @Test
    void newVehiclesAreNumberedSoThatTheirFilesCanBeToldApart() {
        final int opened = model.opened().get();
        model.begin();
        assertThat(model.now().name()).isEqualTo("My vehicle 2");
        model.addCircuit();
        model.begin();
        assertThat(model.now().name()).isEqualTo("My vehicle 3");
        model.begin();
        assertThat(model.opened().get()).as("seen, though nothing changed").isEqualTo(opened + 3);
        assertThat(model.shelf().recent())
                .extracting(file -> String.valueOf(file.getFileName()))
                .containsExactly("my-vehicle-2.json", "my-vehicle.json");
    }

    @Test
    void aNewCircuitGoesByTheSumsInUseAndSaysSo() {
        final SumsInUse boat = SumsInUse.USUAL.withCableTable("boat-cable").withDropLimit(0.1);
        final VehicleModel other =
                new VehicleModel(
                        new Shelf(folder.resolve("boats")), () -> boat, Background.atOnce());
        other.addCircuit();
        final EntryList entries = EntryList.circuit(other, 0);
        assertThat(given(entries, Quantity.CABLE_TABLE).text()).isEqualTo("boat-cable");
        assertThat(given(entries, Quantity.DROP_LIMIT).text()).isEqualTo("10 %");
        assertThat(given(entries, Quantity.MARGIN).text()).isEmpty();
    }

    @Test
    void whatIsTypedIsUnderstoodAndWorkedAtOnce() {
        lamps();
        assertThat(cable(Quantity.SECTION).under()).isEqualTo("read as 2.5 mm²");
        assertThat(first().value(Quantity.CIRCUIT_CURRENT)).hasValue(2);
        assertThat(model.checking().state(FIRST)).contains(State.SOUND);
    }

    @Test
    void theExampleOfAFuseIsOneThatFits() {
        assertThat(cable(Quantity.FUSE).prompt()).isEqualTo("such as 10 A");
        lamps();
        assertThat(cable(Quantity.FUSE).prompt()).isEqualTo("such as 3 A");
        load(LoadEntry.POWER).type("150 W");
        assertThat(cable(Quantity.FUSE).prompt()).isEqualTo("such as 20 A");
    }

    @Test
    void voltsThatDoNotArriveTakeTheSoundnessAway() {
        lamps();
        EntryList.ofLoad(model, 0, 0, LoadEntry.MEASURED).type("11.9 V");
        assertThat(model.checking().state(FIRST)).contains(State.SOUND);
        EntryList.ofLoad(model, 0, 0, LoadEntry.MEASURED).type("9.9 V");
        assertThat(model.checking().state(FIRST)).contains(State.LESS_ARRIVES);
    }

    @Test
    void whatCantBeReadIsSaidAtItsFieldAndStaysAsTyped() {
        lamps();
        cable(Quantity.SECTION).type("thick");
        assertThat(cable(Quantity.SECTION).troubled()).isTrue();
        assertThat(cable(Quantity.SECTION).under()).contains("'thick' is not a number");
        assertThat(cable(Quantity.SECTION).text()).isEqualTo("thick");
        assertThat(model.checking().state(FIRST)).contains(State.INCOMPLETE);
    }

    @Test
    void aFigureWithoutItsUnitIsKeptWithTheOnlyOneItCanHave() {
        model.addCircuit();
        load(LoadEntry.POWER).type("24");
        cable(Quantity.ONE_WAY_LENGTH).type("4,5");
        cable(Quantity.SECTION).type("2.5");
        cable(Quantity.DROP_LIMIT).type("3");
        assertThat(load(LoadEntry.POWER).text()).isEqualTo("24 W");
        assertThat(cable(Quantity.ONE_WAY_LENGTH).text()).isEqualTo("4,5 m");
        assertThat(cable(Quantity.SECTION).text()).isEqualTo("2.5 mm²");
        assertThat(cable(Quantity.DROP_LIMIT).text()).as("volts or per cent").isEqualTo("3");
        assertThat(cable(Quantity.DROP_LIMIT).troubled()).isTrue();
    }

    @Test
    void whereCableIsSoldByGaugeABareSectionIsOneAndALengthIsAskedAbout() {
        assertThat(BareFigure.completed(Quantity.SECTION, "12", WireSizes.AWG)).isEqualTo("12 AWG");
        assertThat(BareFigure.completed(Quantity.ONE_WAY_LENGTH, "12", WireSizes.AWG))
                .isEqualTo("12");
    }

    @Test
    void anOwnFigureNeedsNoUnitAndGetsNone() {
        lamps();
        own(Quantity.CIRCUIT_CURRENT).type("2");
        assertThat(own(Quantity.CIRCUIT_CURRENT).text()).isEqualTo("2");
        assertThat(own(Quantity.CIRCUIT_CURRENT).troubled()).isFalse();
        assertThat(own(Quantity.CIRCUIT_CURRENT).mark().orElseThrow().isSound()).isTrue();
    }

    @Test
    void anOwnFigureIsMarkedAndExplainedAndNeverChanged() {
        lamps();
        own(Quantity.CIRCUIT_CURRENT).type("2 A");
        own(Quantity.DROP).type("0.0688 V");
        assertThat(own(Quantity.CIRCUIT_CURRENT).mark())
                .hasValueSatisfying(mark -> assertThat(mark.isSound()).isTrue());
        assertThat(own(Quantity.DROP).mark())
                .hasValueSatisfying(
                        mark -> assertThat(mark.explanation()).contains("counted one way"));
        cable(Quantity.ONE_WAY_LENGTH).type("10 m");
        assertThat(own(Quantity.DROP).text()).isEqualTo("0.0688 V");
    }

    @Test
    void nothingHasToBeAnswered() {
        lamps();
        assertThat(model.checking().marks(FIRST)).isEmpty();
        assertThat(own(Quantity.DROP).mark()).isEmpty();
    }

    @Test
    void onlySectionsThatCanBeBoughtAreProposed() {
        lamps();
        cable(Quantity.ONE_WAY_LENGTH).type("9 m");
        final Entry stock = EntryList.stock(model);
        stock.type("1.5 mm2; 6 mm2, 10 mm2");
        assertThat(stock.under()).isEqualTo("read as 1.5 mm², 6 mm², 10 mm²");
        assertThat(first().value(Quantity.STANDARD_SECTION).orElseThrow()).isEqualTo(6e-6);
        cable(Quantity.AVAILABLE_SECTIONS).type("4 mm2");
        assertThat(first().value(Quantity.STANDARD_SECTION).orElseThrow()).isEqualTo(4e-6);
        cable(Quantity.AVAILABLE_SECTIONS).type("thick");
        assertThat(cable(Quantity.AVAILABLE_SECTIONS).troubled()).isTrue();
    }

    @Test
    void notesAreKeptWithTheVehicle() {
        EntryList.notes(model).type("Ask for tinned cable.\nMeasure the roof.");
        model.close();
        assertThat(VehicleFile.read(model.keeper().file().orElseThrow()))
                .isEqualTo(new VehicleRead.Whole(model.now()));
        assertThat(model.now().notes()).startsWith("Ask for");
    }

    @Test
    void theMainCableHasItsOwnWaysOutOfTooMuchDrop() {
        lamps();
        load(LoadEntry.POWER).type("600 W");
        given(EntryList.main(model), Quantity.ONE_WAY_LENGTH).type("4 m");
        given(EntryList.main(model), Quantity.SECTION).type("10 mm2");
        final VoltsLost main = model.checking().done().get().orElseThrow().mainVolts();
        assertThat(main.drop().orElseThrow()).isGreaterThan(main.limit().orElseThrow());
        assertThat(main.ways()).extracting(way -> way.remedy().id()).contains("larger-section");
    }

    @Test
    void aThinnerCableTappedOffWithoutAFuseIsSaidFirst() {
        lamps();
        cable(Quantity.FUSE).type("20 A");
        model.addCircuit();
        final Circuit thin =
                Circuit.named("Reading light")
                        .fedFrom(new Feed("Circuit 1", false))
                        .withGiven(Quantity.SECTION, "0.5 mm2")
                        .withGiven(Quantity.ONE_WAY_LENGTH, "40 m")
                        .withLoads(model.now().circuits().get(0).loads());
        model.change("", vehicle -> vehicle.withCircuit(1, thin));
        final Spot tap = new Spot.OfCircuit(1);
        assertThat(model.checking().state(tap)).contains(State.FIRE);
        final var worst = model.checking().done().get().orElseThrow().cautions().get(0);
        assertThat(worst.name()).isEqualTo("Reading light");
        assertThat(worst.caution().id()).isEqualTo("thinner-cable-behind");
    }

    @Test
    void aFigureTypedLetterByLetterIsUndoneAtOnceAndItsPlaceShown() {
        cable(Quantity.SECTION).type("2");
        cable(Quantity.SECTION).type("2.5");
        cable(Quantity.SECTION).type("2.5 mm2");
        model.choose(Spot.Fixed.SUPPLY);
        model.undo();
        assertThat(cable(Quantity.SECTION).text()).isEmpty();
        assertThat(model.chosen().get()).isEqualTo(FIRST);
        model.redo();
        assertThat(cable(Quantity.SECTION).text()).isEqualTo("2.5 mm2");
    }

    /** The voltage stands on three forms. */
    @Test
    void whatIsUndoneIsShownWhereItWasTyped() {
        model.choose(Spot.Fixed.WHOLE);
        EntryList.volts(model).type("24 V");
        model.choose(FIRST);
        model.undo();
        assertThat(model.chosen().get()).isEqualTo(Spot.Fixed.WHOLE);
    }

    @Test
    void onceTheFieldIsLeftTheNextChangeIsUndoneByItself() {
        cable(Quantity.SECTION).type("2.5 mm2");
        model.settled();
        cable(Quantity.SECTION).type("4 mm2");
        model.undo();
        assertThat(cable(Quantity.SECTION).text()).isEqualTo("2.5 mm2");
    }

    @Test
    void itIsSaidWhatAnUndoAndARedoChanged() {
        cable(Quantity.ONE_WAY_LENGTH).type("5 m");
        EntryList.ofLoad(model, 0, 0, LoadEntry.POWER).type("24 W");
        EntryList.circuit(model, 0).own(Quantity.DROP).type("0.2 V");
        EntryList.vehicleName(model).type("Heron");
        assertThat(undone()).isEqualTo("Undone in \"The whole vehicle\": Name of the vehicle.");
        assertThat(undone()).isEqualTo("Undone in \"Circuit 1\": your own figure for the drop.");
        assertThat(undone()).isEqualTo("Undone in \"Circuit 1\": Power of one.");
        assertThat(undone()).isEqualTo("Undone in \"Circuit 1\": Length, one way.");
        assertThat(redone()).isEqualTo("Redone in \"Circuit 1\": Length, one way.");
        cable(Quantity.SECTION).type("4 mm2");
        assertThat(model.told().get()).as("it is no longer what was done last").isEmpty();
    }

    @Test
    void itIsSaidWhichCircuitsAnUndoBringsBackOrTakesOut() {
        model.removeCircuit(0);
        assertThat(undone()).isEqualTo("Undone: \"Circuit 1\" back again.");
        assertThat(redone()).isEqualTo("Redone: \"Circuit 1\" out again.");
        model.change("", it -> it.plus(Circuit.named("Fan")).plus(Circuit.named("Pump")));
        assertThat(undone()).isEqualTo("Undone: 2 circuits out again.");
        model.addCircuit();
        model.addLoad(0);
        assertThat(undone()).isEqualTo("Undone in \"Circuit 1\".");
    }

    @Test
    void whereThereIsNothingToUndoNothingIsSaid() {
        final VehicleModel other =
                new VehicleModel(model.shelf(), () -> SumsInUse.USUAL, Background.atOnce());
        assertThat(other.undo()).isEmpty();
        assertThat(other.redo()).isEmpty();
        assertThat(other.told().get()).isEmpty();
    }

    private String undone() {
        assertThat(model.undo()).isNotNull();
        return model.told().get();
    }

    private String redone() {
        assertThat(model.redo()).isNotNull();
        return model.told().get();
    }

    @Test
    void aCircuitRemovedComesBackByUndo() {
        lamps();
        final var before = model.now();
        model.removeCircuit(0);
        assertThat(model.chosen().get()).isEqualTo(Spot.Fixed.WHOLE);
        model.undo();
        assertThat(model.now()).isEqualTo(before);
        assertThat(model.chosen().get()).isEqualTo(FIRST);
    }

    @Test
    void whatIsTypedLiesInAFileOfItsOwnAndIsOpenedTheNextTime() {
        lamps();
        final Path file = model.keeper().file().orElseThrow();
        model.close();
        assertThat(VehicleFile.read(file)).isEqualTo(new VehicleRead.Whole(model.now()));
        final VehicleModel next =
                new VehicleModel(model.shelf(), () -> SumsInUse.USUAL, Background.atOnce());
        next.openLast();
        assertThat(next.now()).isEqualTo(model.now());
    }

    @Test
    void theExampleIsKeptAsACopyOnceItIsChanged() {
        model.openExample();
        assertThat(model.keeper().file()).isEmpty();
        assertThat(model.keeper().said().get().text()).startsWith("An invented example.");
        EntryList.vehicleName(model).type("Our own");
        assertThat(model.keeper().file()).contains(folder.resolve("vehicles/our-own.json"));
        assertThat(Heron.vehicle().name()).isEqualTo("The Heron");
    }

    @Test
    void theFileIsCalledAsTheVehicleOnceItsNameIsTypedWhole() throws IOException {
        EntryList.vehicleName(model).type("B");
        EntryList.vehicleName(model).type("Box trailer");
        model.settled();
        assertThat(model.keeper().file().orElseThrow().getFileName())
                .hasToString("box-trailer.json");
        assertThat(model.keeper().said().get().text()).contains("box-trailer.json");
        assertThat(model.shelf().recent())
                .extracting(it -> it.getFileName().toString())
                .containsExactly("box-trailer.json");
    }

    @Test
    void twoVehiclesOfOneNameLieInTwoFiles() {
        model.close();
        model.begin();
        EntryList.supply(model).given(List.of(Quantity.SUPPLY_VOLTAGE)).get(0).type("24 V");
        assertThat(model.keeper().file()).contains(folder.resolve("vehicles/my-vehicle-2.json"));
    }

    @Test
    void aFileThatCantBeReadIsSaidAndLeftAsItIs() throws IOException {
        final Path broken = Files.writeString(folder.resolve("broken.json"), "{\n\"wire");
        final var before = model.now();
        model.open(broken);
        assertThat(model.trouble().get()).startsWith("broken.json, line 2");
        assertThat(model.now()).isEqualTo(before);
        assertThat(broken).hasContent("{\n\"wire");
    }

    @Test
    void filesOpenLatelyAreListedTheLatestFirst() throws IOException {
        final Path old = folder.resolve("old.json");
        VehicleFile.write(old, Heron.vehicle());
        model.close();
        model.open(old);
        assertThat(model.shelf().recent())
                .containsExactly(old, folder.resolve("vehicles/my-vehicle.json"));
        Files.delete(old);
        assertThat(model.shelf().recent())
                .containsExactly(folder.resolve("vehicles/my-vehicle.json"));
    }

    @Test
    void whereNothingCanBeWrittenThatIsSaidAndNothingIsLost() throws IOException {
        final Path taken = Files.writeString(folder.resolve("taken"), "a file, not a folder");
        final VehicleModel here =
                new VehicleModel(new Shelf(taken), () -> SumsInUse.USUAL, Background.atOnce());
        EntryList.vehicleName(here).type("Van");
        here.close();
        assertThat(here.keeper().said().get().trouble()).isTrue();
        assertThat(here.keeper().said().get().text()).contains("can't be written");
        assertThat(here.now().name()).isEqualTo("Van");
    }

    @Test
    void ofManyChangesInARowOnlyTheLastIsChecked() {
        final Later later = new Later();
        final VehicleModel slow =
                new VehicleModel(new Shelf(folder.resolve("slow")), () -> SumsInUse.USUAL, later);
        slow.addCircuit();
        final Entry name = EntryList.name(slow, 0);
        name.type("P");
        name.type("Pump");
        assertThat(slow.checking().done().get()).isEmpty();
        later.catchUp();
        assertThat(slow.checking().done().get().map(all -> all.vehicle())).contains(slow.now());
        assertThat(later.results).as("vehicles checked").isEqualTo(1);
    }

    /** Work that is done when it is told to. */
    private static final class Later implements Background {
        private final Queue<Runnable> waiting = new ConcurrentLinkedQueue<>();
        private int results;

        @Override
        public <T> void run(final Supplier<T> work, final Consumer<T> then) {
            waiting.add(
                    () -> {
                        final T result = work.get();
                        results += result instanceof Optional<?> some && some.isPresent() ? 1 : 0;
                        then.accept(result);
                    });
        }

        void catchUp() {
            while (!waiting.isEmpty()) {
                waiting.remove().run();
            }
        }
    }
}
