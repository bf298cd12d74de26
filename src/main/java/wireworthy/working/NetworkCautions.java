package wireworthy.working;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import wireworthy.rules.Dimension;
import wireworthy.rules.FigureText;
import wireworthy.rules.Quantity;
import wireworthy.texts.TextBundle;

/** What could hurt someone in a network of cables, worst first. */
public final class NetworkCautions {
    private static final TextBundle TEXTS = new TextBundle("cautions");

    private static final double EVEN = 1e-9;

    private final NetworkSolution solution;
    private final double limit;
    private final List<Caution> found = new ArrayList<>();

    private NetworkCautions(final NetworkSolution solution, final double limit) {
        this.solution = solution;
        this.limit = limit;
    }

    /**
     * The cautions of a network.
     *
     * @param beside what was given beside it, with the drop limit
     */
    public static List<Caution> of(final NetworkSolution solution, final Worked beside) {
        final double limit = beside.value(Quantity.DROP_LIMIT).orElse(Double.POSITIVE_INFINITY);
        final NetworkCautions cautions = new NetworkCautions(solution, limit);
        cautions.thinner();
        cautions.drops();
        cautions.found.sort(Comparator.comparing(Caution::danger));
        return List.copyOf(cautions.found);
    }

    /** Where the current goes on into a thinner cable. */
    private void thinner() {
        final Set<CableNetwork.Stretch> said = new HashSet<>();
        for (final CableNetwork.Stretch feed : solution.network().stretches()) {
            for (final CableNetwork.Stretch tap : solution.network().stretches()) {
                if (follows(feed, tap)
                        && tap.section() < feed.section() * (1 - EVEN)
                        && said.add(tap)) {
                    found.add(tapped(feed, tap));
                }
            }
        }
    }

    /** Whether the current comes out of one stretch where it goes into the other. */
    private boolean follows(final CableNetwork.Stretch feed, final CableNetwork.Stretch tap) {
        return !feed.equals(tap) && end(feed).equals(begin(tap));
    }

    private String end(final CableNetwork.Stretch stretch) {
        return solution.through(stretch) >= 0 ? stretch.to() : stretch.from();
    }

    private String begin(final CableNetwork.Stretch stretch) {
        return solution.through(stretch) >= 0 ? stretch.from() : stretch.to();
    }

    private static Caution tapped(final CableNetwork.Stretch feed, final CableNetwork.Stretch tap) {
        return new Caution(
                "thinner-cable-behind",
                Danger.FIRE,
                TEXTS.of(
                        "thinner-cable-behind",
                        "from",
                        tap.from(),
                        "to",
                        tap.to(),
                        "thin",
                        mm2(tap),
                        "thick",
                        mm2(feed)));
    }

    private static String mm2(final CableNetwork.Stretch stretch) {
        return FigureText.of(stretch.section(), Dimension.AREA, 4);
    }

    private void drops() {
        for (final NetworkLoad load : solution.network().loads()) {
            final double drop = solution.drop(load);
            if (drop > limit * (1 + EVEN)) {
                found.add(
                        new Caution(
                                "drop-over-limit",
                                Danger.ofLosing(drop, solution.network().supply()),
                                TEXTS.of(
                                        "drop-at-load",
                                        "load",
                                        load.name(),
                                        "drop",
                                        FigureText.of(drop, Dimension.VOLTAGE, 3),
                                        "limit",
                                        FigureText.of(limit, Dimension.VOLTAGE, 3))));
            }
        }
    }
}
