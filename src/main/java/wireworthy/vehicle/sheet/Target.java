package wireworthy.vehicle.sheet;

import wireworthy.rules.Dimension;
import wireworthy.rules.Quantity;
import wireworthy.vehicle.LoadEntry;

/** What a column of a spreadsheet is about. */
public sealed interface Target {
    /** For people. */
    String words();

    /** What its cells measure; a name where they are words. */
    Dimension dimension();

    /** A word about the circuit or the load. */
    enum Word implements Target {
        CIRCUIT("name of the circuit"),
        LOAD("name of the load"),
        COLOUR("colour of the cable"),
        FED_FROM("tapped off the cable of"),
        AT("place where the load is connected"),
        /** A row with it tells a stretch of cable, and no load. */
        FROM("where the stretch of cable begins"),
        TO("where the stretch of cable ends"),
        /** Nothing the check can use; its cells stay in the file. */
        NOTHING("not used");

        private final String words;

        Word(final String words) {
            this.words = words;
        }

        @Override
        public String words() {
            return words;
        }

        @Override
        public Dimension dimension() {
            return Dimension.NAME;
        }
    }

    /** Something given for the circuit. */
    record Given(Quantity quantity) implements Target {
        @Override
        public String words() {
            return quantity.words();
        }

        @Override
        public Dimension dimension() {
            return quantity.dimension();
        }
    }

    /** Something about its load. */
    record OfLoad(LoadEntry entry) implements Target {
        @Override
        public String words() {
            return entry.key().replace('-', ' ') + " of the load";
        }

        @Override
        public Dimension dimension() {
            return entry.quantity().dimension();
        }
    }

    /** The builder's own figure, to be checked. */
    record Own(Quantity quantity) implements Target {
        @Override
        public String words() {
            return "your " + quantity.words();
        }

        @Override
        public Dimension dimension() {
            return quantity.dimension();
        }
    }
}
