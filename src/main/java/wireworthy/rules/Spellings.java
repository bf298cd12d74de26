package wireworthy.rules;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/**
 * The ways of writing the units of one kind. Capitals do not matter where they cannot: "KW" and
 * "kw" are kilowatts, but "MW" could be milli or mega and has both meanings.
 */
final class Spellings {

    private final Map<String, List<Unit>> exact = new HashMap<>();
    private final Map<String, List<Unit>> anyCase = new HashMap<>();

    /** A spelling that counts in any case. */
    void add(final String spelling, final Unit unit) {
        addExact(spelling, unit);
        addAnyCase(spelling, unit);
    }

    /** A spelling that counts only as it stands. */
    void addExact(final String spelling, final Unit unit) {
        exact.putIfAbsent(plain(spelling), List.of(unit));
    }

    /** A spelling that, even as it stands, leaves room for others that differ in case only. */
    void addAnyCase(final String spelling, final Unit unit) {
        final String folded = folded(plain(spelling));
        addMeaning(folded, unit);
        if (folded.startsWith("m")) {
            addMeaning("M" + folded.substring(1), unit);
        }
    }

    private void addMeaning(final String folded, final Unit unit) {
        final List<Unit> meanings = anyCase.computeIfAbsent(folded, f -> new ArrayList<>(1));
        if (!meanings.contains(unit)) {
            meanings.add(unit);
        }
    }

    /** What the text may mean: nothing, one unit, or two that must be asked about. */
    List<Unit> meanings(final String typed) {
        final String plain = plain(typed);
        final List<Unit> asTyped = exact.getOrDefault(plain, List.of());
        return asTyped.isEmpty() ? anyCase.getOrDefault(folded(plain), List.of()) : asTyped;
    }

    /** Small letters, but a leading capital M stays: it may be mega. */
    private static String folded(final String plain) {
        final String lower = plain.toLowerCase(Locale.ROOT);
        return plain.startsWith("M") ? "M" + lower.substring(1) : lower;
    }

    /** Without spaces, dots, hats and brackets: "Ω·mm²/m" and "ohm mm^2 per m" are one. */
    private static String plain(final String typed) {
        final String slashed = typed.indexOf(" per ") > 0 ? typed.replace(" per ", "/") : typed;
        final StringBuilder plain = new StringBuilder(slashed.length() + 4);
        for (int i = 0; i < slashed.length(); i++) {
            plain.append(plain(slashed, i));
        }
        return plain.toString();
    }

    private static String plain(final String typed, final int at) {
        final char c = typed.charAt(at);
        return switch (c) {
            case ' ', '.', '·', '*', '^', '(', ')' -> "";
            case '-' -> isBetweenLetters(typed, at) ? "" : "-";
            case 'Ω' -> "ohm";
            case '°' -> "deg";
            case '²' -> "2";
            default -> String.valueOf(c);
        };
    }

    private static boolean isBetweenLetters(final String typed, final int at) {
        return at > 0
                && at + 1 < typed.length()
                && Character.isLetter(typed.charAt(at - 1))
                && Character.isLetter(typed.charAt(at + 1));
    }
}
