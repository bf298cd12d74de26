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
    /** So many problems share the first page with the head of the sheet. */
    private static final int ON_FIRST_PAGE = 3;

    private final int number;
    private final Exercise exercise;
    private final List<Asked> asked;

    ProblemOnPaper(final int number, final Exercise exercise) {
        this.number = number;
        this.exercise = exercise;
        this.asked = Asked.of(exercise);
    }

    void into(final Block page) {
        final Block problem = page.add("div", number > ON_FIRST_PAGE ? "problem" : "problem first");
        problem.say("div", "problem-number", String.valueOf(number));
        if (exercise.drawing() == Drawing.NONE) {
            words(problem.add("div", "problem-words"));
        } else {
            final Block head = problem.add("table", "plain problem-words").add("tr");
            words(head.add("td"));
            circuit().into(head.add("td", "problem-circuit"));
        }
        answer(problem.add("div", "problem-answer"));
    }

    private void words(final Block page) {
        page.say("p", exercise.text());
        if (asked.size() == 1) {
            page.say("p", "ask", exercise.ask());
        }
    }

    private CircuitOnPaper circuit() {
        final CircuitLabels labels = CircuitLabels.of(exercise);
        return new CircuitOnPaper(
                CircuitOnPaper.Load.valueOf(exercise.drawing().name()),
                labels.supply(),
                labels.cable(),
                labels.length(),
                labels.taken(),
                labels.beside());
    }

    private void answer(final Block page) {
        if (exercise instanceof ChoiceProblem choice) {
            letters(page, choice.options().stream().map(ChoiceProblem.Option::text).toList());
            line(page, TEXTS.of("answer.letter"), "answer short");
        } else if (exercise instanceof OrderProblem order) {
            letters(page, order.shown().stream().map(i -> order.stages().get(i).text()).toList());
            line(page, TEXTS.of("answer.order"), "answer");
        } else if (exercise instanceof Problem) {
            figures(page);
        }
    }

    private static void letters(final Block page, final List<String> texts) {
        for (int i = 0; i < texts.size(); i++) {
            final Block option = page.add("p", "option");
            option.say("span", "letter", Asked.letter(i)).text(texts.get(i));
        }
    }

    private void figures(final Block page) {
        if (asked.size() == 1) {
            page.say("div", "room", TEXTS.of("working"));
            line(page, TEXTS.of("answer.figure"), "answer");
            return;
        }
        for (int i = 0; i < asked.size(); i++) {
            final Block part = page.add("div", "kept");
            part.say("p", "ask", TEXTS.of("part", "part", part(i), "ask", asked.get(i).ask()));
            part.say("div", "part-room", TEXTS.of("working"));
            line(part, TEXTS.of("answer.figure"), "answer");
        }
    }

    /** The small letter of a part. */
    static String part(final int place) {
        return String.valueOf((char) ('a' + place));
    }

    private static void line(final Block page, final String words, final String look) {
        page.say("p", look, words);
    }
}
