package wireworthy.vehicle.check;

import static wireworthy.rules.Quantity.STANDARD_SECTION;

import java.util.List;
import java.util.OptionalDouble;
import wireworthy.working.HoldingSection;
import wireworthy.working.Remedies;
import wireworthy.working.Sold;
import wireworthy.working.Worked;

/** The section to take for a cable tapped off another: one that keeps the limit from the board. */
final class FarSection {
    private final Sums sums;
    private final double before;

    /**
     * @param before V lost before the cable begins, once that is warm; nothing at the board
     */
    FarSection(final Sums sums, final double before) {
        this.sums = sums;
        this.before = before;
    }

    /** What was found, with that section; one that is enough for its own cable only says so. */
    List<Found> found() {
        return before > 0 ? sums.found().stream().map(this::far).toList() : sums.found();
    }

    /** The notes, with that section where none is typed. */
    List<FieldNote> notes() {
        return before > 0 ? sums.notes().stream().map(this::far).toList() : sums.notes();
    }

    private Found far(final Found found) {
        return found.quantity() == STANDARD_SECTION && found.value().isPresent()
                ? sums.around().map(around -> far(found, around)).orElse(found)
                : found;
    }

    private Found far(final Found found, final Worked around) {
        final double most = Remedies.limit(around).orElse(Double.NaN) - before;
        final OptionalDouble holding = HoldingSection.of(around, most);
        return holding.isEmpty()
                ? said(found, found.value(), "size.alone", found.text())
                : said(found, holding, "size.far", sold(around, holding.getAsDouble()));
    }

    private static String sold(final Worked around, final double section) {
        return Sold.result(around.plan().setting(), STANDARD_SECTION, section);
    }

    private static Found said(
            final Found found, final OptionalDouble value, final String key, final String size) {
        return new Found(found.quantity(), value, Said.of(key, "size", size), found.why());
    }

    private FieldNote far(final FieldNote note) {
        return sums.found().stream()
                .filter(each -> each.quantity() == STANDARD_SECTION)
                .filter(each -> note.text().equals(CircuitSums.toTake(each)))
                .map(each -> FieldNote.missing(note.where(), CircuitSums.toTake(far(each))))
                .findFirst()
                .orElse(note);
    }
}
