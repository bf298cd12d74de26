package wireworthy.vehicle.check;

import java.util.List;
import wireworthy.texts.TextBundle;
import wireworthy.working.CableNetwork;
import wireworthy.working.Caution;
import wireworthy.working.Danger;
import wireworthy.working.NetworkLoad;
import wireworthy.working.NetworkSolver;
import wireworthy.working.Unworkable;

/** What is said of loads the cable can't feed. */
final class Unfed {
    private static final TextBundle TEXTS = new TextBundle("network");

    private Unfed() {}

    /**
     * The caution.
     *
     * @param why it can't be worked
     */
    static Caution caution(final CableNetwork network, final Unworkable why) {
        final List<String> each =
                network.loads().stream()
                        .filter(load -> fedWithout(network, load))
                        .map(NetworkLoad::name)
                        .toList();
        return new Caution(
                "cannot-deliver", Danger.WILL_NOT_WORK, text(Sums.sentence(why.what()), each));
    }

    private static String text(final String why, final List<String> each) {
        return switch (each.size()) {
            case 0 -> TEXTS.of("unfed", "why", why);
            case 1 -> TEXTS.of("unfed.one", "why", why, "load", each.get(0));
            default -> TEXTS.of("unfed.any", "why", why, "loads", String.join(", ", each));
        };
    }

    /** Whether the others would be fed without one of them. */
    private static boolean fedWithout(final CableNetwork network, final NetworkLoad one) {
        final List<NetworkLoad> others =
                network.loads().stream().filter(load -> !load.equals(one)).toList();
        try {
            NetworkSolver.solve(
                    new CableNetwork(
                            network.supply(),
                            network.internalResistance(),
                            network.stretches(),
                            others));
            return true;
        } catch (final Unworkable still) {
            return false;
        }
    }
}
