package wireworthy.lessons;

import static wireworthy.lessons.FigureOption.*;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;

/** The live figures there are, each with the options a lesson must set. */
public enum FigureKind {
    POWER_CURRENT_VOLTAGE(LOAD_POWER, SUPPLY_VOLTAGE),
    CONVERTER_CURRENT(LOAD_POWER, EFFICIENCY, SUPPLY_VOLTAGE),
    LAMPS_ON_A_FEED(SUPPLY_VOLTAGE, LOADS),
    FUSE_BETWEEN(CIRCUIT_CURRENT, SECTION, TWO_CORE_CABLES, MARGIN, CABLE_TABLE, FUSE_SERIES),
    VOLTS_ALONG_THE_RUN(
            CIRCUIT_CURRENT, SECTION, ONE_WAY_LENGTH, SUPPLY_VOLTAGE, DROP_LIMIT, RESISTIVITY);

    @SuppressWarnings("ImmutableEnumChecker") // a list made by List.of
    private final List<FigureOption> options;

    FigureKind(final FigureOption... options) {
        this.options = List.of(options);
    }

    /** The id used in files, such as {@code fuse-between}. */
    public String id() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    public List<FigureOption> options() {
        return options;
    }

    static Optional<FigureKind> of(final String id) {
        return Stream.of(values()).filter(kind -> kind.id().equals(id)).findFirst();
    }

    static List<String> ids() {
        return Stream.of(values()).map(FigureKind::id).toList();
    }
}
