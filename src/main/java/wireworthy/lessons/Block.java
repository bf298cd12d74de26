package wireworthy.lessons;

import java.util.List;
import org.commonmark.node.Node;
import wireworthy.working.Question;

/** A part of a screen; {@code line} is where it begins in its file, counted from 1. */
public sealed interface Block {
    int line();

    /**
     * Running text.
     *
     * @param markdown a document of headings, paragraphs, lists, quotes and tables; links lead to
     *     {@code lesson:id} or {@code table:id} only
     */
    record Prose(int line, Node markdown) implements Block {}

    /** A figure to drag. */
    record LiveFigure(int line, Figure figure) implements Block {}

    /** A question whose working is shown; it can be worked. */
    record WorkedExample(int line, Question question) implements Block {}

    /** Questions from a bank, by the ids of their templates. */
    record Questions(int line, String bank, List<String> templates) implements Block {
        public Questions {
            templates = List.copyOf(templates);
        }
    }

    /** A caution; {@code markdown} as in {@link Prose}. */
    record CautionBox(int line, Node markdown) implements Block {}

    /** Stands where a part could not be used. */
    record Broken(int line, LessonProblem problem) implements Block {}
}
