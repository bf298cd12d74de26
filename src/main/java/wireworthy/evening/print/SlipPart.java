package wireworthy.evening.print;

import static wireworthy.evening.print.SheetPages.TEXTS;

import java.util.ArrayList;
import java.util.List;
import wireworthy.evening.Asked;
import wireworthy.paper.Block;
import wireworthy.practice.ChoiceProblem;
import wireworthy.practice.Problem;

/** One problem of the slip finder. */
final class SlipPart {
    /** So many columns of figures fit beside each other. */
    private static final int COLUMNS = 10;

    private final int number;
    private final ProblemOfAll problem;

    SlipPart(final int number, final ProblemOfAll problem) {
        this.number = number;
        this.problem = problem;
    }

    void into(final Block page) {
        if (problem.first() instanceof Problem first) {
            for (int part = 0; part < first.parts().size(); part++) {
                figures(page, first, part);
            }
        } else if (problem.first() instanceof ChoiceProblem) {
            options(page.add("div", "kept"));
        } else {
            page.say("p", TEXTS.of("finder.order"));
        }
    }

    private void figures(final Block page, final Problem first, final int part) {
        final List<Problem> all = problem.different().stream().map(Problem.class::cast).toList();
        final List<SlipColumn> columns = SlipColumn.of(all, part);
        final OneUnit written = new OneUnit(all, part);
        final Block kept = page.add("div", "kept");
        kept.say("p", "ask", ask(first, part));
        if (!problem.own()) {
            list(kept, written, columns);
            return;
        }
        matrix(kept, written, columns, 0);
        for (int from = COLUMNS; from < columns.size(); from += COLUMNS) {
            matrix(page.add("div", "kept"), written, columns, from);
        }
    }

    private static String ask(final Problem first, final int part) {
        final String ask = Asked.of(first).get(part).ask();
        return first.parts().size() == 1
                ? ask
                : TEXTS.of("part", "part", ProblemOnPaper.part(part), "ask", ask);
    }

    private static void list(
            final Block page, final OneUnit written, final List<SlipColumn> columns) {
        final Block rows = page.add("table", "narrow").add("tbody");
        rows.add("tr").say("td", "right", written.right(0)).say("td", TEXTS.of("finder.right"));
        columns.stream()
                .sorted((a, b) -> Double.compare(a.first(), b.first()))
                .forEach(
                        each ->
                                rows.add("tr")
                                        .say("td", "figure", each.figures().get(0))
                                        .say("td", each.words()));
    }

    /** So many columns as fit beside each other, under what their letters stand for. */
    private void matrix(
            final Block page,
            final OneUnit written,
            final List<SlipColumn> columns,
            final int from) {
        final int to = Math.min(columns.size(), from + COLUMNS);
        final Block legend = page.add("p", "legend");
        final Block table = page.add("table", "matrix");
        final Block head = table.add("thead").add("tr");
        head.say("th", TEXTS.of("finder.learner", "number", number));
        head.say("th", "figure", TEXTS.of("finder.right"));
        for (int i = from; i < to; i++) {
            final Block each = legend.add("span", "gap");
            each.say("b", SlipColumn.letter(i) + "\u00a0");
            each.text(columns.get(i).words());
            legend.text(" ");
            head.say("th", "figure", SlipColumn.letter(i));
        }
        final Block rows = table.add("tbody");
        for (int learner = 0; learner < problem.different().size(); learner++) {
            final Block row = rows.add("tr").say("td", "whose", problem.whose(learner));
            row.say("td", "right", written.right(learner));
            for (final SlipColumn column : columns.subList(from, to)) {
                row.say("td", "figure", column.figures().get(learner));
            }
        }
    }

    /** What each wrong option shows, and which letter it has with whom. */
    private void options(final Block page) {
        page.say("p", "ask", problem.first().ask());
        final List<ChoiceProblem> all =
                problem.different().stream().map(ChoiceProblem.class::cast).toList();
        final Block rows = page.add("table").add("tbody");
        for (final String text : texts(all)) {
            final Block row = rows.add("tr");
            row.say("td", text).say("td", SlipColumn.slip(all, text));
            row.say("td", letters(all, text));
        }
    }

    private static List<String> texts(final List<ChoiceProblem> all) {
        final List<String> texts = new ArrayList<>();
        for (final ChoiceProblem each : all) {
            each.options().stream()
                    .filter(option -> !option.right())
                    .map(ChoiceProblem.Option::text)
                    .filter(text -> !texts.contains(text))
                    .forEach(texts::add);
        }
        return texts;
    }

    private String letters(final List<ChoiceProblem> all, final String text) {
        final StringBuilder letters = new StringBuilder();
        for (int i = 0; i < all.size(); i++) {
            final List<ChoiceProblem.Option> options = all.get(i).options();
            for (int place = 0; place < options.size(); place++) {
                if (options.get(place).text().equals(text) && !options.get(place).right()) {
                    letters.append(problem.whose(i).replace(' ', '\u00a0'));
                    letters.append(":\u00a0").append(Asked.letter(place)).append("  ");
                }
            }
        }
        return letters.toString().strip();
    }
}
