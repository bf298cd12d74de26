package wireworthy.working;

import static wireworthy.rules.Quantity.*;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.stream.DoubleStream;
import wireworthy.rules.Dimension;
import wireworthy.rules.FigureText;
import wireworthy.rules.Ref;
import wireworthy.rules.Voltages;
import wireworthy.texts.TextBundle;

/** The four ways out of too much drop, each with its number. */
public final class Remedies {
    private static final TextBundle TEXTS = new TextBundle("cautions");

    private static final double EVEN = 1e-9;

    /** m; nothing is fed by less cable. */
    private static final double SHORTEST = 0.1;

    private static final int LAST = 3;

    private final Worked worked;
    private final Fused fused;
    private final double drop;
    private final double limit;
    private final boolean warmToo;

    private Remedies(
            final Worked worked, final double drop, final double limit, final boolean warmToo) {
        this.worked = worked;
        this.fused = new Fused(worked);
        this.drop = drop;
        this.limit = limit;
        this.warmToo = warmToo;
    }

    /** The ways out; none where no drop was worked or the limit holds. */
    public static List<Remedy> of(final Worked worked) {
        final OptionalDouble drop = worked.value(DROP);
        final OptionalDouble limit = limit(worked);
        if (drop.isEmpty() || limit.isEmpty() || drop.getAsDouble() <= limit.getAsDouble()) {
            return List.of();
        }
        return new Remedies(worked, drop.getAsDouble(), limit.getAsDouble(), false).all();
    }

    /**
     * The ways out that hold in warm copper, too, each of which can be taken as things are: a load
     * is not split, a size has a row in the table, a run can be cut. What leaves a cable without a
     * fuse that fits is none. What mends most stands first. None where that limit holds.
     *
     * @param before V lost before this cable begins, part of what may be lost
     */
    public static List<Remedy> warmToo(final Worked worked, final double before) {
        final OptionalDouble cold = worked.value(DROP);
        final double most = limit(worked).orElse(Double.NaN) - before;
        if (cold.isEmpty() || !(most > 0)) {
            return List.of();
        }
        final double drop = Math.max(cold.getAsDouble(), WarmDrop.of(worked).orElse(0));
        return drop <= most * (1 + EVEN) ? List.of() : new Remedies(worked, drop, most, true).all();
    }

    /** The drop limit in force, V, whether a line worked it or not. */
    public static OptionalDouble limit(final Worked worked) {
        final OptionalDouble given = worked.value(DROP_LIMIT);
        final OptionalDouble supply = worked.value(SUPPLY_VOLTAGE);
        if (given.isPresent() || supply.isEmpty()) {
            return given;
        }
        final double share = worked.value(DROP_LIMIT_SHARE).orElse(0.03);
        return OptionalDouble.of(share * supply.getAsDouble());
    }

    private List<Remedy> all() {
        final List<Remedy> ways = new ArrayList<>();
        length().ifPresent(metres -> shorter(metres).ifPresent(ways::add));
        worked.value(CIRCUIT_CURRENT).ifPresent(amps -> split(amps).ifPresent(ways::add));
        worked.value(SECTION).ifPresent(section -> section(section).ifPresent(ways::add));
        worked.value(SUPPLY_VOLTAGE).ifPresent(volts -> higher(volts, ways));
        if (warmToo) {
            ways.sort(Comparator.comparingInt(this::rank));
        }
        return List.copyOf(ways);
    }

    /** Where a cable could overheat, a larger one comes first; what is hardly a way comes last. */
    private int rank(final Remedy way) {
        final boolean hot = !fused.fits(1) || fused.aboveCable();
        return switch (way.id()) {
            case "shorter-run" -> hot || isFar(way.value()) ? LAST : 1;
            case "larger-section" -> way.quantity() == SECTION_FOR_DROP ? LAST : hot ? 0 : 2;
            default -> 2;
        };
    }

    private boolean isFar(final double metres) {
        return metres < length().orElse(0) / 2;
    }

    private OptionalDouble length() {
        final OptionalDouble oneWay = worked.value(ONE_WAY_LENGTH);
        final OptionalDouble loop = worked.value(LOOP_LENGTH);
        final boolean loopGiven = worked.typed(Ref.circuit(LOOP_LENGTH)).isPresent();
        return loop.isPresent() && (oneWay.isEmpty() || loopGiven)
                ? OptionalDouble.of(loop.getAsDouble() / cores())
                : oneWay;
    }

    private double cores() {
        return worked.plan().setting().chassis() ? 1 : 2;
    }

    private Optional<Remedy> shorter(final double metres) {
        final double most = metres * limit / drop;
        if (!warmToo) {
            return Optional.of(shorter(most, "way.shorter-run"));
        }
        final double cut = cut(most);
        return cut < SHORTEST || !fused.fits(1)
                ? Optional.empty()
                : Optional.of(shorter(cut, isFar(cut) ? "way.far-shorter" : "way.shorter-run"));
    }

    /** As one can cut it: whole decimetres, below a metre whole centimetres. */
    private static double cut(final double metres) {
        final double parts = metres < 1 ? 100 : 10;
        return Math.floor(metres * parts * (1 + EVEN)) / parts;
    }

    private static Remedy shorter(final double most, final String key) {
        return new Remedy(
                "shorter-run",
                ONE_WAY_LENGTH,
                most,
                TEXTS.of(key, "length", FigureText.roundedDown(most, Dimension.LENGTH)));
    }

    private Optional<Remedy> split(final double amps) {
        final double most = amps * limit / drop;
        final OptionalInt circuits =
                warmToo
                        ? LoadsApart.circuits(worked, most)
                        : OptionalInt.of((int) Math.ceil(drop / limit * (1 - EVEN)));
        return circuits.isEmpty() || (warmToo && !fused.fits(limit / drop))
                ? Optional.empty()
                : Optional.of(split(most, circuits.getAsInt()));
    }

    private static Remedy split(final double most, final int circuits) {
        return new Remedy(
                "split-circuit",
                CIRCUIT_CURRENT,
                most,
                TEXTS.of(
                        "way.split-circuit",
                        "circuits",
                        circuits,
                        "amps",
                        FigureText.roundedDown(most, Dimension.CURRENT)));
    }

    /** A resistance that was given does not change with the section. */
    private Optional<Remedy> section(final double section) {
        if (!warmToo) {
            return Optional.of(larger(section));
        }
        return worked.typed(Ref.circuit(RESISTANCE_PER_LENGTH)).isPresent()
                ? Optional.empty()
                : Optional.of(largerWarm(section));
    }

    private Remedy larger(final double section) {
        final double exact = section * drop / limit;
        final double needed = Math.max(exact, worked.value(SECTION_FOR_AMPACITY).orElse(0));
        final OptionalDouble standard =
                DoubleStream.of(worked.plan().setting().sizes())
                        .filter(s -> s >= needed * (1 - EVEN))
                        .findFirst();
        return larger(
                exact,
                standard,
                TEXTS.of(
                        standard.isPresent() ? "way.larger-section" : "way.larger-section.none",
                        "exact",
                        FigureText.roundedUp(exact, Dimension.AREA),
                        "standard",
                        size(standard.orElse(exact))));
    }

    private Remedy largerWarm(final double section) {
        final double about = section * drop / limit;
        final OptionalDouble standard = HoldingSection.of(worked, limit);
        return larger(
                about,
                standard,
                standard.isPresent()
                        ? TEXTS.of("way.holding-section", "standard", size(standard.getAsDouble()))
                        : HoldingSection.none(worked, about));
    }

    private static Remedy larger(
            final double exact, final OptionalDouble standard, final String text) {
        return new Remedy(
                "larger-section",
                standard.isPresent() ? STANDARD_SECTION : SECTION_FOR_DROP,
                standard.orElse(exact),
                text);
    }

    private String size(final double section) {
        return Sold.text(worked.plan().setting(), section);
    }

    private void higher(final double volts, final List<Remedy> ways) {
        DoubleStream.of(24, 48)
                .filter(system -> system > Voltages.nominal(volts))
                .filter(system -> !warmToo || fused.fits(volts / system))
                .filter(system -> dropAt(system, volts) <= limitAt(system, volts) * (1 + EVEN))
                .findFirst()
                .ifPresent(system -> ways.add(higherTo(system, volts)));
    }

    /** The same watts at a higher voltage: less current, and so less drop, in the same measure. */
    private double dropAt(final double system, final double volts) {
        return drop * volts / system;
    }

    private double limitAt(final double system, final double volts) {
        final boolean inVolts = worked.typed(Ref.circuit(DROP_LIMIT)).isPresent();
        return inVolts ? limit : limit * system / volts;
    }

    private Remedy higherTo(final double system, final double volts) {
        return new Remedy(
                "higher-voltage",
                SUPPLY_VOLTAGE,
                system,
                TEXTS.of(
                        "way.higher-voltage",
                        "volts",
                        FigureText.of(system, Dimension.VOLTAGE),
                        "share",
                        FigureText.of(dropAt(system, volts) / system, Dimension.SHARE)));
    }
}
