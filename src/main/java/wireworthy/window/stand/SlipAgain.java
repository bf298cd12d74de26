package wireworthy.window.stand;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import wireworthy.record.Answer;
import wireworthy.texts.TextBundle;

/**
 * A slip that was made more than once.
 *
 * @param words what happened, as a clause: "the watts multiplied by the volts"
 * @param times how often
 */
public record SlipAgain(String words, int times) {
    private static final TextBundle SLIPS = new TextBundle("slips");

    /** The slips that explain more than one of these answers, the most frequent first. */
    static List<SlipAgain> of(final List<Answer> answers) {
        final Map<String, Integer> times = new LinkedHashMap<>();
        answers.stream()
                .map(Answer::slips)
                .filter(slips -> !slips.isEmpty())
                .forEach(slips -> times.merge(words(slips), 1, Integer::sum));
        return times.entrySet().stream()
                .filter(each -> each.getValue() > 1)
                .map(each -> new SlipAgain(each.getKey(), each.getValue()))
                .sorted((a, b) -> Integer.compare(b.times(), a.times()))
                .toList();
    }

    private static String words(final List<List<String>> alternatives) {
        return alternatives.stream()
                .map(SlipAgain::together)
                .collect(Collectors.joining(", " + StandTexts.of("slip.or") + " "));
    }

    private static String together(final List<String> slips) {
        return slips.stream()
                .map(SlipAgain::clause)
                .collect(Collectors.joining(" " + StandTexts.of("slip.and") + " "));
    }

    /** A record of another version may name a slip that is not known here. */
    private static String clause(final String id) {
        final String key = id + ".short";
        return SLIPS.has(key) ? SLIPS.of(key) : id.replace('-', ' ');
    }
}
