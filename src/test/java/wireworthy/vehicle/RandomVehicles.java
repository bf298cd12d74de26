package wireworthy.vehicle;

import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import wireworthy.rules.Quantity;

/** Vehicles of any content, readable or not; the same seed gives the same. */
final class RandomVehicles {
    private static final List<String> TEXTS =
            List.of(
                    "5,5 A",
                    "12",
                    "oops",
                    "\"quoted\" \\ {}",
                    "½ inch",
                    "  7 m ",
                    "=1+1",
                    "\u2028");

    private final Random random;

    private RandomVehicles(final long seed) {
        this.random = new Random(seed);
    }

    static Vehicle of(final long seed) {
        return new RandomVehicles(seed).vehicle();
    }

    private Vehicle vehicle() {
        return new Vehicle(
                text(),
                text() + "\n" + text(),
                part(Vocabulary.SUPPLY),
                part(Vocabulary.MAIN),
                IntStream.range(0, random.nextInt(6)).mapToObj(this::circuit).toList());
    }

    private Circuit circuit(final int number) {
        final boolean network = random.nextInt(4) == 0;
        return new Circuit(
                "circuit " + number,
                random.nextBoolean() ? "red" : "",
                random.nextBoolean() ? "kitchen" : "",
                random.nextBoolean() ? text() : "",
                random.nextBoolean() ? Feed.BOARD : new Feed("circuit 0", random.nextBoolean()),
                part(Vocabulary.CIRCUIT),
                IntStream.range(0, random.nextInt(4)).mapToObj(i -> load(network)).toList(),
                network
                        ? List.of(new Stretch("source", "A", entries(Vocabulary.STRETCH)))
                        : List.of());
    }

    private Load load(final boolean network) {
        return new Load(text(), network ? "A" : "", entries(List.of(LoadEntry.values())));
    }

    private Part part(final List<Quantity> vocabulary) {
        return new Part(entries(vocabulary), entries(List.of(Quantity.DROP, Quantity.FUSE_FLOOR)));
    }

    private <K extends Enum<K>> Entries<K> entries(final List<K> keys) {
        Entries<K> entries = Entries.none();
        for (final K key : keys) {
            entries = random.nextInt(3) == 0 ? entries.with(key, text()) : entries;
        }
        return entries;
    }

    private String text() {
        return TEXTS.get(random.nextInt(TEXTS.size()));
    }
}
