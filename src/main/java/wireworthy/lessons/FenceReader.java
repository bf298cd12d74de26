package wireworthy.lessons;

import java.util.List;
import java.util.function.Function;
import org.commonmark.node.FencedCodeBlock;
import org.commonmark.node.Node;
import wireworthy.working.Question;
import wireworthy.working.QuestionReader;
import wireworthy.working.Solver;
import wireworthy.working.Unworkable;

/** Reads the fenced blocks of a lesson. */
final class FenceReader {
    private static final int LONGEST = 8000;
    private static final int FEWEST_QUESTIONS = 1;
    private static final int MOST_QUESTIONS = 5;

    private final Solver solver;
    private final Function<String, Node> markdown;

    /**
     * @param markdown reads a caution's text; refuses what text may not hold
     */
    FenceReader(final Solver solver, final Function<String, Node> markdown) {
        this.solver = solver;
        this.markdown = markdown;
    }

    /**
     * Reads one block.
     *
     * @param line of its opening fence
     * @throws Refused naming the line
     */
    Block read(final FencedCodeBlock fence, final int line) {
        final String text = fence.getLiteral();
        if (text.length() > LONGEST) {
            throw new Refused(line, "This block is too long", "Use at most 8000 characters.");
        }
        return switch (fence.getInfo().strip()) {
            case "figure" ->
                    new Block.LiveFigure(line, FigureReader.read(YamlReader.read(text, line)));
            case "worked" -> new Block.WorkedExample(line, question(text, line));
            case "questions" -> questions(YamlReader.read(text, line), line);
            case "caution" -> new Block.CautionBox(line, markdown.apply(text));
            default ->
                    throw new Refused(
                            line,
                            "No block is called \"" + Excerpt.of(fence.getInfo()) + "\"",
                            "Write figure, worked, questions or caution after the ```.");
        };
    }

    private Question question(final String text, final int line) {
        try {
            final Question question = QuestionReader.read(JsonReader.read(text, line));
            solver.work(question);
            return question;
        } catch (final Unworkable e) {
            throw new Refused(
                    line + 1, "The question can't be worked: " + e.what(), "See " + place(e) + ".");
        }
    }

    private static String place(final Unworkable e) {
        return e.where().isEmpty() ? "the question" : e.where();
    }

    private static Block questions(final Yaml.Keys keys, final int line) {
        keys.only(List.of("bank", "templates"));
        final List<String> templates = keys.texts("templates");
        if (templates.size() < FEWEST_QUESTIONS || templates.size() > MOST_QUESTIONS) {
            throw new Refused(
                    keys.at("templates").line(),
                    "A lesson asks one to five questions here",
                    "Name as many templates of the bank.");
        }
        return new Block.Questions(line, keys.text("bank"), templates);
    }
}
