package wireworthy.window;

import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import wireworthy.practice.Exercise;
import wireworthy.practice.SlipHunt;
import wireworthy.practice.Template;

/**
 * Enough to draw the same exercise again, as one word: {@code voltage-drop/aisle-strips/2/17}.
 *
 * @param hunt whether a slip is to be found in its working
 */
record ExerciseName(String bank, String template, int version, long seed, boolean hunt) {
    private static final String HUNT = "/hunt";
    private static final Pattern WORD =
            Pattern.compile("([^/]+)/([^/]+)/(\\d{1,9})/(\\d{1,18})(" + HUNT + ")?");

    static ExerciseName of(final Exercise exercise) {
        final Template template = exercise.template();
        return new ExerciseName(
                template.bank(),
                template.id(),
                template.version(),
                exercise.seed(),
                exercise instanceof SlipHunt);
    }

    /** Reads a word; empty where it names no exercise. */
    static Optional<ExerciseName> read(final String word) {
        final Matcher matcher = WORD.matcher(word);
        return matcher.matches()
                ? Optional.of(
                        new ExerciseName(
                                matcher.group(1),
                                matcher.group(2),
                                Integer.parseInt(matcher.group(3)),
                                Long.parseLong(matcher.group(4)),
                                matcher.group(5) != null))
                : Optional.empty();
    }

    /** The word. */
    String word() {
        final String drawn = String.join("/", bank, template, version + "/" + seed);
        return hunt ? drawn + HUNT : drawn;
    }
}
