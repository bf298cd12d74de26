package wireworthy.lessons;

import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.DoubleStream;
import wireworthy.rules.Quantity;

/** How an option of a live figure may move. Numbers are SI. */
public sealed interface Handle {

    /** A number, whether it moves or not. */
    sealed interface Amount extends Handle {
        Quantity quantity();

        /** The values it is written with; of a range its ends. */
        DoubleStream written();
    }

    /** A number that stays. */
    record Fixed(Quantity quantity, double value) implements Amount {
        @Override
        public DoubleStream written() {
            return DoubleStream.of(value);
        }
    }

    /** A number moved in steps; {@code start} is where it stands at first. */
    record Range(Quantity quantity, double from, double to, double step, double start)
            implements Amount {
        @Override
        public DoubleStream written() {
            return DoubleStream.of(from, to);
        }
    }

    /** A number chosen from a few, in the given order. */
    record Choice(Quantity quantity, List<Double> values, double start) implements Amount {
        public Choice {
            values = List.copyOf(values);
        }

        @Override
        public DoubleStream written() {
            return values.stream().mapToDouble(Double::doubleValue);
        }
    }

    /** A name that stays, such as that of a cable table. */
    record Named(Quantity quantity, String name) implements Handle {}

    /**
     * Something that is so or not.
     *
     * @param yes how it stands at first
     */
    record YesOrNo(boolean yes) implements Handle {}

    /** Loads to switch on and off. */
    record Switches(List<Load> loads) implements Handle {
        public Switches {
            loads = List.copyOf(loads);
        }
    }

    /**
     * One load of a list.
     *
     * @param watts of one such load
     * @param count how many of them one switch turns on
     * @param on whether it is on at first
     * @param share of the day that it runs; empty where the figure has nothing to do with time
     */
    record Load(String name, double watts, int count, boolean on, OptionalDouble share) {
        public Load(final String name, final double watts, final int count, final boolean on) {
            this(name, watts, count, on, OptionalDouble.empty());
        }
    }
}
