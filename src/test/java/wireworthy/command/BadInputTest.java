package wireworthy.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringReader;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** What can't be read or worked is said with its place and a remedy; the rest is still answered. */
class BadInputTest {
    private static final String GOOD =
            "{\"given\": {\"load-power\": \"54 W\", \"supply-voltage\": \"12 V\"},"
                    + " \"find\": \"load-current\"}";

    private record Worked(boolean all, List<JsonNode> replies) {
        JsonNode only() {
            assertThat(replies).hasSize(1);
            return replies.get(0);
        }
    }

    private static Worked work(final String file) {
        final StringWriter replies = new StringWriter();
        try {
            final boolean all =
                    new WorkFile()
                            .work(
                                    new BufferedReader(new StringReader(file)),
                                    new PrintWriter(replies));
            final JsonMapper json = JsonMapper.builder().build();
            return new Worked(all, replies.toString().lines().map(json::readTree).toList());
        } catch (final IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static void refused(final String file, final String where, final String says) {
        final Worked worked = work(file);
        assertThat(worked.all()).isFalse();
        final JsonNode error = worked.only().get("error");
        assertThat(error.get("where").asString()).isEqualTo(where);
        assertThat(error.get("message").asString()).contains(says);
    }

    private static String question(final String given, final String find) {
        return "{\"given\": {" + given.replace('\'', '"') + "}, \"find\": \"" + find + "\"}";
    }

    @ParameterizedTest(name = "{0}: {2}")
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '`',
            value = {
                "'load-powr': '54 W', 'supply-voltage': '12 V' | load-current"
                        + " | given.load-powr | is \"load-power\" meant",
                "'load-power': '54', 'supply-voltage': '12 V' | load-current"
                        + " | given.load-power | unit",
                "'load-power': '54 A', 'supply-voltage': '12 V' | load-current"
                        + " | given.load-power | W",
                "'load-power': '1,200 W', 'supply-voltage': '12 V' | load-current"
                        + " | given.load-power | 1.2",
                "'load-power': '0 W', 'supply-voltage': '12 V' | load-current"
                        + " | given.load-power | more than zero",
                "'load-power': '-5 W', 'supply-voltage': '12 V' | load-current"
                        + " | given.load-power | more than zero",
                "'load-power': '54 W', 'supply-voltage': '2 kV' | load-current"
                        + " | given.supply-voltage | 1500 V",
                "'load-power': 'lots', 'supply-voltage': '12 V' | load-current"
                        + " | given.load-power | number",
                "'load-power': '500 W', 'supply-voltage': '12 V' | supply-current"
                        + " | given.efficiency | efficiency",
                "'load-power': '54 W' | load-current | given.supply-voltage | supply-voltage",
                "'section': '2.5 mm2', 'ambient-temperature': '105 degC' | ampacity"
                        + " | given.ambient-temperature | carry nothing",
                "'section': '2.5 mm2', 'cable-table': 'standard-wall',"
                        + " 'ambient-temperature': '70 degC' | fuse-ceiling"
                        + " | given.ambient-temperature | carry nothing",
                "'section': '16 mm2' | ampacity | given.cable-table | boat-cable, iso-10133",
                "'section': '0.3 mm2' | ampacity | given.section | begins at",
                "'section': '2.5 mm2', 'engine-space': 'yes' | ampacity"
                        + " | given.engine-space | boat",
                "'section': '2.5 mm2', 'cable-table': 'red' | ampacity"
                        + " | given.cable-table | thin-wall",
                "'voltage': '12 V', 'current': '2 A', 'resistance': '9 ohm' | power"
                        + " | given.voltage | contradict",
                "'load-power': '54 W', 'load-current': '6 A', 'supply-voltage': '12 V' | drop"
                        + " | given.load-power | contradict",
                "'supply-voltage': '12 V', 'circuit-current': '50 A', 'one-way-length': '100 m',"
                        + " 'section': '1 mm2' | voltage-at-load | given | can't deliver",
                "'bank-capacity': '90 Ah', 'charge-current': '9 A' | charge-time"
                        + " | given.charge-efficiency | charge-efficiency",
                "'supply-voltage': '12 V' | short-circuit-current"
                        + " | given.internal-resistance | internal-resistance",
                "'daily-energy': '900 Wh', 'sun-hours': '3 h' | array-power"
                        + " | given.array-efficiency | array-efficiency",
                "'loads': [] | circuit-current | given.loads | 1 to 60",
                "'loads': [{'name': 'lamp'}] | circuit-current | given.loads[0] | power",
                "'loads': [{'name': 'a', 'current': '1 A'}, {'name': 'a', 'current': '2 A'}]"
                        + " | circuit-current | given.loads[1].name | two loads",
                "'loads': [{'name': 'a', 'wattage': '9 W'}] | circuit-current"
                        + " | given.loads[0].wattage | no such entry",
                "'supply-voltage': {'value': 12} | drop | given.supply-voltage | in quotes",
                "'load-power': '54 W', 'supply-voltage': '12 V' | load-curent"
                        + " | find | is \"load-current\" meant",
                "'section': '2 mm2' | cable-table | find | chosen"
            })
    void aGivenThatWillNotDoIsNamed(
            final String given, final String find, final String where, final String says) {
        refused(question(given, find), where, says);
    }

    @Test
    void aWayBackThroughTheChassisIsNeverTakenOnABoat() {
        refused(
                question(
                        "'cable-table': 'boat-cable', 'return': 'chassis', 'section': '4 mm2',"
                                + " 'one-way-length': '3 m', 'circuit-current': '5 A'",
                        "drop"),
                "given.return",
                "boat");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '`',
            value = {
                "{\"given\": | not one JSON object",
                "{'a': 1} | not one JSON object",
                "[] | a question is an object",
                "7 | a question is an object",
                "{\"given\": {}, \"given\": {}, \"find\": \"drop\"} | given",
                "{\"given\": {}} {\"given\": {}} | not one JSON object",
                "{\"find\": \"drop\"} | missing",
                "{\"given\": {}} | missing",
                "{\"given\": {}, \"find\": []} | at least one",
                "{\"given\": {}, \"find\": \"drop\", \"hint\": 1} | no such entry",
                "{\"given\": [], \"find\": \"drop\"} | an object of quantities"
            })
    void aLineThatIsNoQuestionIsRefusedAndTheNextIsWorked(final String line, final String says) {
        final Worked worked = work(line + "\n\n" + GOOD);

        assertThat(worked.all()).isFalse();
        assertThat(worked.replies()).hasSize(2);
        assertThat(worked.replies().get(0).get("error").get("message").asString()).contains(says);
        assertThat(current(worked.replies().get(1))).isEqualTo(4.5);
    }

    private static double current(final JsonNode reply) {
        return reply.get("found").get("load-current").get("value").asDouble();
    }

    @Test
    void aLineNestedDeepIsRefused() {
        final Worked worked = work("[".repeat(100_000) + "\n" + GOOD);

        assertThat(worked.replies().get(0).has("error")).isTrue();
        assertThat(current(worked.replies().get(1))).isEqualTo(4.5);
    }

    @Test
    void aLineOfMoreThanAMillionCharactersIsRefused() {
        refused("\"" + "x".repeat(1_000_001) + "\"", "line 1", "1,000,000");
    }

    @Test
    void aLongLineOfOneWordIsRefusedShortly() {
        final Worked worked =
                work("{\"given\": {\"" + "x".repeat(900_000) + "\": 1}, \"find\": \"drop\"}");

        assertThat(worked.only().get("error").get("message").asString()).hasSizeLessThan(300);
    }

    @Test
    void aByteOrderMarkAndCarriageReturnsAreReadOver() {
        final Worked worked = work("\uFEFF" + GOOD + "\r\n" + GOOD + "\r\n");

        assertThat(worked.all()).isTrue();
        assertThat(worked.replies()).hasSize(2);
    }

    @Test
    void anAnswerThatCouldBeTwoNumbersIsAskedAbout() {
        final JsonNode mark =
                work(answered("\"load-current\": \"4,500 A\"")).only().get("marks").get(0);

        assertThat(mark.get("sound").isNull()).isTrue();
        assertThat(mark.get("reading").asString()).contains("4.5").contains("4500");
    }

    private static String answered(final String answers) {
        return GOOD.substring(0, GOOD.length() - 1) + ", \"answers\": {" + answers + "}}";
    }

    @Test
    void anAnswerOffTheWayIsAnErrorAndTheOthersAreMarked() {
        final Worked worked = work(answered("\"drop\": \"0.2 V\", \"load-current\": \"4.5 A\""));
        final JsonNode reply = worked.only();

        assertThat(worked.all()).isFalse();
        assertThat(reply.get("error").get("where").asString()).isEqualTo("answers.drop");
        assertThat(reply.get("marks")).hasSize(1);
        assertThat(reply.get("marks").get(0).get("sound").asBoolean()).isTrue();
    }

    @Test
    void oneThingThatCannotBeWorkedLeavesTheOthersFound() {
        final Worked worked =
                work(GOOD.replace("\"load-current\"", "[\"load-current\", \"drop\"]"));
        final JsonNode found = worked.only().get("found");

        assertThat(worked.all()).isFalse();
        assertThat(found.get("load-current").get("value").asDouble()).isEqualTo(4.5);
        assertThat(found.get("drop").get("error").get("message").asString())
                .contains("one-way-length")
                .contains("section");
    }

    @ParameterizedTest
    @CsvSource({"0, false", "2, true"})
    void theExitStatusTellsWhetherEveryQuestionWasWorked(
            final int status, final boolean bad, @TempDir final Path folder) throws IOException {
        final Path file = folder.resolve("questions.jsonl");
        Files.writeString(file, bad ? GOOD + "\n{}" : GOOD, StandardCharsets.UTF_8);

        final int exit =
                WireworthyCommand.run(
                        new String[] {"work", file.toString()},
                        data -> {
                            throw new AssertionError("the window was opened");
                        });

        assertThat(exit).isEqualTo(status);
    }
}
