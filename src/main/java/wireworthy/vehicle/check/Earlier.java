package wireworthy.vehicle.check;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import wireworthy.marking.Mark;
import wireworthy.rules.Quantity;
import wireworthy.working.Danger;
import wireworthy.working.Worked;

/**
 * Remembers what each own figure was sound for. One that no longer is, because the load, the run or
 * the cable was changed since, is no mistake: it still goes with what stood there before. Kept as
 * long as the vehicle is open.
 */
final class Earlier {
    private static final String CIRCUIT = "circuit ";

    private final Map<Key, Sound> known = new HashMap<>();
    private List<String> names = List.of();

    private record Key(String part, Quantity quantity) {}

    /** A figure as typed, and the working that it was sound for. */
    private record Sound(String typed, Worked worked) {}

    /** Nothing is remembered of another vehicle. */
    void forget() {
        known.clear();
        names = List.of();
    }

    /** Takes note of the names of the circuits now; what is known of one follows its new name. */
    void circuits(final List<String> now) {
        if (now.size() == names.size()) {
            for (int i = 0; i < now.size(); i++) {
                if (!now.contains(names.get(i))) {
                    renamed(CIRCUIT + names.get(i), CIRCUIT + now.get(i));
                }
            }
        }
        names = List.copyOf(now);
    }

    private void renamed(final String before, final String now) {
        for (final Key key : List.copyOf(known.keySet())) {
            if (key.part().equals(before)) {
                known.put(new Key(now, key.quantity()), known.remove(key));
            }
        }
    }

    /** The sums of a circuit, with what is said of its own figures. */
    CircuitSums told(final CircuitSums circuit) {
        final String part = CIRCUIT + circuit.input().circuit().name();
        return circuit.with(told(part, circuit.sums()));
    }

    /**
     * The same for the supply or the main fuse.
     *
     * @param part its name
     */
    Sums told(final String part, final Sums sums) {
        return sums.worked()
                .map(worked -> sums.marked(told(part, worked, sums.marks())))
                .orElse(sums);
    }

    private List<Mark> told(final String part, final Worked worked, final List<Mark> marks) {
        return marks.stream()
                .map(mark -> told(new Key(part, mark.ref().quantity()), worked, mark))
                .toList();
    }

    private Mark told(final Key key, final Worked worked, final Mark mark) {
        if (mark.isSound()) {
            known.put(key, new Sound(mark.given(), worked));
            return mark;
        }
        return Optional.ofNullable(known.get(key))
                .filter(sound -> sound.typed().equals(mark.given()))
                .flatMap(sound -> Since.of(mark.ref(), sound.worked(), worked))
                .map(since -> told(mark, since))
                .orElse(mark);
    }

    /** What could start a fire is said first, whatever the figure was right for. */
    private static Mark told(final Mark mark, final Since since) {
        return mark.danger().equals(Optional.of(Danger.FIRE))
                ? mark.saying(mark.explanation() + " " + since.wasSound())
                : mark.inQuestion(since.stillSound(mark.understood()));
    }
}
