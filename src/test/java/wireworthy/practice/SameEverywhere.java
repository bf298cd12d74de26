package wireworthy.practice;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import wireworthy.marking.Marker;
import wireworthy.marking.Outcome;
import wireworthy.marking.SlipFigures;
import wireworthy.rules.FigureText;
import wireworthy.rules.Ref;
import wireworthy.working.Solver;
import wireworthy.working.Telling;

/**
 * Prints a digest of each bank: of its exercises and right answers, and of the explanations of
 * wrong ones. Run on other Java versions, in other languages and time zones, it prints the same.
 */
final class SameEverywhere {
    private static final int SEEDS = 20;
    private static final int SLIPS = 3;

    private final Draw draw = new Draw(new Solver());

    private SameEverywhere() {}

    /** Bank and version to the digest of its exercises. */
    static Map<String, String> exercises() {
        return digests(false);
    }

    /** Bank and version to the digest of the explanations. */
    static Map<String, String> explanations() {
        return digests(true);
    }

    private static Map<String, String> digests(final boolean explained) {
        final SameEverywhere same = new SameEverywhere();
        final Map<String, String> digests = new TreeMap<>();
        for (final Bank bank : Banks.read(List.of()).banks()) {
            digests.put(bank.id() + " " + bank.version(), digest(same.text(bank, explained)));
        }
        return digests;
    }

    private String text(final Bank bank, final boolean explained) {
        final StringBuilder text = new StringBuilder();
        for (final Template template : bank.templates()) {
            for (long seed = 1; seed <= SEEDS; seed++) {
                final Exercise exercise = draw.exercise(template, seed);
                text.append(explained ? explanations(exercise) : told(exercise)).append('\n');
            }
        }
        return text.toString();
    }

    private static String told(final Exercise exercise) {
        final String asked = exercise.text() + " " + exercise.ask() + " ";
        if (exercise instanceof ChoiceProblem choice) {
            return asked + choice.options();
        }
        if (exercise instanceof OrderProblem order) {
            return asked + order.stages() + order.shown();
        }
        final Problem problem = (Problem) exercise;
        return asked + problem.worked().value(problem.asked()).orElseThrow();
    }

    private static String explanations(final Exercise exercise) {
        if (!(exercise instanceof Problem problem)) {
            return "";
        }
        final Ref asked = problem.asked();
        final StringBuilder text = new StringBuilder();
        Telling.lines(problem.worked()).forEach(line -> text.append(line.numbers()).append('\n'));
        SlipFigures.of(problem.worked(), asked).stream()
                .map(Outcome::value)
                .filter(Double::isFinite)
                .limit(SLIPS)
                .map(value -> FigureText.of(value, asked.quantity().dimension(), 4))
                .map(typed -> Marker.mark(problem.worked(), asked, typed).explanation())
                .forEach(explanation -> text.append(explanation).append('\n'));
        return text.toString();
    }

    private static String digest(final String text) {
        try {
            final MessageDigest sha = MessageDigest.getInstance("SHA-256");
            return HexFormat.of().formatHex(sha.digest(text.getBytes(StandardCharsets.UTF_8)));
        } catch (final NoSuchAlgorithmException e) {
            throw new IllegalStateException(e);
        }
    }

    public static void main(final String[] arguments) {
        exercises().forEach((bank, digest) -> System.out.println(bank + " " + digest));
        explanations().forEach((bank, digest) -> System.out.println(bank + " " + digest));
    }
}
