package wireworthy.working;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assumptions.assumeThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import wireworthy.rules.Ref;

/**
 * The way the engine takes through a question, frozen for many shapes of question: what it assumes,
 * then each line's rule and what it gives. A change of the rules that turns a question into another
 * way shows here. {@code mvn test -Dtest=PlanGoldenTest -Dplans.write=true} writes the file anew.
 */
class PlanGoldenTest {
    private static final String FOLDER = "/wireworthy/plans/";
    private static final Path GOLDEN = Path.of("src/test/resources/wireworthy/plans/plans.txt");

    private record Frozen(String question, String plan) {
        @Override
        public String toString() {
            return question;
        }
    }

    static Stream<String> shapes() {
        return Asking.text(FOLDER + "shapes.jsonl").stream();
    }

    static Stream<Frozen> frozen() {
        return Asking.text(FOLDER + "plans.txt").stream()
                .map(line -> List.of(line.split(" => ", -1)))
                .map(parts -> new Frozen(parts.get(0), parts.get(1)));
    }

    @ParameterizedTest
    @MethodSource("frozen")
    void aQuestionIsWorkedTheSameWay(final Frozen frozen) {
        assertThat(plan(frozen.question())).isEqualTo(frozen.plan());
    }

    @Test
    void everyShapeIsFrozen() {
        assertThat(frozen().map(Frozen::question)).containsExactlyElementsOf(shapes().toList());
    }

    @Test
    void writesTheFileAnewWhenAsked() throws IOException {
        assumeThat(System.getProperty("plans.write")).isEqualTo("true");
        final String text =
                shapes().map(each -> each + " => " + plan(each)).collect(Collectors.joining("\n"));
        Files.writeString(GOLDEN, text + "\n", StandardCharsets.UTF_8);
        assertThat(GOLDEN).isNotEmptyFile();
    }

    private static String plan(final String question) {
        final Plan plan = Asking.worked(question).plan();
        final String assumed =
                plan.assumed().stream().map(PlanGoldenTest::name).collect(Collectors.joining(", "));
        final String lines =
                plan.steps().stream()
                        .map(s -> name(s.direction().output()) + " by " + s.direction().rule())
                        .collect(Collectors.joining("; "));
        return (assumed.isEmpty() ? "" : "assuming " + assumed + ": ") + lines;
    }

    private static String name(final Ref ref) {
        final String id = ref.quantity().id();
        return ref.subject() == Ref.CIRCUIT ? id : id + " of load " + ref.subject();
    }
}
