package wireworthy.rules;

import java.math.BigDecimal;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/** Collects units by kind, each in all its spellings; spellings come as "V, volt, volts". */
final class UnitBook {

    private static final List<String> OHM = List.of("ohm", "ohms");

    private final Map<Dimension, Spellings> kinds = new EnumMap<>(Dimension.class);

    Map<Dimension, Spellings> kinds() {
        return kinds;
    }

    Spellings of(final Dimension kind) {
        return kinds.computeIfAbsent(kind, k -> new Spellings());
    }

    /** A unit without prefixes. */
    void add(final Dimension kind, final Unit unit, final String spellings) {
        add(kind, List.of(Prefix.NONE), unit, spellings);
    }

    /** A unit with each of the prefixes, as "mA", "mamps" and "milliamps". */
    void add(
            final Dimension kind,
            final List<Prefix> prefixes,
            final Unit unit,
            final String spellings) {
        for (final Prefix prefix : prefixes) {
            final Unit scaled = prefix.of(unit);
            for (final String spelling : spellings.split(", ", -1)) {
                add(kind, prefix, scaled, spelling);
            }
        }
    }

    /** Ohms joined to what follows them: "ohm" and "/km" make mΩ/km, "milliohms/km" and so on. */
    void addOhms(
            final Dimension kind,
            final List<Prefix> prefixes,
            final Unit unit,
            final String endings) {
        for (final Prefix prefix : prefixes) {
            final Unit scaled = prefix.of(unit);
            final Unit symbol =
                    Unit.of(scaled.word(), scaled.shown(), scaled.shown(), scaled.factor());
            for (final String ending : endings.split(", ", -1)) {
                OHM.forEach(ohm -> add(kind, prefix, symbol, ohm + ending));
            }
        }
    }

    private void add(
            final Dimension kind, final Prefix prefix, final Unit unit, final String spelling) {
        final String shortForm = prefix.letter + spelling;
        if (prefix.isExact()) {
            of(kind).addExact(shortForm, unit);
        } else if (prefix == Prefix.MEGA && !isUsualInMega(kind, unit)) {
            of(kind).addAnyCase(shortForm, unit);
        } else {
            of(kind).add(shortForm, unit);
        }
        if (prefix != Prefix.NONE) {
            of(kind).add(prefix.word + spelling, unit);
        }
    }

    /** "MA" is more often milliamps with the wrong capital than millions of amps. */
    private static boolean isUsualInMega(final Dimension kind, final Unit unit) {
        return kind == Dimension.RESISTANCE || unit.word().equals("MJ");
    }

    static Unit unit(final String word, final String name, final String factor) {
        return unit(word, word, name, factor);
    }

    static Unit unit(
            final String word, final String shown, final String name, final String factor) {
        return Unit.of(word, shown, name, new BigDecimal(factor));
    }

    static Unit unit(final String word, final String shown, final BigDecimal factor) {
        return Unit.of(word, shown, shown, factor);
    }
}
