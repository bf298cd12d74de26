package wireworthy.rules;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import wireworthy.texts.Language;
import wireworthy.texts.Phrases;

/**
 * The text of a sum, such as {@code {load-power} ÷ {supply-voltage}}, with the quantities it takes
 * in the order in which they first appear. One text serves the words, the numbers and the order of
 * the values that the code is given.
 */
public final class Formula {
    private static final Pattern PLACE = Pattern.compile("\\{([a-z-]+)(?:@(\\d+))?}");

    private static final Pattern WORD = Pattern.compile("[a-z]{3}");

    /** From the first letter to the last. */
    private static final Pattern PHRASE = Pattern.compile("[A-Za-z].*[A-Za-z]");

    private static final Phrases PHRASES = new Phrases("formulas");

    private final List<String> between;
    private final List<Ref> places;
    private final List<Ref> inputs;
    private final boolean inWords;

    private Formula(final List<String> between, final List<Ref> places) {
        this.between = List.copyOf(between);
        this.places = List.copyOf(places);
        this.inputs = places.stream().distinct().toList();
        this.inWords = between.stream().anyMatch(part -> WORD.matcher(part).find());
    }

    /**
     * Reads a template. {@code {id}} is the circuit's quantity, {@code {id@2}} that of the second
     * load.
     */
    public static Formula of(final String template) {
        final List<String> between = new ArrayList<>();
        final List<Ref> places = new ArrayList<>();
        final Matcher matcher = PLACE.matcher(template);
        int from = 0;
        while (matcher.find()) {
            between.add(template.substring(from, matcher.start()));
            places.add(place(matcher));
            from = matcher.end();
        }
        between.add(template.substring(from));
        return new Formula(between, places);
    }

    private static Ref place(final Matcher matcher) {
        final String name = matcher.group(1).replace('-', '_').toUpperCase(java.util.Locale.ROOT);
        final String subject = matcher.group(2);
        return new Ref(
                Quantity.valueOf(name), subject == null ? Ref.CIRCUIT : Integer.parseInt(subject));
    }

    /**
     * The same formula for one load of a list: each quantity that loads have becomes that load's.
     */
    public Formula forLoad(final int load) {
        final List<Ref> moved =
                places.stream()
                        .map(r -> r.quantity().ofLoad() ? new Ref(r.quantity(), load) : r)
                        .toList();
        return new Formula(between, moved);
    }

    /** The quantities it takes, in the order of the code's values. */
    public List<Ref> inputs() {
        return inputs;
    }

    /** Whether it says in words what is chosen, rather than a sum of signs. */
    public boolean inWords() {
        return inWords;
    }

    /** Whether it takes over one value as it stands. */
    public boolean onlyCopies() {
        return places.size() == 1 && between.stream().allMatch(String::isEmpty);
    }

    /** The text with the names of the quantities. */
    public String words() {
        return fill(ref -> ref.quantity().words());
    }

    /** The text with each place filled in. */
    public String fill(final Function<Ref, String> filling) {
        final StringBuilder text = new StringBuilder();
        for (int i = 0; i < places.size(); i++) {
            text.append(between(i)).append(filling.apply(places.get(i)));
        }
        return text.append(between(places.size())).toString();
    }

    /** A phrase of it, or signs and numbers, in the language in use. */
    private String between(final int place) {
        final String part = between.get(place);
        if (Language.inUse().ofSources()) {
            return part;
        }
        final Matcher phrase = PHRASE.matcher(Language.inUse().number(part));
        return inWords && phrase.find()
                ? phrase.replaceFirst(Matcher.quoteReplacement(PHRASES.of(phrase.group())))
                : Language.inUse().number(part);
    }

    /** The phrases of it, as other languages have to have them. */
    List<String> phrases() {
        return between.stream()
                .filter(part -> inWords)
                .map(PHRASE::matcher)
                .filter(Matcher::find)
                .map(Matcher::group)
                .toList();
    }
}
