package wireworthy.paper.schedule;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
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
import wireworthy.vehicle.Circuit;
import wireworthy.vehicle.Heron;
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
        assertThat(text).containsSubsequence("Could start a fire", "Would not work as planned");
    }

    @Test
    void aMainFuseThatIsMissingIsSaidFirst() throws IOException {
        final Vehicle van = Vehicle.named("Van").plus(Heron.vehicle().circuits().get(0));
        final String said = text(Schedule.pdf(new VehicleChecker().check(van), PaperSize.A4));

        assertThat(said.substring(0, said.indexOf("The circuits")))
                .contains("Not known yet · Main fuse and main cable: No main fuse is chosen yet");
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

    @Test
    void whatToBuyAndWhatWasNotCheckedAreThere() {
        assertThat(text)
                .contains("10 mm² (iso-10133), brown 5 m", "blade, 15 A 3", "Labels to cut out")
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
