package wireworthy.rules;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;

/** Reads lengths and times in steps: "7 ft 6 in", "7' 6\"", "1 h 30 min", "1h30", "1:30". */
final class MixedUnits {

    private record Part(Numeral number, Unit unit) {
        BigDecimal si() {
            return unit.si(number.value());
        }
    }

    /** What the last number means where its unit is left out. */
    private static final Map<String, String> NEXT_SMALLER = Map.of("h", "min", "ft", "in");

    private static final int FIGURES_SHOWN = 4;

    private final String text;
    private final Dimension dimension;
    private final List<Part> parts = new ArrayList<>();

    private MixedUnits(final String text, final Dimension dimension) {
        this.text = text;
        this.dimension = dimension;
    }

    /** Nothing where the text is no such figure. */
    static Optional<Reading.Read> read(final String plain, final Dimension dimension) {
        final Dimension kind = Units.kind(dimension);
        if (kind != Dimension.LENGTH && kind != Dimension.TIME) {
            return Optional.empty();
        }
        final String steps = dimension == Dimension.TIME ? withoutColon(plain) : plain;
        final MixedUnits mixed = new MixedUnits(steps, dimension);
        return mixed.split() && mixed.descends() ? Optional.of(mixed.joined()) : Optional.empty();
    }

    /** "1:30" and "1:30 h" as "1 h 30 min"; other texts as they are. */
    private static String withoutColon(final String plain) {
        final int colon = plain.indexOf(':');
        final int end = colon + 3;
        final boolean clock = colon > 0 && end <= plain.length() && isTwoDigits(plain, colon + 1);
        final String rest = clock ? plain.substring(end).strip() : plain;
        return clock && (rest.isEmpty() || rest.equals("h"))
                ? plain.substring(0, colon) + " h " + plain.substring(colon + 1, end) + " min"
                : plain;
    }

    private static boolean isTwoDigits(final String text, final int at) {
        return Character.isDigit(text.charAt(at)) && Character.isDigit(text.charAt(at + 1));
    }

    private boolean split() {
        int at = 0;
        try {
            while (at < text.length()) {
                if (!NumberScanner.startsNumber(text.charAt(at))) {
                    return false;
                }
                final NumberScanner.Found found = NumberScanner.scan(text, at);
                at = nextNumber(found.end());
                final String word = text.substring(found.end(), at);
                final List<Unit> units = unit(withoutJoint(word, at));
                if (units.size() != 1 || found.meanings().size() != 1) {
                    return false;
                }
                parts.add(new Part(found.meanings().get(0), units.get(0)));
            }
        } catch (final UnreadableFigure notMixed) {
            return false;
        }
        return parts.size() > 1;
    }

    private int nextNumber(final int from) {
        int at = from;
        while (at < text.length() && !NumberScanner.startsNumber(text.charAt(at))) {
            at++;
        }
        return at;
    }

    /** Between two parts a comma or "and" may stand. */
    private String withoutJoint(final String word, final int end) {
        final String unit = word.strip();
        if (end == text.length()) {
            return unit;
        }
        if (unit.endsWith(",")) {
            return unit.substring(0, unit.length() - 1);
        }
        return unit.endsWith(" and") ? unit.substring(0, unit.length() - 4) : unit;
    }

    private List<Unit> unit(final String word) {
        if (!word.isEmpty() || parts.isEmpty()) {
            return Units.meanings(dimension, word);
        }
        final String larger = parts.get(parts.size() - 1).unit().word();
        return Units.meanings(dimension, NEXT_SMALLER.getOrDefault(larger, ""));
    }

    /** Each part is less than one of the part before it, and only the last is broken. */
    private boolean descends() {
        for (int i = 1; i < parts.size(); i++) {
            final Part larger = parts.get(i - 1);
            if (!larger.number().isWhole()
                    || parts.get(i).si().compareTo(larger.unit().factor()) >= 0) {
                return false;
            }
        }
        return true;
    }

    private Reading.Read joined() {
        final Part last = parts.get(parts.size() - 1);
        final BigDecimal si = parts.stream().map(Part::si).reduce(BigDecimal.ZERO, BigDecimal::add);
        final BigDecimal step = last.number().step().multiply(last.unit().factor());
        final int digits = si.divideToIntegralValue(step).setScale(0).precision();
        final String understood = each(p -> p.number().text() + ' ' + p.unit().shown());
        final String field = FigureText.inFieldUnit(si.doubleValue(), dimension, FIGURES_SHOWN);
        return new Reading.Read(
                si.doubleValue(),
                each(p -> p.unit().word()),
                understood + " (" + field + ')',
                step.doubleValue(),
                digits,
                true);
    }

    private String each(final Function<Part, String> word) {
        return String.join(" ", parts.stream().map(word).toList());
    }
}
