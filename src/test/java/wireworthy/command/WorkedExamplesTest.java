package wireworthy.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringReader;
import java.io.StringWriter;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;
import wireworthy.rules.Quantity;
import wireworthy.rules.Ref;
import wireworthy.working.Asking;
import wireworthy.working.Worked;

/**
 * Worked examples from standards, regulations, handbooks and open textbooks come out as published.
 * {@code questions.jsonl} puts each into the question format; what the quantities can't express
 * stands in {@code beyond.jsonl} with the reason.
 */
class WorkedExamplesTest {
    private static final String FOLDER = "/wireworthy/examples/";
    private static final double EXACT = 1e-9;

    private static final Map<String, JsonNode> PUBLISHED =
            Asking.lines(FOLDER + "worked-examples.jsonl").stream()
                    .collect(Collectors.toMap(each -> text(each, "id"), Function.identity()));

    /**
     * One published answer as a question.
     *
     * @param value published answer in the program's unit
     * @param tolerance in the program's unit
     */
    record Example(String name, JsonNode question, double value, double tolerance) {
        Quantity asked() {
            return Quantity.of(text(question, "find")).orElseThrow();
        }

        String line() {
            final var line = JsonMapper.builder().build().createObjectNode();
            line.set("given", question.get("given"));
            return line.set("find", question.get("find")).toString();
        }

        @Override
        public String toString() {
            return name;
        }
    }

    static List<Example> examples() {
        return Asking.lines(FOLDER + "questions.jsonl").stream()
                .map(WorkedExamplesTest::example)
                .toList();
    }

    private static Example example(final JsonNode question) {
        final String id = text(question, "id");
        final JsonNode published = Optional.ofNullable(PUBLISHED.get(id)).orElseThrow();
        final double times = question.has("times") ? question.get("times").asDouble() : 1;
        final double value =
                question.has("value")
                        ? question.get("value").asDouble()
                        : answer(published, question);
        return new Example(
                id
                        + ": "
                        + text(published, "source")
                        + ", "
                        + text(published, "where")
                        + ": "
                        + text(question, "find"),
                question,
                value * times,
                tolerance(published.get("tolerance"), question.has("value"), value) * times);
    }

    private static double answer(final JsonNode published, final JsonNode question) {
        final JsonNode answer = published.get("answer");
        return question.has("answer")
                ? answer.get(question.get("answer").asInt()).asDouble()
                : answer.asDouble();
    }

    /** A value between, or the area of a gauge, is printed in five figures. */
    private static double tolerance(
            final JsonNode tolerance, final boolean between, final double value) {
        if (between) {
            return 1e-4 * Math.abs(value);
        }
        if (tolerance.has("abs")) {
            return tolerance.get("abs").asDouble();
        }
        final double share = tolerance.has("rel") ? tolerance.get("rel").asDouble() : EXACT;
        return share * Math.abs(value);
    }

    private static String text(final JsonNode node, final String key) {
        return node.get(key).asString();
    }

    @ParameterizedTest
    @MethodSource("examples")
    void comesOutAsPublished(final Example example) {
        final Worked worked = Asking.worked(JsonMapper.builder().build().readTree(example.line()));
        assertThat(Asking.found(worked, ref(example, worked)))
                .isCloseTo(example.value(), within(example));
    }

    private static org.assertj.core.data.Offset<Double> within(final Example example) {
        return org.assertj.core.data.Offset.offset(example.tolerance());
    }

    private static Ref ref(final Example example, final Worked worked) {
        if (!example.question().has("subject")) {
            return Ref.circuit(example.asked());
        }
        final String subject = text(example.question(), "subject");
        return new Ref(example.asked(), 1 + worked.question().loads().indexOf(subject));
    }

    @Test
    void allComeOutOfOneFileInTheirOrder() throws IOException {
        final List<Example> examples = examples();
        final String file = examples.stream().map(Example::line).collect(Collectors.joining("\n"));
        final StringWriter replies = new StringWriter();

        final boolean all =
                new WorkFile()
                        .work(new BufferedReader(new StringReader(file)), new PrintWriter(replies));

        assertThat(all).isTrue();
        final List<String> lines = replies.toString().lines().toList();
        assertThat(lines).hasSameSizeAs(examples);
        for (int i = 0; i < lines.size(); i++) {
            final double found = found(examples.get(i), lines.get(i));
            assertThat(found)
                    .as(examples.get(i).name())
                    .isCloseTo(examples.get(i).value(), within(examples.get(i)));
        }
    }

    private static double found(final Example example, final String reply) {
        final JsonNode found =
                JsonMapper.builder().build().readTree(reply).get("found").get(example.asked().id());
        return example.question().has("subject")
                ? found.get("values")
                        .get(text(example.question(), "subject"))
                        .get("value")
                        .asDouble()
                : found.get("value").asDouble();
    }

    @Test
    void everyPublishedExampleIsAQuestionOrSaysWhyNot() {
        final List<String> asked = ids("questions.jsonl").stream().distinct().toList();
        final List<String> beyond = ids("beyond.jsonl");
        final List<String> both = new ArrayList<>(asked);
        both.addAll(beyond);

        assertThat(both)
                .doesNotHaveDuplicates()
                .containsExactlyInAnyOrderElementsOf(PUBLISHED.keySet());
        assertThat(Asking.lines(FOLDER + "beyond.jsonl"))
                .allSatisfy(each -> assertThat(text(each, "reason")).isNotBlank());
    }

    @Test
    void everyAnswerOfAListIsAsked() {
        final Map<String, Set<Integer>> asked =
                Asking.lines(FOLDER + "questions.jsonl").stream()
                        .filter(each -> each.has("answer"))
                        .collect(
                                Collectors.groupingBy(
                                        each -> text(each, "id"),
                                        Collectors.mapping(
                                                each -> each.get("answer").asInt(),
                                                Collectors.toSet())));
        final Set<String> beyond = new HashSet<>(ids("beyond.jsonl"));

        lists().filter(each -> !beyond.contains(text(each, "id")))
                .forEach(
                        each ->
                                assertThat(asked.getOrDefault(text(each, "id"), Set.of()))
                                        .as(text(each, "id"))
                                        .hasSize(each.get("answer").size()));
    }

    private static Stream<JsonNode> lists() {
        return PUBLISHED.values().stream().filter(each -> each.get("answer").isArray());
    }

    private static List<String> ids(final String file) {
        return Asking.lines(FOLDER + file).stream().map(each -> text(each, "id")).toList();
    }
}
