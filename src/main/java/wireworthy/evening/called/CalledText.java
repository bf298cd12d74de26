package wireworthy.evening.called;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import wireworthy.rules.Dimension;
import wireworthy.rules.Figures;
import wireworthy.rules.Reading;

/**
 * A piece of what was called out, which may hold several figures parted by blanks only: "4.5 A 9
 * A". A figure begins with a digit, a point or a sign; what follows up to the next is its unit.
 */
final class CalledText {
    /** Semicolons, lines, and commas with a blank behind them part figures beyond doubt. */
    private static final String PARTED = "[;\\n\\r]+|,\\s+";

    private final String piece;
    private final Dimension dimension;
    private final List<String> split;

    CalledText(final String piece, final Dimension dimension) {
        this.piece = piece;
        this.dimension = dimension;
        this.split = split(piece);
    }

    /** The pieces that are parted beyond doubt. */
    static List<String> pieces(final String typed) {
        return Stream.of(typed.split(PARTED))
                .map(String::strip)
                .filter(each -> !each.isEmpty())
                .toList();
    }

    private static List<String> split(final String piece) {
        final List<String> figures = new ArrayList<>();
        for (final String token : piece.split("\\s+", -1)) {
            if (figures.isEmpty() || begins(token.charAt(0))) {
                figures.add(token);
            } else {
                figures.set(figures.size() - 1, figures.get(figures.size() - 1) + " " + token);
            }
        }
        return figures;
    }

    private static boolean begins(final char sign) {
        return Character.isDigit(sign) || sign == '.' || sign == ',' || sign == '-';
    }

    /** Whether it could be one figure, such as 1 200, or several. */
    boolean twoMeanings() {
        return split.size() > 1
                && whole()
                && split.stream().allMatch(this::reads)
                && !(read(split.get(0)) instanceof Reading.Read first && first.unitTyped());
    }

    /** Each figure as a text: one, where the whole reads as one. */
    List<String> figures() {
        return split.size() == 1 || whole() ? List.of(piece) : split;
    }

    private boolean whole() {
        return reads(piece);
    }

    private boolean reads(final String text) {
        return !(read(text) instanceof Reading.Unreadable);
    }

    private Reading read(final String text) {
        return Figures.read(text, dimension, false);
    }
}
