package wireworthy.evening.print;

import static wireworthy.evening.print.SheetPages.TEXTS;

import java.util.List;
import wireworthy.evening.Asked;
import wireworthy.paper.Block;
import wireworthy.paper.CircuitOnPaper;
import wireworthy.practice.ChoiceProblem;
import wireworthy.practice.CircuitLabels;
import wireworthy.practice.Drawing;
import wireworthy.practice.Exercise;
import wireworthy.practice.OrderProblem;
import wireworthy.practice.Problem;

/** A problem as a learner gets it: situation, drawing, question, room for the working. */
final class ProblemOnPaper {
    private final int number;
    private final Exercise exercise;
    private final List<Asked> asked;

    ProblemOnPaper(final int number, final Exercise exercise) {
        this.number = number;
        this.exercise = exercise;
        this.asked = Asked.of(exercise);
    }

    void into(final Block page) {
        final Block problem = page.add("div", "problem");
        final Block head = problem.add("table", "plain").add("tr");
        head.say("td", "problem-number", String.valueOf(number));
        final Block words = head.add("td");
        words.say("p", exercise.text());
        if (asked.size() == 1) {
            words.say("p", "ask", exercise.ask());
        }
        if (exercise.drawing() != Drawing.NONE) {
            circuit().into(head.add("td", "problem-circuit"));
        }
        answer(problem.add("div", "problem-answer"));
    }

    private CircuitOnPaper circuit() {
        final CircuitLabels labels = CircuitLabels.of(exercise);
        return new CircuitOnPaper(
                CircuitOnPaper.Load.valueOf(exercise.drawing().name()),
                labels.supply(),
                labels.cable(),
                labels.length(),
                labels.taken());
    }

    private void answer(final Block page) {
        if (exercise instanceof ChoiceProblem choice) {
            letters(page, choice.options().stream().map(ChoiceProblem.Option::text).toList());
            line(page, TEXTS.of("answer.letter"), "short-line");
        } else if (exercise instanceof OrderProblem order) {
            letters(page, order.shown().stream().map(i -> order.stages().get(i).text()).toList());
            line(page, TEXTS.of("answer.order"), "line");
        } else if (exercise instanceof Problem) {
            figures(page);
        }
    }

    private static void letters(final Block page, final List<String> texts) {
        final Block list = page.add("table", "plain");
        for (int i = 0; i < texts.size(); i++) {
            final Block row = list.add("tr");
            row.say("td", "letter", Asked.letter(i)).say("td", texts.get(i));
        }
    }

    private void figures(final Block page) {
        if (asked.size() == 1) {
            page.say("div", "room", TEXTS.of("working"));
            line(page, TEXTS.of("answer.figure"), "line");
            return;
        }
        for (int i = 0; i < asked.size(); i++) {
            final Block part = page.add("div", "kept");
            part.say("p", "ask", TEXTS.of("part", "part", part(i), "ask", asked.get(i).ask()));
            part.say("div", "part-room", TEXTS.of("working"));
            line(part, TEXTS.of("answer.figure"), "line");
        }
    }

    /** The small letter of a part. */
    static String part(final int place) {
        return String.valueOf((char) ('a' + place));
    }

    private static void line(final Block page, final String words, final String look) {
        final Block row = page.add("table", "plain answer").add("tr");
        row.say("td", "answer-words", words).say("td", look, "");
    }
}
