package wireworthy.lessons;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.regex.Pattern;

/**
 * How hard a text is to read: the Flesch-Kincaid grade, 0.39 words per sentence + 11.8 syllables
 * per word - 15.59 (Kincaid, Fishburne, Rogers and Chissom 1975). A syllable is a run of vowels; a
 * silent e at the end is none. Bare numbers are no words.
 */
public final class ReadingEase {
    private static final Pattern SENTENCE_END =
            Pattern.compile("(?<=[.?!])\\s+|(?<=[.?!]\\))\\s+|\\n");
    private static final Pattern VOWELS = Pattern.compile("[aeiouy]+");

    private final List<String> sentences;

    public ReadingEase(final String text) {
        this.sentences =
                SENTENCE_END.splitAsStream(text).filter(each -> !words(each).isEmpty()).toList();
    }

    private static List<String> words(final String text) {
        return Arrays.stream(text.split("[\\s\\u2013/-]+"))
                .filter(piece -> piece.chars().anyMatch(Character::isLetter))
                .toList();
    }

    /** Its sentences, headings among them. */
    public List<String> sentences() {
        return sentences;
    }

    /** How many words a sentence has in the mean. */
    public double wordsPerSentence() {
        return (double) words(String.join(" ", sentences)).size() / sentences.size();
    }

    /** The year of school for which it is right. */
    public double grade() {
        final List<String> words = words(String.join(" ", sentences));
        final double syllables = words.stream().mapToInt(ReadingEase::syllables).sum();
        return 0.39 * wordsPerSentence() + 11.8 * syllables / words.size() - 15.59;
    }

    private static int syllables(final String word) {
        final String plain =
                word.toLowerCase(Locale.ROOT).replaceAll("[^a-z]", "").replaceFirst("e$", "");
        return (int) Math.max(1, VOWELS.matcher(plain).results().count());
    }
}
