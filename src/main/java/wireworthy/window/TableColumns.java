package wireworthy.window;

import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import wireworthy.facts.FactTable;
import wireworthy.window.parts.Texts;

/** How wide the columns of a table are, in text sizes, by what stands in them. */
record TableColumns(List<Column> all) {
    private static final double CHARACTER = 0.54;

    /** Of a word that must not be broken; headings are bold. */
    private static final double BOLD_CHARACTER = 0.57;

    private static final double NARROWEST = 2.4;
    private static final double COMFORTABLE = 3.5;
    private static final double WIDEST = 16;

    /** Beside the text of each column, as in the style sheet, and what rounding to pixels takes. */
    private static final double MARGINS = 1.78;

    private static final double CLOSE_MARGINS = 0.98;
    private static final double NEARLY = 0.01;

    /**
     * One of them.
     *
     * @param figures whether it holds figures alone
     * @param least the width of its longest word
     * @param wanted the width at which few of its texts wrap
     */
    record Column(boolean figures, double least, double wanted) {}

    static TableColumns of(final FactTable table) {
        return new TableColumns(
                IntStream.range(0, table.columns().size())
                        .mapToObj(place -> column(table, place))
                        .toList());
    }

    private static Column column(final FactTable table, final int place) {
        final String heading = text(table.columns().get(place));
        final List<String> cells = table.rows().stream().map(row -> text(row.get(place))).toList();
        // A heading of many words gets two or three lines, not one for each word.
        final double wanted =
                Math.max(Math.max(longest(cells), longestWord(heading)), heading.length() / 2.5);
        final double least =
                Math.max(
                        longestWord(heading),
                        cells.stream().mapToInt(TableColumns::longestWord).max().orElse(0));
        final double narrow = between(NARROWEST, least * BOLD_CHARACTER);
        return new Column(
                cells.stream().allMatch(TableColumns::isFigure),
                narrow,
                Math.max(narrow, between(COMFORTABLE, wanted * CHARACTER)));
    }

    private static double between(final double least, final double width) {
        return Math.min(WIDEST, Math.max(least, width));
    }

    /** As it stands in the table. */
    static String text(final String plain) {
        return Texts.kept(Pretty.units(plain));
    }

    /**
     * A heading over figures, with its lines ended here: a blank at which the toolkit wraps would
     * push the line off the edge to which it is set.
     */
    static String flush(final String heading, final double width) {
        final StringBuilder lines = new StringBuilder();
        int length = 0;
        for (final String word : heading.split(" ", -1)) {
            final boolean fits = (length + 1 + word.length()) * BOLD_CHARACTER <= width;
            lines.append(length == 0 ? "" : fits ? " " : "\n").append(word);
            length = word.length() + (length > 0 && fits ? length + 1 : 0);
        }
        return lines.toString();
    }

    private static int longest(final List<String> texts) {
        return texts.stream().mapToInt(String::length).max().orElse(0);
    }

    private static int longestWord(final String text) {
        return longest(Stream.of(text.split(" ", -1)).toList());
    }

    /** A figure, or one that is not given. */
    private static boolean isFigure(final String cell) {
        return cell.isEmpty() || Pretty.isFigure(cell);
    }

    /** The widths in this room; none where not even the longest words have room side by side. */
    List<Double> in(final double room) {
        if (room < leastRoom(CLOSE_MARGINS)) {
            return List.of();
        }
        final double texts = room - all.size() * (close(room) ? CLOSE_MARGINS : MARGINS);
        double cap = 0;
        for (double step = WIDEST; step > NEARLY; step /= 2) {
            cap += sum(cap + step) <= texts ? step : 0;
        }
        return widths(cap);
    }

    /** Whether the columns stand closer together in this room than they would. */
    boolean close(final double room) {
        return room < leastRoom(MARGINS);
    }

    private double leastRoom(final double margins) {
        return sum(0) + all.size() * margins;
    }

    private double sum(final double cap) {
        return widths(cap).stream().mapToDouble(width -> width).sum();
    }

    /** The widest columns give way first: those that hold sentences. */
    private List<Double> widths(final double cap) {
        return all.stream()
                .map(each -> Math.max(each.least(), Math.min(each.wanted(), cap)))
                .toList();
    }
}
