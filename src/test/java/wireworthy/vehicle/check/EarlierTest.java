package wireworthy.vehicle.check;

import static org.assertj.core.api.Assertions.assertThat;
import static wireworthy.rules.Quantity.*;

import java.util.List;
import java.util.function.UnaryOperator;
import org.junit.jupiter.api.Test;
import wireworthy.marking.Mark;
import wireworthy.rules.Quantity;
import wireworthy.vehicle.Circuit;
import wireworthy.vehicle.Load;
import wireworthy.vehicle.LoadEntry;
import wireworthy.vehicle.Vehicle;

/** An own figure that was right before something was changed is told apart from a mistake. */
class EarlierTest {
    private static final Vehicle VAN =
            Checked.vehicle(
                    """
                    {"name": "Lamps",
                     "given": {"one-way-length": "5 m", "section": "1.5 mm2",
                       "loads": [{"name": "lamp", "power": "24 W", "hours-a-day": "3 h"}]},
                     "answers": {"circuit-current": "2 A", "drop": "0.23 V",
                       "daily-energy": "72 Wh"}}
                    """);

    private final VehicleChecker checker = new VehicleChecker();

    EarlierTest() {
        checker.check(VAN);
    }

    private Mark after(final Quantity quantity, final UnaryOperator<Circuit> change) {
        return mark(VAN.withCircuit(0, change.apply(VAN.circuits().get(0))), quantity);
    }

    private Mark mark(final Vehicle vehicle, final Quantity quantity) {
        return checker.check(vehicle).circuits().get(0).mark(quantity).orElseThrow();
    }

    private static Circuit load(final Circuit circuit, final LoadEntry entry, final String text) {
        return circuit.withLoad(0, circuit.loads().get(0).with(entry, text));
    }

    @Test
    void aDropWorkedForTheCableBeforeStillGoesWithThat() {
        final Mark mark = after(DROP, it -> it.withGiven(SECTION, "4 mm2"));
        assertThat(mark.explanation())
                .isEqualTo(
                        "0.23 V still goes with the earlier section, 1.5 mm². With what stands"
                                + " there now it comes to 0.086 V.");
        assertThat(mark.isSound()).isFalse();
        assertThat(mark.asksBack()).isTrue();
    }

    @Test
    void onlyWhatTheFigureIsWorkedFromIsNamed() {
        final UnaryOperator<Circuit> change =
                it ->
                        load(it.withGiven(SECTION, "4 mm2"), LoadEntry.POWER, "36 W")
                                .withGiven(FUSE, "10 A");
        assertThat(after(CIRCUIT_CURRENT, change).explanation())
                .isEqualTo(
                        "2 A still goes with the earlier load power of lamp, 24 W."
                                + " With what stands there now it comes to 3 A.");
        assertThat(after(DROP, change).explanation())
                .contains("load power of lamp, 24 W")
                .contains("and the earlier section, 1.5 mm²");
    }

    @Test
    void hoursAreNamedAsHours() {
        assertThat(after(DAILY_ENERGY, it -> load(it, LoadEntry.HOURS_A_DAY, "5 h")).explanation())
                .contains("the earlier hours a day of lamp, 3 h.");
    }

    @Test
    void anotherLoadAndAnotherVoltageAreNamed() {
        final Load radio = Load.named("radio").with(LoadEntry.POWER, "12 W");
        assertThat(after(CIRCUIT_CURRENT, it -> it.plus(radio)).explanation())
                .contains("still goes with the loads as they were before");
        final Vehicle on24 = VAN.withSupply(VAN.supply().withGiven(SUPPLY_VOLTAGE, "24 V"));
        assertThat(mark(on24, CIRCUIT_CURRENT).explanation())
                .contains("still goes with the earlier supply voltage, 12 V");
    }

    @Test
    void itIsSoundAgainWithTheChangeTakenBackAndFollowsANewName() {
        assertThat(after(DROP, it -> it.withGiven(SECTION, "4 mm2")).isSound()).isFalse();
        assertThat(after(DROP, it -> it).isSound()).isTrue();
        assertThat(after(DROP, it -> it.renamed("Strip")).isSound()).isTrue();
        assertThat(
                        after(DROP, it -> it.renamed("Strips").withGiven(SECTION, "4 mm2"))
                                .explanation())
                .contains("still goes with");
    }

    @Test
    void aFigureThatWasNeverSoundOrIsAnotherVehiclesIsNoneOfThese() {
        final UnaryOperator<Circuit> thicker = it -> it.withGiven(SECTION, "4 mm2");
        assertThat(after(DROP, it -> thicker.apply(it).withAnswer(DROP, "0.26 V")).explanation())
                .doesNotContain("goes with");
        checker.forget();
        assertThat(after(DROP, thicker).explanation()).doesNotContain("goes with");
    }

    /** What could start a fire is said first, as ever. */
    @Test
    void aFuseTooLargeForTheCableNowIsStillAFire() {
        final Mark fuse =
                mark(VAN.withCircuit(0, VAN.circuits().get(0).withAnswer(FUSE, "15 A")), FUSE);
        assertThat(fuse.isSound()).isTrue();
        final Mark now =
                after(FUSE, it -> it.withAnswer(FUSE, "15 A").withGiven(SECTION, "0.5 mm2"));
        assertThat(now.explanation())
                .startsWith("A fuse of 15 A could let the cable overheat")
                .endsWith("It goes with the earlier section, 1.5 mm².");
        assertThat(now.sound()).hasValue(false);
    }

    @Test
    void theMainFusesFiguresGoWithTheCircuitsAsTheyWere() {
        final Vehicle main =
                VAN.withMain(
                        VAN.main()
                                .withGiven(ONE_WAY_LENGTH, "2 m")
                                .withGiven(SECTION, "10 mm2")
                                .withAnswer(FUSE_FLOOR, "2.5 A"));
        assertThat(checker.check(main).main().marks()).allMatch(Mark::isSound);
        final Vehicle more =
                main.withCircuit(0, load(main.circuits().get(0), LoadEntry.POWER, "48 W"));
        assertThat(checker.check(more).main().marks())
                .extracting(Mark::explanation)
                .isEqualTo(
                        List.of(
                                "2.5 A still goes with the earlier circuit current, 2 A."
                                        + " With what stands there now it comes to 5 A."));
    }
}
