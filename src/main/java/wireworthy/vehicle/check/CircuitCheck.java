package wireworthy.vehicle.check;

import static wireworthy.rules.Quantity.*;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import wireworthy.facts.FuseSeries;
import wireworthy.facts.FuseSeriesTable;
import wireworthy.facts.StandardSizes;
import wireworthy.rules.Dimension;
import wireworthy.rules.FigureText;
import wireworthy.vehicle.Circuit;
import wireworthy.vehicle.Feed;
import wireworthy.working.Caution;
import wireworthy.working.Danger;
import wireworthy.working.NetworkLoad;
import wireworthy.working.NetworkSolution;
import wireworthy.working.Remedies;
import wireworthy.working.WarmDrop;

/** Puts together what is said of a circuit, with what feeds it and what is tapped off it. */
final class CircuitCheck {
    private final FeedTree tree;
    private final List<CircuitSums> all;

    CircuitCheck(final FeedTree tree, final List<CircuitSums> all) {
        this.tree = tree;
        this.all = all;
    }

    CheckedCircuit of(final int index) {
        final CircuitSums own = all.get(index);
        final Sums sums = own.sums();
        final OptionalDouble drop = dropFromBoard(index);
        final OptionalDouble limit =
                sums.around().map(Remedies::limit).orElseGet(OptionalDouble::empty);
        final List<CheckedLoad> loads = loads(index);
        return new CheckedCircuit(
                own.input().circuit(),
                sums.found(),
                window(index),
                drop,
                limit,
                sums.around().map(WarmDrop::of).orElseGet(OptionalDouble::empty),
                sums.around().map(Way::of).orElse(List.of()),
                sums.marks(),
                cautions(index, drop, limit),
                Stream.concat(tree.note(index).stream(), sums.notes().stream()).toList(),
                sums.working(),
                sums.assumed(),
                loads,
                own.network());
    }

    FuseWindow window(final int index) {
        final Sums sums = all.get(index).sums();
        final boolean given = circuit(index).part().given().has(FUSE_SERIES);
        final FuseSeries series =
                sums.worked()
                        .map(worked -> worked.plan().setting().series())
                        .orElse(FuseSeriesTable.all().get(0));
        return FuseWindow.of(sums.value(FUSE_FLOOR), ceiling(index), series, given, chosen(sums));
    }

    private static OptionalDouble chosen(final Sums sums) {
        return sums.worked()
                .flatMap(worked -> worked.typed(wireworthy.rules.Ref.circuit(FUSE)))
                .map(read -> OptionalDouble.of(read.value()))
                .orElseGet(OptionalDouble::empty);
    }

    /** The ampacity of the weakest cable behind the fuse; empty where one is not known. */
    private OptionalDouble ceiling(final int index) {
        OptionalDouble weakest = all.get(index).sums().value(FUSE_CEILING);
        for (final int tap : tree.taps(index)) {
            if (weakest.isPresent() && !circuit(tap).feed().ownFuse()) {
                weakest = smaller(weakest.getAsDouble(), ceiling(tap));
            }
        }
        return weakest;
    }

    private static OptionalDouble smaller(final double one, final OptionalDouble other) {
        return other.isEmpty() ? other : OptionalDouble.of(Math.min(one, other.getAsDouble()));
    }

    /** The fuse that protects a cable: its own, or that of the cable it is tapped off. */
    private OptionalDouble protectingFuse(final int index) {
        final boolean own = circuit(index).feed().ownFuse() || tree.feeder(index).isEmpty();
        return own ? window(index).inUse() : protectingFuse(tree.feeder(index).getAsInt());
    }

    private OptionalDouble dropFromBoard(final int index) {
        final OptionalDouble own = ownDrop(index);
        if (own.isEmpty() || tree.feeder(index).isEmpty()) {
            return own;
        }
        final OptionalDouble before = dropFromBoard(tree.feeder(index).getAsInt());
        return before.isEmpty()
                ? before
                : OptionalDouble.of(own.getAsDouble() + before.getAsDouble());
    }

    /** In a network, up to the load that is worst off. */
    private OptionalDouble ownDrop(final int index) {
        final CircuitSums own = all.get(index);
        return own.network()
                .map(
                        solution ->
                                solution.network().loads().stream()
                                        .mapToDouble(solution::drop)
                                        .max())
                .orElseGet(() -> own.sums().value(DROP));
    }

    private Circuit circuit(final int index) {
        return all.get(index).input().circuit();
    }

    private List<Caution> cautions(
            final int index, final OptionalDouble drop, final OptionalDouble limit) {
        final List<Caution> cautions = new ArrayList<>(all.get(index).sums().cautions());
        thinTap(index).ifPresent(cautions::add);
        farDrop(index, drop, limit).ifPresent(cautions::add);
        cautions.sort(Comparator.comparing(Caution::danger));
        return List.copyOf(cautions);
    }

    private Optional<Caution> thinTap(final int index) {
        final Feed feed = circuit(index).feed();
        if (feed.ownFuse() || tree.feeder(index).isEmpty()) {
            return Optional.empty();
        }
        final OptionalDouble fuse = protectingFuse(index);
        final OptionalDouble ampacity = all.get(index).sums().value(AMPACITY);
        final boolean known = fuse.isPresent() && ampacity.isPresent();
        final boolean unsafe =
                known
                        ? above(fuse.getAsDouble(), ampacity.getAsDouble())
                        : thinner(index, tree.feeder(index).getAsInt());
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
        return all.get(index).sums().value(SECTION);
    }

    private static Caution tapped(
            final Feed feed, final OptionalDouble fuse, final OptionalDouble ampacity) {
        final String why =
                fuse.isPresent() && ampacity.isPresent()
                        ? "the fuse of "
                                + FigureText.of(fuse.getAsDouble(), Dimension.CURRENT)
                                + " there is above the "
                                + FigureText.roundedDown(
                                        ampacity.getAsDouble(), Dimension.CURRENT, 3)
                                + " this cable can carry, and lets it overheat"
                        : "a fuse fit for the thick cable lets a thinner one overheat";
        return new Caution(
                "thinner-cable-behind",
                Danger.FIRE,
                "This cable is tapped off \""
                        + feed.circuit()
                        + "\" without a fuse of its own: "
                        + why
                        + ". Put a fuse where it leaves the other cable, or take a thicker one.");
    }

    private Optional<Caution> farDrop(
            final int index, final OptionalDouble drop, final OptionalDouble limit) {
        final OptionalDouble own = ownDrop(index);
        final boolean far =
                drop.isPresent()
                        && limit.isPresent()
                        && own.isPresent()
                        && above(drop.getAsDouble(), limit.getAsDouble())
                        && !above(own.getAsDouble(), limit.getAsDouble());
        return far ? Optional.of(far(index, drop, limit)) : Optional.empty();
    }

    private Caution far(final int index, final OptionalDouble drop, final OptionalDouble limit) {
        return new Caution(
                "drop-over-limit",
                Danger.WILL_NOT_WORK,
                "Counted from the fuse board, with the cable of \""
                        + circuit(index).feed().circuit()
                        + "\", "
                        + FigureText.of(drop.getAsDouble(), Dimension.VOLTAGE)
                        + " are lost, more than the limit of "
                        + FigureText.of(limit.getAsDouble(), Dimension.VOLTAGE)
                        + ".");
    }

    private List<CheckedLoad> loads(final int index) {
        final CircuitSums own = all.get(index);
        final List<String> names = LoadsGiven.names(circuit(index));
        final List<CheckedLoad> loads = new ArrayList<>();
        for (int i = 0; i < names.size(); i++) {
            final int load = i;
            final OptionalDouble current =
                    own.network()
                            .map(solution -> OptionalDouble.of(current(solution, load)))
                            .orElseGet(() -> own.loadCurrent(load));
            final OptionalDouble predicted = predicted(index, load);
            loads.add(new CheckedLoad(names.get(i), current, predicted, Optional.empty()));
        }
        return List.copyOf(loads);
    }

    private static double current(final NetworkSolution solution, final int load) {
        final NetworkLoad drawn = solution.network().loads().get(load);
        return drawn.current(solution.at(drawn.at()));
    }

    private OptionalDouble predicted(final int index, final int load) {
        final CircuitSums own = all.get(index);
        if (own.network().isPresent()) {
            final NetworkSolution solution = own.network().get();
            return OptionalDouble.of(solution.at(solution.network().loads().get(load).at()));
        }
        final OptionalDouble supply = own.sums().value(SUPPLY_VOLTAGE);
        final OptionalDouble drop = dropFromBoard(index);
        return supply.isEmpty() || drop.isEmpty()
                ? OptionalDouble.empty()
                : OptionalDouble.of(supply.getAsDouble() - drop.getAsDouble());
    }
}
