package wireworthy.working;

import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.PriorityQueue;
import wireworthy.rules.Direction;
import wireworthy.rules.Direction.Reading;
import wireworthy.rules.Ref;

/**
 * Finds the cheapest chain of lines to every value that can be had (Knuth's generalisation of
 * Dijkstra's algorithm, 1977). Ties go to the direction declared first. A value reached in an
 * earlier round keeps its road: so givens outrank assumptions.
 */
final class RoadMap {
    private record Candidate(double cost, int order, Direction direction, boolean assumed) {}

    private final Network network;
    private final int[] missing;
    private final Map<Ref, Road> roads = new LinkedHashMap<>();
    private final PriorityQueue<Candidate> queue =
            new PriorityQueue<>(
                    Comparator.comparingDouble(Candidate::cost).thenComparingInt(Candidate::order));

    RoadMap(final Network network) {
        this.network = network;
        this.missing = network.inputs();
    }

    /** Sets out from a value at hand, unless a road to it was found before. */
    void start(final Ref ref, final double cost, final boolean assumed) {
        if (!roads.containsKey(ref)) {
            reach(ref, new Road(Optional.empty(), cost, assumed));
        }
    }

    /** Follows every road from what is at hand. */
    void explore() {
        while (!queue.isEmpty()) {
            final Candidate next = queue.remove();
            if (!roads.containsKey(next.direction.output())) {
                reach(
                        next.direction.output(),
                        new Road(Optional.of(next.direction), next.cost, next.assumed));
            }
        }
    }

    private void reach(final Ref ref, final Road road) {
        roads.put(ref, road);
        for (final int user : network.users(ref)) {
            missing[user]--;
            if (missing[user] == 0) {
                offer(user);
            }
        }
    }

    private void offer(final int order) {
        final Direction direction = network.direction(order);
        double cost = direction.cost();
        boolean assumed = false;
        for (final Ref input : direction.formula().inputs()) {
            final Road road = road(input);
            cost += road.cost();
            assumed |= road.assumed();
        }
        if (!(assumed && direction.reading() == Reading.BACKWARD)) {
            queue.add(new Candidate(cost, order, direction, assumed));
        }
    }

    /** Whether a value can be had. */
    boolean reaches(final Ref ref) {
        return roads.containsKey(ref);
    }

    /** The road to a value that can be had. */
    Road road(final Ref ref) {
        return Optional.ofNullable(roads.get(ref)).orElseThrow();
    }

    /** The lines to a value, in the order one works them, after those already there. */
    void linesTo(final Ref ref, final Map<Ref, Direction> lines, final List<Ref> sources) {
        final Optional<Direction> by = road(ref).by();
        if (by.isEmpty()) {
            if (!sources.contains(ref)) {
                sources.add(ref);
            }
        } else if (!lines.containsKey(ref)) {
            by.orElseThrow().formula().inputs().forEach(input -> linesTo(input, lines, sources));
            lines.put(ref, by.orElseThrow());
        }
    }
}
