package wireworthy.working;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import wireworthy.rules.Direction;
import wireworthy.rules.Ref;

/** Directions and which of them read a value, for any number of searches among them. */
final class Network {
    private final List<Direction> directions;
    private final Map<Ref, List<Integer>> users = new HashMap<>();
    private final int[] inputs;

    Network(final List<Direction> directions) {
        this.directions = directions;
        this.inputs = new int[directions.size()];
        for (int i = 0; i < inputs.length; i++) {
            final List<Ref> read = directions.get(i).formula().inputs();
            inputs[i] = read.size();
            for (final Ref input : read) {
                users.computeIfAbsent(input, any -> new ArrayList<>()).add(i);
            }
        }
    }

    Direction direction(final int number) {
        return directions.get(number);
    }

    /** The numbers of the directions that read a value. */
    List<Integer> users(final Ref ref) {
        return users.getOrDefault(ref, List.of());
    }

    /** How many values each direction reads; the caller's own copy. */
    int[] inputs() {
        return inputs.clone();
    }

    /** Whether some direction gives a value. */
    boolean gives(final Ref ref) {
        for (final Direction direction : directions) {
            if (direction.output().equals(ref)) {
                return true;
            }
        }
        return false;
    }
}
