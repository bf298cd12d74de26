package wireworthy.vehicle.check;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import wireworthy.marking.Mark;
import wireworthy.marking.Marker;
import wireworthy.vehicle.Vehicle;
import wireworthy.vehicle.sheet.Mapping;
import wireworthy.vehicle.sheet.SheetImport;
import wireworthy.vehicle.sheet.SheetRead;
import wireworthy.vehicle.sheet.SheetReader;

/** What a builder brings along: a page of sums, a spreadsheet. Every error in it is found. */
class OwnSumsTest {
    /**
     * Of five circuits three are wrong: the drop one way, the margin left out, a fuse too large.
     */
    private static final List<String> PAGE =
            List.of(
                    page(
                            "Lamps",
                            "\"power\": \"36 W\"",
                            "6 m",
                            "2.5 mm2",
                            "5 A",
                            "\"circuit-current\": \"3 A\", \"drop\": \"0.124 V\""),
                    page(
                            "Pump",
                            "\"current\": \"6 A\"",
                            "4 m",
                            "4 mm2",
                            "10 A",
                            "\"fuse-floor\": \"7,5 A\""),
                    page(
                            "Fridge",
                            "\"power\": \"54 W\"",
                            "3 m",
                            "4 mm2",
                            "7.5 A",
                            "\"fuse-floor\": \"4.5 A\""),
                    page(
                            "Fan",
                            "\"current\": \"2 A\"",
                            "3 m",
                            "1.5 mm2",
                            "30 A",
                            "\"circuit-current\": \"2 A\""),
                    page(
                            "Radio",
                            "\"power\": \"24 W\"",
                            "2 m",
                            "1.5 mm2",
                            "3 A",
                            "\"circuit-current\": \"2 A\""));

    private static String page(
            final String name,
            final String load,
            final String length,
            final String section,
            final String fuse,
            final String own) {
        return """
               {"name": "%s", "given": {"loads": [{"name": "l", %s}], "one-way-length": "%s",
                  "section": "%s", "fuse": "%s"}, "answers": {%s}}
               """
                .formatted(name, load, length, section, fuse, own);
    }

    private static List<String> findings(final CheckedVehicle van) {
        final List<String> cautions =
                van.cautions().stream()
                        .filter(each -> !each.caution().id().equals("limit-met-only-cold"))
                        .map(each -> each.name() + ": " + each.caution().id())
                        .toList();
        final List<String> marks =
                van.circuits().stream()
                        .flatMap(
                                each ->
                                        each.marks().stream()
                                                .filter(mark -> !mark.isSound())
                                                .map(
                                                        mark ->
                                                                each.circuit().name()
                                                                        + ": "
                                                                        + Marker.ids(mark)
                                                                                .get(0)
                                                                                .get(0)))
                        .toList();
        return Stream.concat(cautions.stream(), marks.stream()).toList();
    }

    @Test
    void theThreeErrorsOfAHandwrittenPageAreFound() {
        final CheckedVehicle van = Checked.check(Checked.vehicle(PAGE.toArray(String[]::new)));
        assertThat(findings(van))
                .containsExactlyInAnyOrder(
                        "Fan: fuse-above-cable",
                        "Lamps: one-way-length",
                        "Fridge: margin-left-out");
    }

    private static String explanation(final String load, final String answers) {
        return Checked.check(Checked.vehicle(page("Lamps", load, "5 m", "1.5 mm2", "5 A", answers)))
                .circuits()
                .get(0)
                .marks()
                .get(0)
                .explanation();
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "0.229 V | 0.229 V is sound.",
                "0.233 V | 0.233 V is sound. It goes by 0.0175 Ω·mm²/m for copper; here 0.0172",
                "0.238 V | 0.238 V is sound. It goes by 0.0178",
                "0.117 V | the cable counted one way",
                "0.117 V | (Taken with 0.0175 Ω·mm²/m for copper; here it is 0.0172.)",
                "0.300 V | No known slip",
                "0.23 V | 0.23 V is sound",
                "0.24 V | It goes by 0.0178",
                "0.25 V | It goes by 0.0185",
                "0.247 V | It goes by 0.0185",
                "0.219 V | It goes by 0.0164",
            })
    void aPageMayGoByAnotherFigureForCopper(final String drop, final String said) {
        final String own = "\"drop\": \"" + drop + "\"";
        assertThat(explanation("\"current\": \"2 A\"", own)).contains(said);
    }

    @Test
    void anotherFigureForCopperComesBeforeSlipsThatGiveTheSame() {
        for (final String copper : List.of("0.0168", "0.0175", "0.0178", "0.018", "0.0185")) {
            for (int load = 1; load <= 30; load++) {
                final double amps = load / 2.0;
                final double drop = Double.parseDouble(copper) * 10 / 1.5 * amps;
                final String typed = String.format(Locale.ROOT, "%.2g V", drop);
                final String said =
                        explanation(
                                "\"current\": \"" + amps + " A\"", "\"drop\": \"" + typed + "\"");
                assertThat(said).as("%s with %s", typed, copper).contains("is sound");
            }
        }
    }

    private static CheckedCircuit lamps(final String answers) {
        return Checked.check(
                        Checked.vehicle(
                                page(
                                        "Lamps",
                                        "\"power\": \"24 W\"",
                                        "5 m",
                                        "1.5 mm2",
                                        "5 A",
                                        answers)))
                .circuits()
                .get(0);
    }

    private static String own(final String current, final String others) {
        return "\"circuit-current\": \"%s\", %s".formatted(current, others);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "12.3 A | \"drop\": \"1.41 V\" | 1.41 V follows from your 12.3 A above;",
                "12,3 A | \"drop\": \"1,4 V\" | 1.4 V follows from your 12.3 A above;",
                "12.3 A | \"fuse-floor\": \"15 A\" | 15 A follows from your 12.3 A above;",
                "12.3 A | \"drop\": \"1.46 V\" | above; with that (and 0.0178",
                "12.3 A | \"drop\": \"0.705 V\" | counted one way",
            })
    void whatFollowsFromAnEarlierFigureIsSaidSo(
            final String current, final String drop, final String said) {
        final List<Mark> marks = lamps(own(current, drop)).marks();
        assertThat(marks).hasSize(2);
        assertThat(marks.get(0).follows()).isFalse();
        assertThat(marks.get(1).explanation()).contains(said);
        assertThat(marks.get(1).follows()).isEqualTo(said.contains("above"));
    }

    /** 0.238 V goes by 0.0178, and so do the 1.98 % and the 11.76 V worked from it. */
    @Test
    void whatFollowsFromASoundFigureIsSound() {
        final List<Mark> marks =
                lamps(own("2 A", "\"drop\": \"0.238 V\", \"drop-percent\": \"1.98 %\"")).marks();
        assertThat(marks).hasSize(3).allMatch(Mark::isSound);
    }

    @ParameterizedTest
    @ValueSource(strings = {"0.688 V", "0,70 V", "0.69 V"})
    void theWayBackCountedTwiceIsKnownByWhicheverCopper(final String drop) {
        assertThat(explanation("\"current\": \"3 A\"", "\"drop\": \"" + drop + "\""))
                .contains("the way back is counted twice");
    }

    @Test
    void ofASlipOnAPageNothingIsAskedBack() {
        assertThat(explanation("\"power\": \"10 W\"", "\"circuit-current\": \"120 A\""))
                .contains("the watts are multiplied by the volts")
                .doesNotContain("?");
    }

    /**
     * Of twelve circuits four are wrong: power times volts, one way, a fuse too large, too long.
     */
    private static final String SHEET =
            """
            Circuit;Power (W);Length (m);Cable (mm2);Fuse (A);Total current (A);Voltage drop (V)
            Lamps;24;5;2,5;5;2;0,138
            Strips;18;6;1,5;3;1,5;0,206
            Projector;60;3;6;10;5;0,086
            Till;36;4;2,5;5;3;0,083
            Fan;12;3;1,5;3;1;0,069
            Heater;30;3;2,5;5;360;
            Pump;48;4;4;30;4;0,138
            Fridge;54;3;4;10;4,5;0,116
            Amplifier;120;9;4;15;10;0,774
            Radio;12;2;1,5;30;1;0,046
            Locker;9;4;1,5;3;0,75;0,0688
            Sign;6;5;1,5;3;0,5;0,0573
            """;

    @Test
    void theFourErrorsOfASpreadsheetAreFound() {
        final SheetRead.Whole read =
                (SheetRead.Whole) SheetReader.read(SHEET.getBytes(StandardCharsets.UTF_8));
        final SheetImport taken = SheetImport.of(read.sheet(), Mapping.guess(read.sheet()));
        assertThat(taken.troubles()).isEmpty();
        final Vehicle van = taken.into(Checked.vehicle());
        assertThat(van.circuits()).hasSize(12);
        assertThat(findings(Checked.check(van)))
                .containsExactlyInAnyOrder(
                        "Radio: fuse-above-cable",
                        "Amplifier: drop-over-limit",
                        "Till: one-way-length",
                        "Heater: power-times-volts");
    }
}
