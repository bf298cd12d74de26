package wireworthy.facts;

import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import wireworthy.facts.CableTable.EngineSpaceFactor;
import wireworthy.facts.CableTable.Row;

/** The ampacity tables a cable can be chosen by. */
public final class CableTables {
    /** What is taken where nothing is said. */
    public static final String USUAL = "thin-wall";

    /** "A at 85 to 90 degC" is the column for 85 degC. */
    private static final Pattern AMPACITY = Pattern.compile("A at (\\d+)( to \\d+)? degC");

    private static final Pattern FIRST_NUMBER = Pattern.compile("\\d+");
    private static final String GAUGE = "Gauge, AWG";
    private static final String SECTION = "Section, mm2";

    private static final List<String> IDS =
            List.of("thin-wall", "boat-cable", "iso-10133", "standard-wall");
    private static final Map<String, CableTable> READ = new ConcurrentHashMap<>();

    private CableTables() {}

    /**
     * One table: thin-wall, boat-cable, iso-10133 or standard-wall.
     *
     * @throws IllegalArgumentException if there is none of this name; the message lists the names
     */
    public static CableTable named(final String id) {
        return READ.computeIfAbsent(UnknownName.unless(IDS, "cable table", id), CableTables::read);
    }

    /** The ids of all of them, the one taken by default first. */
    public static List<String> ids() {
        return IDS;
    }

    /** All of them, the one taken by default first. */
    public static List<CableTable> all() {
        return IDS.stream().map(CableTables::named).toList();
    }

    private static CableTable read(final String id) {
        return switch (id) {
            // Thin-wall cable ends at 8.5 mm2: the rows above it are battery cable on short runs.
            case "thin-wall" -> read(id, 105, Optional.of(8.5), Optional.empty());
            case "boat-cable" -> read(id, 105, Optional.empty(), Optional.of("boat-engine-space"));
            case "iso-10133" ->
                    read(id, 70, Optional.empty(), Optional.of("iso-10133-engine-space"));
            default -> read(id, 70, Optional.empty(), Optional.empty());
        };
    }

    private static CableTable read(
            final String id,
            final double insulation,
            final Optional<Double> largest,
            final Optional<String> engineSpace) {
        final FactTable table = FactTables.named(id);
        final List<String> columns =
                table.columns().stream().filter(AMPACITY.asMatchPredicate()).toList();
        final List<Row> rows = rows(table, columns);
        return new CableTable(
                id,
                table.title(),
                table.scope(),
                table.source(),
                columns.stream().map(CableTables::firstNumber).toList(),
                rows,
                largest.orElse(rows.get(rows.size() - 1).sectionMm2()),
                insulation,
                byGauge(table),
                engineSpace.map(CableTables::engineSpaceFactors).orElse(List.of()));
    }

    private static boolean byGauge(final FactTable table) {
        return table.columns().contains(GAUGE);
    }

    private static List<Row> rows(final FactTable table, final List<String> columns) {
        return table.rows().stream()
                .map(cells -> row(table, cells, columns))
                .sorted(Comparator.comparingDouble(Row::sectionMm2))
                .toList();
    }

    private static Row row(
            final FactTable table, final List<String> cells, final List<String> columns) {
        final List<Double> amps =
                columns.stream().map(column -> table.number(cells, column)).toList();
        final Source source = table.sourceOf(cells);
        if (byGauge(table)) {
            final int gauge = Awg.number(table.cell(cells, GAUGE)).orElseThrow();
            return new Row(Awg.areaMm2(gauge), Awg.label(gauge), amps, source);
        }
        final String size = table.cell(cells, SECTION);
        return new Row(Double.parseDouble(size), size + " mm2", amps, source);
    }

    private static List<EngineSpaceFactor> engineSpaceFactors(final String id) {
        final FactTable table = FactTables.named(id);
        return table.rows().stream()
                .map(
                        cells ->
                                new EngineSpaceFactor(
                                        firstNumber(table.cell(cells, "Insulation, degC")),
                                        table.number(cells, "Multiply by"),
                                        table.sourceOf(cells)))
                .toList();
    }

    private static double firstNumber(final String words) {
        final Matcher matcher = FIRST_NUMBER.matcher(words);
        if (!matcher.find()) {
            throw new IllegalStateException("No number in \"" + words + "\"");
        }
        return Double.parseDouble(matcher.group());
    }
}
