package wireworthy.vehicle.check;

import java.util.Arrays;
import java.util.Map;
import java.util.function.Function;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import wireworthy.rules.Quantity;
import wireworthy.texts.Language;
import wireworthy.working.Unworkable;

/**
 * Why something can't be worked, for people who fill in a form: the ids that the question format
 * has are put as the form has them.
 */
final class InWords {
    private static final Pattern ID = Pattern.compile("[a-z]+(-[a-z]+)*");
    private static final Map<String, Quantity> BY_ID =
            Arrays.stream(Quantity.values())
                    .collect(Collectors.toMap(Quantity::id, Function.identity()));

    private InWords() {}

    static String of(final Unworkable why) {
        return ID.matcher(why.what())
                .replaceAll(found -> Matcher.quoteReplacement(word(found.group())));
    }

    /** Ids of one word are words of English, and of no other language. */
    private static String word(final String text) {
        final Quantity quantity = BY_ID.get(text);
        final boolean id = text.contains("-") || !Language.inUse().equals(Language.ENGLISH);
        if (quantity == null || !id) {
            return text;
        }
        return (quantity == Quantity.BATTERY_VOLTAGE ? Quantity.SUPPLY_VOLTAGE : quantity).words();
    }
}
