package wireworthy.working;

import static wireworthy.rules.Quantity.*;

import wireworthy.rules.Dimension;
import wireworthy.rules.FigureText;
import wireworthy.rules.Quantity;
import wireworthy.texts.TextBundle;

/** What a given figure may be at all, SI, both ends included unless zero is no figure. */
record Limits(double least, double most) {
    private static final TextBundle REFUSALS = new TextBundle("refusals");

    private static final double TINY = 1e-12;
    private static final double MOST = 1e15;

    static Limits of(final Quantity quantity) {
        return switch (quantity) {
            case MARGIN -> new Limits(1, 5);
            case START_MULTIPLE -> new Limits(1, 50);
            case INTERNAL_RESISTANCE -> new Limits(0, 1e6);
            case SOLAR_ENERGY, CHARGE_ENERGY -> new Limits(0, MOST);
            case DAILY_BALANCE -> new Limits(-MOST, MOST);
            case AMBIENT_FACTOR, BUNDLE_FACTOR -> new Limits(0.01, 1.5);
            case CONDUCTOR_TEMPERATURE, AMBIENT_TEMPERATURE -> new Limits(-60, 300);
            case INSULATION_TEMPERATURE -> new Limits(40, 300);
            default -> of(quantity.dimension());
        };
    }

    private static Limits of(final Dimension dimension) {
        return switch (dimension) {
            case VOLTAGE -> new Limits(1e-6, 1500);
            case CURRENT -> new Limits(1e-6, 1e5);
            case POWER -> new Limits(1e-6, 1e7);
            case RESISTANCE -> new Limits(1e-9, 1e9);
            case SHARE -> new Limits(1e-6, 1);
            case COUNT -> new Limits(1, 10_000);
            case LENGTH -> new Limits(1e-4, 20_000);
            case DIAMETER -> new Limits(1e-6, 0.2);
            case AREA -> new Limits(1e-10, 5e-3);
            case GAUGE -> new Limits(-3, 40);
            default -> new Limits(TINY, MOST);
        };
    }

    boolean holds(final double value) {
        return value >= least && value <= most;
    }

    /** Why a value is refused, in words. */
    String refusal(final Quantity quantity, final double value) {
        final String text = FigureText.of(value, quantity.dimension());
        if (value <= 0 && least > 0) {
            return REFUSALS.of("more-than-zero", "value", text, "quantity", quantity.words());
        }
        return REFUSALS.of(
                "between",
                "value",
                text,
                "quantity",
                quantity.words(),
                "least",
                FigureText.of(least, quantity.dimension()),
                "most",
                FigureText.of(most, quantity.dimension()));
    }
}
