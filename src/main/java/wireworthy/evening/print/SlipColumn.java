package wireworthy.evening.print;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import wireworthy.marking.Change;
import wireworthy.marking.Outcome;
import wireworthy.marking.SlipFigures;
import wireworthy.practice.ChoiceProblem;
import wireworthy.practice.Problem;
import wireworthy.rules.Ref;
import wireworthy.texts.TextBundle;
import wireworthy.working.Worked;

/**
 * The figures of one slip, or of several that always give the same.
 *
 * @param words what went wrong, with "or" between several
 * @param figures for each learner; a dash where the slip gives nothing that would be noticed
 * @param first the figure of the first learner, SI, to sort by
 */
record SlipColumn(String words, List<String> figures, double first) {
    private static final TextBundle SLIPS = new TextBundle("slips");
    private static final String NONE = "–";
    private static final int LETTERS = 26;
    private static final Pattern MAINS = Pattern.compile("÷ ([0-9]+)$");

    /** The name of a column: a to z, then a2. */
    static String letter(final int place) {
        final String letter = String.valueOf((char) ('a' + place % LETTERS));
        return place < LETTERS ? letter : letter + (place / LETTERS + 1);
    }

    /**
     * The slips at one part of a problem that can't have been made at an earlier part.
     *
     * @param all the problem of every learner
     */
    static List<SlipColumn> of(final List<Problem> all, final int part) {
        final Map<String, double[]> values = new LinkedHashMap<>();
        for (int learner = 0; learner < all.size(); learner++) {
            final Map<String, Double> own = figures(all.get(learner), part);
            if (part > 0) {
                own.keySet().removeAll(figures(all.get(learner), part - 1).keySet());
            }
            for (final Map.Entry<String, Double> each : own.entrySet()) {
                values.computeIfAbsent(each.getKey(), any -> nothing(all.size()))[learner] =
                        each.getValue();
            }
        }
        return merged(new OneUnit(all, part), values);
    }

    /** What each slip comes to, by its words; one that can happen twice says where besides. */
    private static Map<String, Double> figures(final Problem problem, final int part) {
        final Worked worked = problem.worked();
        final Map<String, Double> figures = new LinkedHashMap<>();
        for (final Outcome slip : SlipFigures.of(worked, problem.parts().get(part).ref())) {
            final Change change = slip.changes().get(0);
            final String words = words(worked, change);
            final boolean again = figures.containsKey(words);
            figures.put(again ? again(words, worked, change) : words, slip.value());
        }
        return figures;
    }

    private static String again(final String words, final Worked worked, final Change change) {
        return change instanceof Change.AtLine line
                ? words + " (" + named(worked, worked.plan().at(output(worked, line))) + ")"
                : SheetPages.TEXTS.of("finder.again", "slip", words);
    }

    private static int output(final Worked worked, final Change.AtLine line) {
        return worked.plan().steps().get(line.line()).output();
    }

    private static double[] nothing(final int size) {
        return IntStream.range(0, size).mapToDouble(i -> Double.NaN).toArray();
    }

    /** "a slip of the decimal point" and where: the given misread or the line gone wrong. */
    private static String words(final Worked worked, final Change change) {
        final String slip = SLIPS.of(change.id() + ".short");
        if (change instanceof Change.OfResult result) {
            return slip + (result.factor() > 1 ? " (× 10)" : " (÷ 10)");
        }
        if (change instanceof Change.Misread misread) {
            return slip + " (" + named(worked, worked.plan().at(misread.place())) + ")";
        }
        return change instanceof Change.AtLine line ? slip + mains(line) : slip;
    }

    /** Two mains are common: which of them. */
    private static String mains(final Change.AtLine line) {
        final Matcher volts = MAINS.matcher(line.at().slip().formula().words());
        return line.id().equals("mains-voltage") && volts.find()
                ? " (" + volts.group(1) + " V)"
                : "";
    }

    private static String named(final Worked worked, final Ref ref) {
        final String subject = worked.question().subject(ref);
        return subject.isEmpty() ? ref.quantity().words() : ref.quantity().words() + ", " + subject;
    }

    private static List<SlipColumn> merged(
            final OneUnit written, final Map<String, double[]> values) {
        final Map<List<String>, SlipColumn> columns = new LinkedHashMap<>();
        values.forEach(
                (words, si) -> {
                    final List<String> figures = figures(written, si);
                    if (figures.stream().anyMatch(text -> !text.equals(NONE))) {
                        columns.merge(
                                figures,
                                new SlipColumn(words, figures, si[0]),
                                (one, other) -> one.or(other.words));
                    }
                });
        return List.copyOf(columns.values());
    }

    private SlipColumn or(final String others) {
        return new SlipColumn(
                SheetPages.TEXTS.of("finder.or", "slips", words, "slip", others), figures, first);
    }

    private static List<String> figures(final OneUnit written, final double[] si) {
        final List<String> figures = new ArrayList<>();
        for (int learner = 0; learner < si.length; learner++) {
            final String text = Double.isFinite(si[learner]) ? written.text(si[learner]) : NONE;
            figures.add(text.equals(written.right(learner)) ? NONE : text);
        }
        return figures;
    }

    /** What choosing an option shows; its reason where no slip is named. */
    static String slip(final List<ChoiceProblem> all, final String text) {
        final Optional<ChoiceProblem.Option> option =
                all.stream()
                        .flatMap(each -> each.options().stream())
                        .filter(each -> !each.right() && each.text().equals(text))
                        .findFirst();
        return option.map(it -> it.slip().map(id -> SLIPS.of(id + ".short")).orElseGet(it::why))
                .orElse("");
    }
}
