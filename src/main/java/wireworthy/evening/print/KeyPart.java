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
    private final int number;
    private final ProblemOfAll problem;

    KeyPart(final int number, final ProblemOfAll problem) {
        this.number = number;
        this.problem = problem;
    }

    void into(final Block page) {
        if (!(problem.first() instanceof Problem)) {
            final Block kept = page.add("div", "kept");
            asked(kept);
            letters(kept);
            why(kept);
            return;
        }
        final List<List<Integer>> ways = List.copyOf(byWorking().values());
        for (final List<Integer> places : ways) {
            final Block opening = page.add("div", "opening");
            if (places.equals(ways.get(0))) {
                asked(opening);
            }
            rules(opening, lines(places.get(0)));
            workings(page, places);
        }
    }

    private void asked(final Block page) {
        page.say("p", "small", problem.own() ? reads() : problem.first().text());
        final List<Asked> asked = Asked.of(problem.first());
        for (int i = 0; i < asked.size(); i++) {
            page.say("p", "ask", asked.size() == 1 ? asked.get(i).ask() : part(i, asked.get(i)));
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
        final Block table = page.add("table", "workings");
        head(table.add("thead").add("tr"));
        final Block rows = table.add("tbody");
        for (final int place : places) {
            final Block row = rows.add("tr");
            row.say("td", "whose", together(problem.whose(place)));
            final Block working = row.add("td");
            final List<Line> lines = lines(place);
            for (int i = 0; i < lines.size(); i++) {
                working.say("span", "sum", (i + 1) + ")\u00a0" + sum(lines.get(i)));
                working.text(" ");
            }
            row.say("td", "right", right(problem.different().get(place)));
        }
    }

    /** It stands again at the top of each page that the rows go on to. */
    private void head(final Block row) {
        row.say("th", "whose", TEXTS.of("key.learner", "number", number));
        row.say("th", TEXTS.of("key.working"));
        row.say("th", "right", TEXTS.of("key.right"));
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
            each.text(together(problem.whose(i) + ": "));
            each.say("b", together(right(problem.different().get(i))));
            all.text(" ");
        }
    }

    /** One learner's letters are read in one go. */
    private static String together(final String words) {
        return words.replace(' ', '\u00a0');
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
