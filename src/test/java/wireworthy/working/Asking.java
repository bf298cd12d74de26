package wireworthy.working;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Objects;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;
import wireworthy.rules.FigureText;
import wireworthy.rules.Quantity;
import wireworthy.rules.Ref;

/** Asks the engine a question as it is written in a file. */
public final class Asking {
    private static final JsonMapper JSON = JsonMapper.builder().build();
    private static final Solver SOLVER = new Solver();

    private Asking() {}

    /** A question worked. */
    public static Worked worked(final String question) {
        return worked(JSON.readTree(question));
    }

    /** A question worked. */
    public static Worked worked(final JsonNode question) {
        return SOLVER.work(QuestionReader.read(question));
    }

    /** A value in its field unit; NaN where nothing fits. */
    public static double found(final Worked worked, final Quantity quantity) {
        return found(worked, Ref.circuit(quantity));
    }

    /** A value in its field unit; NaN where nothing fits. */
    public static double found(final Worked worked, final Ref ref) {
        worked.problem(ref.quantity())
                .ifPresent(
                        why -> {
                            throw why;
                        });
        return worked.value(ref).isEmpty()
                ? Double.NaN
                : FigureText.edge(worked.value(ref).getAsDouble(), ref.quantity().dimension());
    }

    /** The JSON objects of a test resource, one a line. */
    public static List<JsonNode> lines(final String resource) {
        return text(resource).stream().map(JSON::readTree).toList();
    }

    /** The lines of a test resource that are not blank. */
    public static List<String> text(final String resource) {
        final InputStream stream =
                Objects.requireNonNull(Asking.class.getResourceAsStream(resource), resource);
        try (BufferedReader lines =
                new BufferedReader(new InputStreamReader(stream, StandardCharsets.UTF_8))) {
            return lines.lines().filter(line -> !line.isBlank()).toList();
        } catch (final IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
