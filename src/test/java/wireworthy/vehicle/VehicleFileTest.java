package wireworthy.vehicle;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import wireworthy.rules.Quantity;

class VehicleFileTest {
    @TempDir private Path folder;

    private VehicleRead read(final String text) throws IOException {
        return VehicleFile.read(Files.writeString(folder.resolve("van.json"), text));
    }

    private VehicleRead.Refused refused(final String text) throws IOException {
        assertThat(read(text)).isInstanceOf(VehicleRead.Refused.class);
        return (VehicleRead.Refused) read(text);
    }

    private static Vehicle whole(final VehicleRead read) {
        assertThat(read).isInstanceOf(VehicleRead.Whole.class);
        return ((VehicleRead.Whole) read).vehicle();
    }

    @Test
    void whatIsWrittenIsReadBack() throws IOException {
        final Path file = folder.resolve("new").resolve("heron.json");
        VehicleFile.write(file, Heron.vehicle());
        assertThat(whole(VehicleFile.read(file))).isEqualTo(Heron.vehicle());
        assertThat(file.resolveSibling("heron.json.new")).doesNotExist();
    }

    @Test
    void anyVehicleIsReadBackWordForWord() {
        for (int seed = 0; seed < 300; seed++) {
            final Vehicle vehicle = RandomVehicles.of(seed);
            final String text = VehicleWriter.text(vehicle);
            assertThat(whole(VehicleReader.read("van.json", text)))
                    .as("seed %d", seed)
                    .isEqualTo(vehicle);
            assertThat(VehicleWriter.text(whole(VehicleReader.read("van.json", text))))
                    .isEqualTo(text);
        }
    }

    @Test
    void aTextThatIsNoFigureIsKept() throws IOException {
        final Vehicle van =
                whole(
                        read(
                                """
                                {"wireworthy": "vehicle", "version": 1, "name": "Van",
                                 "circuits": [{"name": "Pump", "given": {"section": "thick-ish"}}]}
                                """));
        assertThat(van.circuits().get(0).part().given().text(Quantity.SECTION))
                .isEqualTo("thick-ish");
    }

    @Test
    void plainNumbersAndTruthsAreTakenAsTheQuestionFormatTakesThem() throws IOException {
        final Entries<Quantity> given =
                whole(
                                read(
                                        """
                                        {"wireworthy": "vehicle", "version": 1, "name": "Van",
                                         "circuits": [{"name": "Pump",
                                            "given": {"bundled": 4, "engine-space": true}}]}
                                        """))
                        .circuits()
                        .get(0)
                        .part()
                        .given();
        assertThat(given.text(Quantity.BUNDLED)).isEqualTo("4");
        assertThat(given.text(Quantity.ENGINE_SPACE)).isEqualTo("yes");
    }

    @Test
    void aFileOfANewerVersionIsRefusedAndLeftAsItIs() throws IOException {
        final String newer =
                "{\"wireworthy\": \"vehicle\",\n \"version\": 2, \"name\": \"Van\", \"hull\": {}}";
        final VehicleRead.Refused refused = refused(newer);
        assertThat(refused.line()).isEqualTo(2);
        assertThat(refused.text()).contains("newer version", "left as it is", "reads version 1");
        assertThat(folder.resolve("van.json")).hasContent(newer);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            textBlock =
                    """
                    "supplies": {}                                 | 3 | "supplies" is not known here
                    "supply": {"given": {"volts": "12 V"}}         | 3 | "volts" is not known here
                    "circuits": [{"name": "a", "price": "3"}]      | 3 | "price" is not known here
                    "circuits": [{"name": "a", "given": {"loads": [{"at": "A"}]}}] | 3 | "at" is not known
                    "circuits": {"name": "a"}                      | 3 | a list with at least one entry
                    "circuits": [{"name": ["a"]}]                  | 3 | a text was expected
                    "notes": "a" "b"                               | 3 | this is not JSON
                    "notes": "a", "notes": "b"                     | 3 | this is not JSON
                    """)
    void whatDoesNotBelongThereIsNamedWithItsLine(
            final String entry, final int line, final String because) throws IOException {
        final VehicleRead.Refused refused =
                refused(
                        "{\"wireworthy\": \"vehicle\",\n \"version\": 1, \"name\": \"Van\",\n "
                                + entry
                                + "}");
        assertThat(refused.line()).isEqualTo(line);
        assertThat(refused.text()).contains(because).startsWith("van.json, line 3: ").endsWith(".");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            textBlock =
                    """
                    {}                                        | this is no vehicle
                    []                                        | this is no vehicle
                    {"wireworthy": "bank", "version": 1}      | this is no vehicle
                    {"wireworthy": "vehicle"}                 | "version" is missing
                    {"wireworthy": "vehicle", "version": "1"} | a whole number was expected
                    """)
    void whatIsNoVehicleIsRefused(final String text, final String because) throws IOException {
        assertThat(refused(text).message()).contains(because);
    }

    @Test
    void anEmptyFileIsNoVehicle() throws IOException {
        assertThat(refused("").text()).startsWith("van.json");
    }

    @Test
    void tooLargeATextIsRefusedWithItsLine() throws IOException {
        final String text = VehicleWriter.text(Vehicle.named("n".repeat(121)));
        assertThat(refused(text).text()).contains("line 4", "longer than 120 characters");
    }

    @Test
    void moreCircuitsThanAVehicleHasAreRefused() throws IOException {
        Vehicle van = Vehicle.named("Van");
        for (int i = 0; i <= Vehicle.MOST_CIRCUITS; i++) {
            van = van.plus(Circuit.named("c" + i));
        }
        assertThat(refused(VehicleWriter.text(van)).message()).contains("501 entries are too many");
    }

    @Test
    void otherFilesAreToldApart() throws IOException {
        final Path binary = Files.write(folder.resolve("picture.png"), new byte[] {-119, 80, 78});
        assertThat(((VehicleRead.Refused) VehicleFile.read(binary)).text()).contains("UTF-8");
        final Path gone = folder.resolve("gone.json");
        assertThat(((VehicleRead.Refused) VehicleFile.read(gone)).text()).contains("not there");
        final Path huge = Files.write(folder.resolve("huge.json"), new byte[9 * 1024 * 1024]);
        assertThat(((VehicleRead.Refused) VehicleFile.read(huge)).text()).contains("8 MB");
    }

    @Test
    void aByteOrderMarkDoesNoHarm() throws IOException {
        final String text = "\uFEFF" + VehicleWriter.text(Heron.vehicle());
        final Path file = folder.resolve("bom.json");
        Files.write(file, text.getBytes(StandardCharsets.UTF_8));
        assertThat(whole(VehicleFile.read(file))).isEqualTo(Heron.vehicle());
    }
}
