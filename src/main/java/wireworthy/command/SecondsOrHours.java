package wireworthy.command;

import java.util.OptionalDouble;
import java.util.Set;
import wireworthy.rules.Dimension;
import wireworthy.rules.FigureText;
import wireworthy.rules.Quantity;
import wireworthy.rules.Reading;
import wireworthy.working.Question;

/** Charge, time and energy of one element are replied in the family of units they were asked in. */
record SecondsOrHours(boolean seconds) {
    private static final Set<String> SMALL = Set.of("s", "C", "J", "kJ", "ms", "mC");
    private static final Set<Quantity> EITHER =
            Set.of(Quantity.CHARGE, Quantity.TIME, Quantity.ENERGY);

    static SecondsOrHours of(final Question question) {
        for (final Reading.Read figure : question.figures().values()) {
            if (SMALL.contains(figure.unit())) {
                return new SecondsOrHours(true);
            }
        }
        return new SecondsOrHours(false);
    }

    private boolean small(final Quantity quantity) {
        return seconds && EITHER.contains(quantity);
    }

    double edge(final double si, final Quantity quantity) {
        return small(quantity) ? si : FigureText.edge(si, quantity.dimension());
    }

    /** The text given, or that of the smaller unit. */
    String text(final Quantity quantity, final String usual, final OptionalDouble si) {
        return small(quantity) && si.isPresent()
                ? FigureText.number(si.getAsDouble(), Dimension.FACTOR, 3) + " " + unit(quantity)
                : usual;
    }

    String unit(final Quantity quantity) {
        if (!small(quantity)) {
            return quantity.dimension().unit();
        }
        return switch (quantity) {
            case CHARGE -> "C";
            case TIME -> "s";
            default -> "J";
        };
    }
}
