package wireworthy.vehicle.sheet;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import wireworthy.rules.Dimension;
import wireworthy.rules.FigureText;
import wireworthy.rules.Figures;
import wireworthy.rules.Quantity;
import wireworthy.rules.Reading;
import wireworthy.vehicle.LoadEntry;
import wireworthy.vehicle.Vocabulary;

/** Guesses what a column is about from its heading. */
final class Headings {
    private static final List<Pattern> WITH_UNIT =
            List.of(
                    Pattern.compile("(?<name>[^(\\[]*)[(\\[](?<unit>[^)\\]]*)[)\\]]"),
                    Pattern.compile("(?<name>.*?) *[,/] *(?<unit>\\S+)"),
                    Pattern.compile("(?<name>.*?) +in +(?<unit>\\S+)"),
                    Pattern.compile("(?<name>.*?) +(?<unit>\\S+)"));

    /** What says that a figure is what the builder worked out. */
    private static final Pattern OWN =
            Pattern.compile(
                    "(?iu)[,(]? *\\b(mine|my|own|calculated|worked out|mein|meine|meiner|eigene|eigener"
                            + "|gerechnet|berechnet|gerechneter|berechneter)\\b *[,)]?");

    private static final Map<String, Target> WHOLE = new LinkedHashMap<>();
    private static final Map<String, Target> PART = new LinkedHashMap<>();

    static {
        ownHeadings();
        lines().stream()
                .filter(line -> !line.isBlank() && !line.startsWith("#"))
                .forEach(Headings::learn);
    }

    private Headings() {}

    /** The headings this program itself writes. */
    private static void ownHeadings() {
        for (final LoadEntry entry : LoadEntry.values()) {
            WHOLE.put(key(SheetWriter.heading(entry)), new Target.OfLoad(entry));
        }
        Stream.concat(Vocabulary.CIRCUIT.stream(), Vocabulary.STRETCH.stream())
                .forEach(each -> WHOLE.put(SheetWriter.heading(each), new Target.Given(each)));
        WHOLE.putAll(SheetWriter.PLACES);
        WHOLE.putAll(SheetWriter.FEEDS);
        WHOLE.put(SheetWriter.VOLTS, Target.OfVehicle.VOLTS);
        // A current without more is that of the circuit; the plain one never stands on its way.
        Stream.of(Quantity.values())
                .filter(each -> each.numeric() && each != Quantity.CURRENT)
                .forEach(each -> WHOLE.put(SheetWriter.OWN + each.inFiles(), new Target.Own(each)));
    }

    private static List<String> lines() {
        try (InputStream file = Headings.class.getResourceAsStream("headings.txt")) {
            return new String(Objects.requireNonNull(file).readAllBytes(), StandardCharsets.UTF_8)
                    .lines()
                    .toList();
        } catch (final IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static void learn(final String line) {
        final int colon = line.indexOf(':');
        final Target target = target(line.substring(0, colon));
        for (final String words : line.substring(colon + 1).split(",", -1)) {
            final String word = words.strip();
            if (word.startsWith("~")) {
                PART.putIfAbsent(word.substring(1), target);
            } else {
                WHOLE.putIfAbsent(word, target);
            }
        }
    }

    private static Target target(final String id) {
        final String name = id.substring(id.indexOf('.') + 1);
        if (id.startsWith("load.")) {
            return new Target.OfLoad(LoadEntry.of(name).orElseThrow());
        }
        if (id.startsWith("given.")) {
            return new Target.Given(Quantity.of(name).orElseThrow());
        }
        if (id.startsWith("vehicle.")) {
            return new Target.OfVehicle(Quantity.of(name).orElseThrow());
        }
        if (id.startsWith("own.")) {
            return new Target.Own(Quantity.of(name).orElseThrow());
        }
        return switch (id) {
            case "circuit" -> Target.Word.CIRCUIT;
            case "name", "load" -> Target.Word.LOAD;
            case "colour" -> Target.Word.COLOUR;
            case "notes" -> Target.Word.NOTES;
            case "fed-from" -> Target.Word.FED_FROM;
            default -> Target.Word.NOTHING;
        };
    }

    /** What a heading most likely means; empty where it says nothing known. */
    static Optional<Column> guess(final int index, final String heading) {
        final String whole = heading.replaceAll("[\\s_]+", " ").replaceAll("[:#*.]+$", "").strip();
        final Matcher own = OWN.matcher(whole);
        return own.find()
                ? asTyped(index, heading, whole)
                        .filter(column -> column.target() instanceof Target.Own)
                        .or(
                                () ->
                                        asTyped(
                                                index,
                                                heading,
                                                whole.replaceAll(OWN.pattern(), " ").strip()))
                        .map(Headings::owned)
                : asTyped(index, heading, whole);
    }

    /** A current that is called the builder's own is no given. */
    private static Column owned(final Column column) {
        return column.target().equals(new Target.OfLoad(LoadEntry.CURRENT))
                ? Mapping.retargeted(column, new Target.Own(Quantity.CIRCUIT_CURRENT))
                : column;
    }

    private static Optional<Column> asTyped(
            final int index, final String heading, final String plain) {
        return withUnit(index, heading, plain)
                .or(() -> named(WHOLE.get(key(plain)), index, heading))
                .or(() -> named(WHOLE.get(key(plain.replaceAll("[()\\[\\]]", ""))), index, heading))
                .or(() -> partly(index, heading, plain));
    }

    private static String key(final String name) {
        return name.strip().toLowerCase(Locale.ROOT).replaceAll(" +", " ");
    }

    private static Optional<Column> withUnit(
            final int index, final String heading, final String plain) {
        for (final Pattern pattern : WITH_UNIT) {
            final Matcher matcher = pattern.matcher(plain);
            if (matcher.matches()) {
                final String unit = matcher.group("unit").strip();
                final Optional<Column> found =
                        measured(WHOLE.get(key(matcher.group("name"))), unit, index, heading);
                if (found.isPresent()) {
                    return found;
                }
            }
        }
        return Optional.empty();
    }

    private static Optional<Column> measured(
            final @Nullable Target target,
            final String unit,
            final int index,
            final String heading) {
        if (target == null || unit.isEmpty()) {
            return Optional.empty();
        }
        final boolean share = unit.equals("%") && target.dimension() == Dimension.VOLTAGE;
        final Target meant = share ? new Target.Own(Quantity.DROP_PERCENT) : target;
        return isUnit(unit, meant.dimension())
                ? Optional.of(new Column(index, heading, meant, unit, Column.UnitFrom.HEADING))
                : Optional.empty();
    }

    /** Whether cells of this kind can be in such a unit. */
    static boolean isUnit(final String unit, final Dimension dimension) {
        return dimension != Dimension.NAME
                && !(Figures.read("12 " + unit, dimension, true) instanceof Reading.Unreadable);
    }

    private static Optional<Column> named(
            final @Nullable Target target, final int index, final String heading) {
        if (target == null) {
            return Optional.empty();
        }
        final Dimension dimension = target.dimension();
        final boolean gauge = key(heading).matches(".*\\b(awg|gauge)\\b.*");
        return Optional.of(
                gauge && dimension == Dimension.AREA
                        ? new Column(index, heading, target, "AWG", Column.UnitFrom.HEADING)
                        : new Column(
                                index,
                                heading,
                                target,
                                usual(heading, dimension),
                                from(heading, dimension)));
    }

    /** A heading that is a unit itself or ends in one, such as "mm2" or "my Watts", says it. */
    private static Optional<String> unitIn(final String heading, final Dimension dimension) {
        final String plain = heading.strip();
        return Stream.of(plain, plain.substring(plain.lastIndexOf(' ') + 1))
                .filter(unit -> !unit.isEmpty() && dimension != Dimension.COUNT)
                .filter(unit -> isUnit(unit, dimension))
                .findFirst();
    }

    private static String usual(final String heading, final Dimension dimension) {
        return unitIn(heading, dimension).orElseGet(() -> unitOf(dimension));
    }

    private static Column.UnitFrom from(final String heading, final Dimension dimension) {
        return unitIn(heading, dimension).isPresent()
                ? Column.UnitFrom.HEADING
                : Column.UnitFrom.ASSUMED;
    }

    /** The unit usual in the field; empty for words and plain numbers. */
    static String unitOf(final Dimension dimension) {
        return dimension == Dimension.NAME ? "" : FigureText.unit(dimension);
    }

    private static Optional<Column> partly(
            final int index, final String heading, final String plain) {
        final Optional<Target> target =
                PART.entrySet().stream()
                        .filter(e -> key(plain).contains(e.getKey()))
                        .map(Map.Entry::getValue)
                        .findFirst();
        return target.flatMap(
                it ->
                        units(plain)
                                .flatMap(unit -> measured(it, unit, index, heading).stream())
                                .findFirst()
                                .or(() -> named(it, index, heading)));
    }

    /** What may be the unit in a heading. */
    private static Stream<String> units(final String plain) {
        return WITH_UNIT.stream()
                .map(pattern -> pattern.matcher(plain))
                .filter(Matcher::matches)
                .map(matcher -> matcher.group("unit").strip());
    }
}
