package wireworthy.vehicle.check;

import static wireworthy.rules.Quantity.*;

import java.util.Optional;
import java.util.OptionalDouble;
import wireworthy.facts.StandardSizes;
import wireworthy.rules.Dimension;
import wireworthy.rules.FigureText;
import wireworthy.vehicle.Feed;
import wireworthy.working.Caution;
import wireworthy.working.Danger;

/** What can go wrong where one cable is tapped off another. */
final class TapCautions {
    static final String MISSING = "thinner-cable-behind";

    private final FedSums fed;

    TapCautions(final FedSums fed) {
        this.fed = fed;
    }

    /** A cable without a fuse of its own that the fuse of the other lets overheat. */
    Optional<Caution> thin(final int index) {
        final Feed feed = fed.circuit(index).feed();
        if (feed.ownFuse() || fed.tree().feeder(index).isEmpty()) {
            return Optional.empty();
        }
        final OptionalDouble fuse = fed.protectingFuse(index);
        final OptionalDouble ampacity = fed.own(index).sums().value(AMPACITY);
        final boolean known = fuse.isPresent() && ampacity.isPresent();
        final boolean unsafe =
                known
                        ? above(fuse.getAsDouble(), ampacity.getAsDouble())
                        : thinner(index, fed.tree().feeder(index).getAsInt());
        return unsafe ? Optional.of(tapped(feed, fuse, ampacity)) : Optional.empty();
    }

    private static boolean above(final double one, final double other) {
        return one > other && !StandardSizes.same(one, other);
    }

    private boolean thinner(final int tap, final int feeder) {
        final double thin = section(tap).orElse(Double.NaN);
        final double thick = section(feeder).orElse(Double.NaN);
        return !(thin >= thick);
    }

    private OptionalDouble section(final int index) {
        return fed.own(index).sums().value(SECTION);
    }

    private static Caution tapped(
            final Feed feed, final OptionalDouble fuse, final OptionalDouble ampacity) {
        final String why =
                fuse.isPresent() && ampacity.isPresent()
                        ? Said.of(
                                "tapped.fuse",
                                "fuse",
                                FigureText.of(fuse.getAsDouble(), Dimension.CURRENT),
                                "ampacity",
                                FigureText.roundedDown(ampacity.getAsDouble(), Dimension.CURRENT))
                        : Said.of("tapped.thick");
        return new Caution(
                MISSING, Danger.FIRE, Said.of("tapped", "circuit", feed.circuit(), "why", why));
    }
}
