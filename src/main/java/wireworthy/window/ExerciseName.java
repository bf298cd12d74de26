package wireworthy.window;

import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import wireworthy.practice.Exercise;
import wireworthy.practice.SlipHunt;
import wireworthy.practice.Template;

/**
 * Enough to draw the same exercise again, as one word: {@code voltage-drop/aisle-strips/2/17}; a
 * hidden slip is named behind it.
 *
 * @param hunt id of the slip that is to be found in its working; empty where there is none to be
 */
record ExerciseName(String bank, String template, int version, long seed, Optional<String> hunt) {
    private static final String HUNT = "/hunt/";
    private static final Pattern WORD =
            Pattern.compile("([^/]+)/([^/]+)/(\\d{1,9})/(\\d{1,18})(?:" + HUNT + "([^/]+))?");

    static ExerciseName of(final Exercise exercise) {
        final Template template = exercise.template();
        return new ExerciseName(
                template.bank(),
                template.id(),
                template.version(),
                exercise.seed(),
                exercise instanceof SlipHunt it
                        ? Optional.of(it.slip().ids().get(0))
                        : Optional.empty());
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
                                Optional.ofNullable(matcher.group(5))))
                : Optional.empty();
    }

    /** The word. */
    String word() {
        final String drawn = String.join("/", bank, template, version + "/" + seed);
        return hunt.map(slip -> drawn + HUNT + slip).orElse(drawn);
    }
}
