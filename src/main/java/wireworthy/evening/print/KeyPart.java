package wireworthy.evening.print;

import static wireworthy.evening.print.SheetPages.TEXTS;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import wireworthy.evening.Asked;
import wireworthy.facts.Source;
import wireworthy.paper.Block;
import wireworthy.practice.ChoiceProblem;
import wireworthy.practice.Exercise;
import wireworthy.practice.OrderProblem;
import wireworthy.practice.Problem;
import wireworthy.working.Line;
import wireworthy.working.Step;
import wireworthy.working.Telling;

/** One problem of the key: its rules once, then each learner's numbers. */
final class KeyPart {
    private final ProblemOfAll problem;

    KeyPart(final ProblemOfAll problem) {
        this.problem = problem;
    }

    void into(final Block page) {
        page.say("p", "small", problem.own() ? reads() : problem.first().text());
        final List<Asked> asked = Asked.of(problem.first());
        for (int i = 0; i < asked.size(); i++) {
            page.say("p", "ask", asked.size() == 1 ? asked.get(i).ask() : part(i, asked.get(i)));
        }
        if (problem.first() instanceof Problem) {
            byWorking().forEach((way, places) -> workings(page, places));
        } else {
            letters(page);
            why(page);
        }
    }

    private String reads() {
        return TEXTS.of("key.reads", "learner", problem.whose(0), "text", problem.first().text());
    }

    private static String part(final int place, final Asked asked) {
        return TEXTS.of("part", "part", ProblemOnPaper.part(place), "ask", asked.ask());
    }

    /** Learners whose working runs the same way, by its rules. */
    private Map<List<String>, List<Integer>> byWorking() {
        final Map<List<String>, List<Integer>> ways = new LinkedHashMap<>();
        for (int i = 0; i < problem.different().size(); i++) {
            final List<String> rules = lines(i).stream().map(Line::formula).toList();
            ways.computeIfAbsent(rules, any -> new ArrayList<>()).add(i);
        }
        return ways;
    }

    private List<Line> lines(final int place) {
        final Problem each = (Problem) problem.different().get(place);
        final Set<Step> steps = new LinkedHashSet<>();
        each.parts().forEach(part -> steps.addAll(Telling.way(each.worked(), part.ref())));
        return steps.stream()
                .map(step -> Telling.line(each.worked(), step, each.worked().values()))
                .toList();
    }

    private void workings(final Block page, final List<Integer> places) {
        rules(page, lines(places.get(0)));
        final Block rows = page.add("table").add("tbody");
        for (final int place : places) {
            final Block row = rows.add("tr");
            row.say("td", "whose", problem.whose(place));
            final Block working = row.add("td");
            final List<Line> lines = lines(place);
            for (int i = 0; i < lines.size(); i++) {
                working.say("span", "sum", (i + 1) + ")\u00a0" + sum(lines.get(i)));
                working.text(" ");
            }
            row.say("td", "right", right(problem.different().get(place)));
        }
    }

    private static String sum(final Line line) {
        return line.note().isEmpty() ? line.numbers() : line.numbers() + " (" + line.note() + ")";
    }

    private static String right(final Exercise exercise) {
        return Asked.of(exercise).stream().map(Asked::right).collect(Collectors.joining(" · "));
    }

    private static void rules(final Block page, final List<Line> lines) {
        final Block list = page.add("div", "rules");
        for (int i = 0; i < lines.size(); i++) {
            final String source =
                    lines.get(i).source().map(Source::text).map(it -> " [" + it + "]").orElse("");
            list.say("p", (i + 1) + ") " + lines.get(i).formula() + source);
        }
    }

    private void letters(final Block page) {
        final Block all = page.add("p", "strip");
        for (int i = 0; i < problem.different().size(); i++) {
            final Block each = all.add("span", "gap");
            each.text(problem.whose(i) + ":\u00a0");
            each.say("b", right(problem.different().get(i)));
            all.text(" ");
        }
    }

    private void why(final Block page) {
        if (problem.first() instanceof OrderProblem order) {
            final Block list = page.add("ol");
            order.stages().forEach(stage -> list.say("li", stage.text() + ": " + stage.why()));
            return;
        }
        problem.different().stream()
                .map(each -> ((ChoiceProblem) each).right())
                .map(right -> right.text() + ": " + right.why())
                .distinct()
                .limit(2)
                .forEach(text -> page.say("p", text));
    }
}
