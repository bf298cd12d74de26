package wireworthy.paper.schedule;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.apache.pdfbox.text.TextPosition;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import wireworthy.paper.PaperSize;
import wireworthy.rules.Quantity;
import wireworthy.vehicle.Circuit;
import wireworthy.vehicle.Heron;
import wireworthy.vehicle.LoadEntry;
import wireworthy.vehicle.Vehicle;
import wireworthy.vehicle.check.CheckedCircuit;
import wireworthy.vehicle.check.CheckedVehicle;
import wireworthy.vehicle.check.VehicleChecker;

/** The circuit schedule as it is printed. */
class ScheduleTest {
    private static final CheckedVehicle HERON = new VehicleChecker().check(Heron.vehicle());
    private static final float MARGIN = 30;

    private static byte[] pdf = {};
    private static String text = "";

    @BeforeAll
    static void print() throws IOException {
        pdf = Schedule.pdf(HERON, PaperSize.A4);
        text = text(pdf);
    }

    /** Its words in one line, without the breaks of the page. */
    private static String text(final byte[] pdf) throws IOException {
        try (PDDocument document = Loader.loadPDF(pdf)) {
            return oneLine(new PDFTextStripper().getText(document));
        }
    }

    private static String oneLine(final String words) {
        return words.replaceAll("\\s+", " ");
    }

    /** A fuse that is a fire, and a current worked on the wrong voltage. */
    @Test
    void whatIsNotSoundIsSaidFirstAndMarkedWhereverItStands() throws IOException {
        final Vehicle vehicle =
                Heron.vehicle()
                        .withCircuit(
                                0,
                                Heron.vehicle()
                                        .circuits()
                                        .get(0)
                                        .withGiven(Quantity.FUSE, "100 A")
                                        .withAnswer(Quantity.CIRCUIT_CURRENT, "123 A"));
        final String words = text(Schedule.pdf(new VehicleChecker().check(vehicle), PaperSize.A4));
        final String name = vehicle.circuits().get(0).name();
        assertThat(words.substring(0, words.indexOf("The circuits")))
                .contains("Could start a fire · " + name)
                .contains("Figures of your own to look at: " + name + " (circuit current)");
        assertThat(words).contains("100 A !").contains("Counted otherwise than chosen: " + name);
        assertThat(words).contains("! circuit current: ");
    }

    @Test
    void aTapThatLacksAFuseIsMarkedInTheDrawingToo() {
        assertThat(text).contains("no fuse 0.5 mm², 2.5 m Popcorn-cart fan");
    }

    @Test
    void everyCircuitIsThereWithItsFuse() {
        for (final CheckedCircuit circuit : HERON.circuits()) {
            assertThat(text).contains(circuit.circuit().name(), oneLine(circuit.fuse().text()));
        }
    }

    @Test
    void whatCouldStartAFireIsSaidBeforeAllElse() {
        final String first = HERON.cautions().get(0).caution().text();

        assertThat(text.indexOf(oneLine(first))).isBetween(0, text.indexOf("The circuits"));
        assertThat(text).containsSubsequence("Could start a fire", "Loses more than the limit");
    }

    @Test
    void aMainFuseThatIsMissingIsSaidFirst() throws IOException {
        final Vehicle van = Vehicle.named("Van").plus(Heron.vehicle().circuits().get(0));
        final String said = text(Schedule.pdf(new VehicleChecker().check(van), PaperSize.A4));

        assertThat(said.substring(0, said.indexOf("The circuits")))
                .contains("Not known yet · Main fuse and main cable: No main fuse is chosen yet");
    }

    /** No table here says what 70 mm2 carries in a van; nobody may read that as sound. */
    @Test
    void aFuseThatCannotBeJudgedIsNeverPassedOver() throws IOException {
        final Circuit winch =
                Heron.vehicle()
                        .circuits()
                        .get(0)
                        .renamed("Winch")
                        .withGiven(Quantity.SECTION, "70 mm2")
                        .withGiven(Quantity.FUSE, "80 A");
        final Vehicle van = Heron.vehicle().withCircuits(List.of(winch));
        final String said = text(Schedule.pdf(new VehicleChecker().check(van), PaperSize.A4));

        assertThat(said)
                .containsSubsequence(
                        "Winch: Nothing says that its fuse protects the cable.",
                        "80 A ?",
                        "A fuse marked ? could not be judged",
                        "Counted, but not judged; nothing says that they protect their cable: Winch: 80 A");
        assertThat(text).doesNotContain("could not be judged");
    }

    @Test
    void aDropAboveItsLimitIsMarkedAndSaidBeforeItsCableIsBought() {
        assertThat(text)
                .containsSubsequence(
                        "0.42 V !",
                        "A drop marked ! is above its limit, counted from the fuse board.",
                        "What to buy",
                        "see its ways out before buying: House lamps; Popcorn-cart fan; Amplifier");
    }

    /** A day's energy of loads that run day and night is no plan to buy a bank by. */
    @Test
    void hoursThatAreMissingAreSaidBeforeTheSumsOfTheSupply() throws IOException {
        final Circuit lamps = Heron.vehicle().circuits().get(0);
        final Circuit open =
                lamps.withLoad(0, lamps.loads().get(0).with(LoadEntry.HOURS_A_DAY, ""));
        final Vehicle van = Heron.vehicle().withCircuit(0, open);
        final String said = text(Schedule.pdf(new VehicleChecker().check(van), PaperSize.A4));

        assertThat(said)
                .containsSubsequence(
                        "796 Wh (running day and night, because hours a day are missing)",
                        "Supply, bank and charging",
                        "Hours a day are missing in: " + lamps.name() + ".",
                        "capacity needed");
        assertThat(text).doesNotContain("Hours a day are missing");
    }

    @Test
    void everySourceOfAValueIsNamed() {
        final List<String> sources =
                HERON.circuits().stream()
                        .flatMap(circuit -> circuit.working().stream())
                        .flatMap(line -> line.source().stream())
                        .map(source -> source.text())
                        .distinct()
                        .toList();

        assertThat(sources).isNotEmpty();
        assertThat(sources).allSatisfy(source -> assertThat(text).contains(oneLine(source)));
    }

    /** How often words stand in a text. */
    private static int times(final String text, final String words) {
        return text.split(Pattern.quote(words), -1).length - 1;
    }

    @Test
    void whatHoldsForManyCircuitsIsSaidOnceWithTheExceptions() {
        assertThat(times(text, "copper at 20 °C; return by its own core")).isOne();
        assertThat(text)
                .contains(
                        "Assumed in all of them, because nothing was given: margin 1.25",
                        "Assumed in all but \"Projector\"",
                        "Assumed in all but \"Aisle strips\", because nothing was given: drop"
                                + " limit 3 %.",
                        "Assumed here, because nothing was given: insulation temperature 70 °C.");
        HERON.circuits().stream()
                .flatMap(circuit -> circuit.assumed().stream())
                .forEach(assumed -> assertThat(text).contains(oneLine(assumed.text())));
    }

    @Test
    void fusesOfWhichTheSameHoldsStandInOneRow() {
        assertThat(text)
                .containsOnlyOnce("limit of its insulation in a time")
                .contains("House lamps, Aisle strips, Ticket desk 830 A 1000 A 0.01 s");
        HERON.faults().stream()
                .filter(fault -> !fault.circuit().isEmpty())
                .forEach(
                        fault ->
                                assertThat(text.substring(text.indexOf("Heats its cable in")))
                                        .contains(fault.circuit()));
    }

    @Test
    void theScheduleOfTheHeronIsTwelvePagesAtMost() throws IOException {
        for (final PaperSize size : PaperSize.values()) {
            try (PDDocument document = Loader.loadPDF(Schedule.pdf(HERON, size))) {
                assertThat(document.getNumberOfPages()).isLessThanOrEqualTo(12);
            }
        }
    }

    @Test
    void whatToBuyAndWhatWasNotCheckedAreThere() {
        assertThat(text)
                .contains(
                        "10 mm² (iso-10133), brown 5 m",
                        "blade, 15 A 2",
                        "Ticket desk: 10 A, not 15 A",
                        "Labels to cut out")
                .contains("What was not checked", "No qualified person has looked at this sheet.");
    }

    @Test
    void equalVehiclesGiveEqualBytes() {
        final CheckedVehicle again = new VehicleChecker().check(Heron.vehicle());

        assertThat(Schedule.pdf(again, PaperSize.A4)).isEqualTo(pdf);
    }

    @ParameterizedTest
    @EnumSource
    void nothingRunsOffThePage(final PaperSize size) throws IOException {
        final byte[] printed = Schedule.pdf(HERON, size);
        Files.write(
                Files.createDirectories(Path.of("target", "pages"))
                        .resolve("schedule-" + size + ".pdf"),
                printed);
        try (PDDocument document = Loader.loadPDF(printed)) {
            final float width = document.getPage(0).getMediaBox().getWidth();
            assertThat(signsBeyond(document, width - MARGIN)).isEmpty();
        }
    }

    private static String signsBeyond(final PDDocument document, final float edge)
            throws IOException {
        final List<TextPosition> beyond = new ArrayList<>();
        new PDFTextStripper() {
            @Override
            protected void processTextPosition(final TextPosition sign) {
                if (sign.getX() + sign.getWidth() > edge) {
                    beyond.add(sign);
                }
            }
        }.getText(document);
        return beyond.stream().map(TextPosition::getUnicode).collect(Collectors.joining());
    }

    @Test
    void longNamesAndNothingKnownStillPrint() throws IOException {
        final Vehicle bare =
                Vehicle.named("B".repeat(Vehicle.LONGEST_NAME))
                        .plus(Circuit.named("C".repeat(Vehicle.LONGEST_NAME)))
                        .plus(Circuit.named("<b>& more</b>"));
        final byte[] printed = Schedule.pdf(new VehicleChecker().check(bare), PaperSize.A4);

        assertThat(text(printed)).contains("<b>& more</b>", "not known", "Not counted");
    }
}
