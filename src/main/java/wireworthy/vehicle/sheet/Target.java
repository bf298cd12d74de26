package wireworthy.vehicle.sheet;

import java.util.Locale;
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
        CIRCUIT,
        LOAD,
        COLOUR,
        FED_FROM,
        /** Whether a fuse of its own sits where it leaves the cable it is tapped off. */
        OWN_FUSE,
        /** Circuits that share it never run at the same time. */
        NEVER_WITH,
        NOTES,
        AT,
        /** A row with it tells a stretch of cable, and no load. */
        FROM,
        TO,
        /** Nothing the check can use; its cells stay in the file. */
        NOTHING;

        @Override
        public String words() {
            return SheetTexts.of("word." + name().toLowerCase(Locale.ROOT).replace('_', '-'));
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

    /** Something given for the whole vehicle, the same in every row. */
    record OfVehicle(Quantity quantity) implements Target {
        /** What the circuits are fed at. */
        public static final Target VOLTS = new OfVehicle(Quantity.SUPPLY_VOLTAGE);

        @Override
        public String words() {
            return SheetTexts.of("of-vehicle", "quantity", quantity.words());
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
            return SheetTexts.of("of-load." + entry.key());
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
            return SheetTexts.of("own", "quantity", quantity.words());
        }

        @Override
        public Dimension dimension() {
            return quantity.dimension();
        }
    }
}
