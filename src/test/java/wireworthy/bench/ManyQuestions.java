package wireworthy.bench;

import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import wireworthy.working.Asking;

/**
 * Writes 10,000 mixed questions, one a line, to measure {@code work} with: the shapes of the frozen
 * plans over and over with other watts and lengths.
 */
public final class ManyQuestions {
    private static final int QUESTIONS = 10_000;

    private ManyQuestions() {}

    /** Writes them to standard output. */
    public static void main(final String[] none) {
        final List<String> shapes = Asking.text("/wireworthy/plans/shapes.jsonl");
        final PrintStream out = new PrintStream(System.out, false, StandardCharsets.UTF_8);
        for (int i = 0; i < QUESTIONS; i++) {
            final String shape = shapes.get(i % shapes.size());
            out.println(
                    shape.replace("\"5 m\"", "\"" + (2 + i % 37 / 10.0) + " m\"")
                            .replace("\"54 W\"", "\"" + (20 + i % 71) + " W\""));
        }
        out.flush();
    }
}
