package wireworthy.vehicle.check;

import static wireworthy.rules.Quantity.CABLE_TABLE;
import static wireworthy.rules.Quantity.FUSE;
import static wireworthy.rules.Quantity.FUSE_CEILING;
import static wireworthy.rules.Quantity.SECTION;

import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import wireworthy.facts.CableTable;
import wireworthy.facts.CableTables;
import wireworthy.rules.Dimension;
import wireworthy.rules.FigureText;
import wireworthy.rules.Quantity;
import wireworthy.working.Caution;
import wireworthy.working.Danger;
import wireworthy.working.Question;
import wireworthy.working.Solver;
import wireworthy.working.Unworkable;
import wireworthy.working.Worked;

/** What the other tables say of a cable that is too thick for its own. */
record OtherTables(Solver solver, Sums sums) {
    private record By(CableTable table, double ceiling) {
        private String text() {
            return Said.of(
                    "other-tables.one",
                    "ceiling",
                    FigureText.roundedDown(ceiling, Dimension.CURRENT),
                    "table",
                    table.id());
        }
    }

    /** In a sentence, after a space; empty where none holds it. */
    String told() {
        return known().map(By::text)
                .reduce((one, next) -> one + ", " + next)
                .map(list -> " " + Said.of("other-tables", "list", list))
                .orElse("");
    }

    /** A fuse above what the lowest of them allows. */
    Optional<Caution> caution() {
        final OptionalDouble fuse = sums.typed(FUSE);
        return known().min(Comparator.comparingDouble(By::ceiling))
                .filter(lowest -> fuse.orElse(0) > lowest.ceiling())
                .map(lowest -> above(fuse.orElseThrow(), lowest));
    }

    private static Caution above(final double fuse, final By lowest) {
        return new Caution(
                "fuse-above-other-table",
                Danger.FIRE,
                Said.of(
                        "other-tables.above",
                        "fuse",
                        FigureText.of(fuse, Dimension.CURRENT),
                        "lowest",
                        lowest.text()));
    }

    private Stream<By> known() {
        return sums.worked().stream().flatMap(this::all);
    }

    private Stream<By> all(final Worked worked) {
        final CableTable own = worked.plan().setting().table();
        final double mm2 = sums.typed(SECTION).orElse(0) / Dimension.AREA.scale();
        return CableTables.all().stream()
                .filter(table -> !table.equals(own) && mm2 > own.largestSectionMm2())
                .flatMap(table -> by(worked.question(), table));
    }

    private Stream<By> by(final Question question, final CableTable table) {
        try {
            final OptionalDouble ceiling = solver.work(in(question, table)).value(FUSE_CEILING);
            return ceiling.isEmpty()
                    ? Stream.empty()
                    : Stream.of(new By(table, ceiling.getAsDouble()));
        } catch (final Unworkable other) {
            return Stream.empty();
        }
    }

    private static Question in(final Question question, final CableTable table) {
        final Map<Quantity, String> names = new LinkedHashMap<>(question.names());
        names.put(CABLE_TABLE, table.id());
        return new Question(
                question.figures(),
                names,
                question.loads(),
                question.available(),
                question.find(),
                question.answers());
    }
}
