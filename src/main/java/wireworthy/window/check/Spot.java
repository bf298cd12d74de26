package wireworthy.window.check;

import java.util.Locale;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import wireworthy.vehicle.Vehicle;

/** A part of a vehicle that has a form of its own. */
sealed interface Spot {
    /** Where its entries begin in the path of a change. */
    String path();

    /** The parts that every vehicle has. */
    enum Fixed implements Spot {
        /** What all circuits come to together. */
        WHOLE(""),
        /** Battery or bank, and what charges it. */
        SUPPLY("supply."),
        /** The main fuse and the cable behind it. */
        MAIN("main.");

        private final String path;

        Fixed(final String path) {
            this.path = path;
        }

        @Override
        public String path() {
            return path;
        }
    }

    /**
     * A circuit.
     *
     * @param index among those of the vehicle, from 0
     */
    record OfCircuit(int index) implements Spot {
        @Override
        public String path() {
            return "circuits[" + index + "].";
        }
    }

    /** What it is called. */
    default String title(final Vehicle vehicle) {
        if (this instanceof OfCircuit of) {
            return isIn(vehicle) ? vehicle.circuits().get(of.index()).name() : "";
        }
        return CheckTexts.of("spot." + ((Fixed) this).name().toLowerCase(Locale.ROOT));
    }

    /** Whether the vehicle has it. */
    default boolean isIn(final Vehicle vehicle) {
        return !(this instanceof OfCircuit circuit) || circuit.index() < vehicle.circuits().size();
    }

    /** The spots of a vehicle in the order of the list. */
    static Stream<Spot> all(final Vehicle vehicle) {
        return Stream.concat(
                Stream.of(Fixed.values()),
                IntStream.range(0, vehicle.circuits().size()).mapToObj(OfCircuit::new));
    }

    /** Where one vehicle is first other than another; empty where they are alike. */
    static Optional<Spot> firstOther(final Vehicle one, final Vehicle other) {
        if (one.equals(other)) {
            return Optional.empty();
        }
        if (!one.supply().equals(other.supply())) {
            return Optional.of(Fixed.SUPPLY);
        }
        if (!one.main().equals(other.main())) {
            return Optional.of(Fixed.MAIN);
        }
        final int most = Math.min(one.circuits().size(), other.circuits().size());
        final int same =
                (int)
                        IntStream.range(0, most)
                                .takeWhile(
                                        i -> one.circuits().get(i).equals(other.circuits().get(i)))
                                .count();
        final boolean circuits = !one.circuits().equals(other.circuits());
        return Optional.of(circuits ? new OfCircuit(same) : Fixed.WHOLE);
    }
}
