package wireworthy.evening.print;

import static wireworthy.evening.print.SheetPages.TEXTS;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import wireworthy.evening.Asked;
import wireworthy.paper.Block;
import wireworthy.practice.ChoiceProblem;
import wireworthy.practice.Problem;

/** One problem of the slip finder. */
final class SlipPart {
    /** What the columns of figures share, in signs: names and the right figure are beside them. */
    private static final int SIGNS = 90;

    /** Between two columns, in signs. */
    private static final int GAP = 3;

    private static final int MOST_COLUMNS = 10;
    private static final Pattern FIRST_WORDS = Pattern.compile("\\S+( \\S+)?");

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
        kept.say("p", "ask", ask(first, part, ""));
        if (!problem.own()) {
            list(kept, written, columns);
            return;
        }
        final int beside = beside(columns);
        matrix(kept, written, columns.subList(0, Math.min(beside, columns.size())), 0);
        for (int from = beside; from < columns.size(); from += beside) {
            final Block next = page.add("div", "kept");
            next.say("p", "ask", ask(first, part, "goes-on"));
            final int to = Math.min(columns.size(), from + beside);
            matrix(next, written, columns.subList(from, to), from);
        }
    }

    /** So many columns fit beside each other: the longer their figures, the fewer. */
    static int beside(final List<SlipColumn> columns) {
        final int longest =
                columns.stream()
                        .flatMap(each -> each.figures().stream())
                        .mapToInt(String::length)
                        .max()
                        .orElse(1);
        return Math.min(MOST_COLUMNS, SIGNS / (longest + GAP));
    }

    /** What is asked; where the columns go on, and of several parts, of which problem it is. */
    private String ask(final Problem first, final int part, final String further) {
        final String ask = Asked.of(first).get(part).ask();
        final boolean one = first.parts().size() == 1;
        if (one && further.isEmpty()) {
            return ask;
        }
        final String key = one ? further : further.isEmpty() ? "part" : "part-" + further;
        return TEXTS.of(
                "finder." + key, "number", number, "part", ProblemOnPaper.part(part), "ask", ask);
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

    /**
     * Columns beside each other, under what their letters stand for.
     *
     * @param first the place of the first of them among all
     */
    private void matrix(
            final Block page,
            final OneUnit written,
            final List<SlipColumn> columns,
            final int first) {
        final Block legend = page.add("p", "legend");
        final Block table = page.add("table", "matrix");
        final Block head = table.add("thead").add("tr");
        head.say("th", "whose", TEXTS.of("finder.learner", "number", number));
        head.say("th", "figure", TEXTS.of("finder.right"));
        for (int i = 0; i < columns.size(); i++) {
            final String letter = SlipColumn.letter(first + i);
            stands(legend.add("span", "gap"), letter, columns.get(i).words());
            legend.text(" ");
            head.say("th", "figure", letter);
        }
        final Block rows = table.add("tbody");
        for (int learner = 0; learner < problem.different().size(); learner++) {
            final Block row = rows.add("tr").say("td", "whose", problem.whose(learner));
            row.say("td", "right", written.right(learner));
            for (final SlipColumn column : columns) {
                row.say("td", "figure", column.figures().get(learner));
            }
        }
    }

    /** A letter stays on one line with the first words of what it stands for. */
    private static void stands(final Block legend, final String letter, final String words) {
        final Matcher begin = FIRST_WORDS.matcher(words);
        final int end = begin.lookingAt() ? begin.end() : 0;
        final Block together = legend.add("span", "together");
        together.say("b", letter + "\u00a0");
        together.text(words.substring(0, end));
        legend.text(words.substring(end));
    }

    /** What each wrong option shows, and which letter it has with whom. */
    private void options(final Block page) {
        page.say("p", "ask", problem.first().ask());
        final List<ChoiceProblem> all =
                problem.different().stream().map(ChoiceProblem.class::cast).toList();
        final Block rows = page.add("table").add("tbody");
        for (final String text : texts(all)) {
            final Block row = rows.add("tr");
            row.say("td", "option-text", text);
            row.say("td", "option-slip", SlipColumn.slip(all, text));
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
