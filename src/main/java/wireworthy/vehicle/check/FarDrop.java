package wireworthy.vehicle.check;

import static wireworthy.rules.Quantity.SUPPLY_VOLTAGE;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import wireworthy.facts.StandardSizes;
import wireworthy.rules.Dimension;
import wireworthy.rules.FigureText;
import wireworthy.working.Caution;
import wireworthy.working.Danger;
import wireworthy.working.HoldingSection;

/** What is said of the volts a circuit loses: of one that is tapped off, from the fuse board on. */
final class FarDrop {
    private static final String OVER = "drop-over-limit";
    private static final String ONLY_COLD = "limit-met-only-cold";

    private final FedSums fed;
    private final int index;
    private final CircuitSums own;
    private final double limit;

    private FarDrop(final FedSums fed, final int index, final double limit) {
        this.fed = fed;
        this.index = index;
        this.own = fed.own(index);
        this.limit = limit;
    }

    /**
     * The cautions of a circuit itself.
     *
     * @param limit V that may be lost; empty where not known
     */
    static List<Caution> cautions(final FedSums fed, final int index, final OptionalDouble limit) {
        final List<Caution> own = fed.own(index).sums().cautions();
        return limit.isEmpty() || fed.tree().feeder(index).isEmpty()
                ? own
                : new FarDrop(fed, index, limit.getAsDouble()).instead(own);
    }

    private List<Caution> instead(final List<Caution> cautions) {
        return Stream.concat(
                        cautions.stream().filter(each -> !isToldFar(each.id())), far().stream())
                .toList();
    }

    /** In a network it is told load by load which of them get too little. */
    private boolean isToldFar(final String id) {
        final boolean whole = fed.dropFromBoard(index).isPresent() && own.network().isEmpty();
        return id.equals(ONLY_COLD) || (whole && id.equals(OVER));
    }

    private Optional<Caution> far() {
        final OptionalDouble drop = fed.dropFromBoard(index);
        if (drop.isEmpty()) {
            return isAbove(fed.ownDrop(index)) ? Optional.empty() : onlyCold(own.warm());
        }
        final boolean said = own.network().isPresent() && isAbove(fed.ownDrop(index));
        if (isAbove(drop)) {
            return said ? Optional.empty() : Optional.of(over(drop.getAsDouble()));
        }
        return onlyCold(fed.warmFromBoard(index));
    }

    private boolean isAbove(final OptionalDouble volts) {
        return volts.isPresent()
                && volts.getAsDouble() > limit
                && !StandardSizes.same(volts.getAsDouble(), limit);
    }

    private Caution over(final double drop) {
        final double supply = own.sums().value(SUPPLY_VOLTAGE).orElse(Double.NaN);
        final String text = said("far-drop", drop);
        return new Caution(
                OVER,
                Danger.ofLosing(drop, supply),
                beforeTakesAll().map(all -> text + " " + all).orElse(text));
    }

    private Optional<Caution> onlyCold(final OptionalDouble warm) {
        if (!isAbove(warm)) {
            return Optional.empty();
        }
        final boolean open = fed.dropFromBoard(index).isEmpty();
        final String text = said(open ? "far-only-cold.open" : "far-only-cold", warm.getAsDouble());
        return Optional.of(new Caution(ONLY_COLD, Danger.ONLY_JUST, (text + " " + next()).strip()));
    }

    private String next() {
        final OptionalDouble before = fed.warmBefore(index);
        return before.isEmpty() ? "" : beforeTakesAll().orElseGet(() -> way(before.getAsDouble()));
    }

    private String way(final double before) {
        return own.sums().around().map(around -> HoldingSection.told(around, before)).orElse("");
    }

    /** Where nothing done to its own cable helps. */
    private Optional<String> beforeTakesAll() {
        return fed.warmBefore(index).stream()
                .filter(before -> before >= limit)
                .mapToObj(before -> Said.of("far.all", "before", volts(before)))
                .findFirst();
    }

    private String said(final String key, final double drop) {
        final String circuit = fed.circuit(index).feed().circuit();
        return Said.of(key, "circuit", circuit, "drop", volts(drop), "limit", volts(limit));
    }

    private static String volts(final double volts) {
        return FigureText.of(volts, Dimension.VOLTAGE);
    }
}
