package wireworthy.vehicle.sheet;

import static wireworthy.rules.Quantity.SUPPLY_VOLTAGE;

import java.util.List;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import wireworthy.vehicle.Understood;

/** What stands above the headings of a spreadsheet. */
final class Title {
    private static final Pattern VOLTS =
            Pattern.compile("(?iu)(?<![\\d.,])(\\d{2}(?:[.,]\\d{1,2})?) ?(?:V|volts?)\\b");

    /** What vehicles are wired at, V; a title may name the mains, too. */
    private static final double LEAST = 10;

    private static final double MOST = 60;

    private Title() {}

    /** The voltage it names, as text; empty where it names none, or several. */
    static String volts(final Sheet sheet, final int headings) {
        final List<String> named =
                sheet.rows().stream()
                        .limit(Math.max(0, headings))
                        .flatMap(row -> row.cells().stream())
                        .flatMap(cell -> VOLTS.matcher(cell).results())
                        .map(Title::text)
                        .filter(Title::isOfVehicle)
                        .distinct()
                        .toList();
        return named.size() == 1 ? named.get(0) : "";
    }

    private static String text(final MatchResult found) {
        return found.group(1).replace(',', '.') + " V";
    }

    private static boolean isOfVehicle(final String volts) {
        return Understood.of(SUPPLY_VOLTAGE, volts) instanceof Understood.Figure figure
                && figure.read().value() >= LEAST
                && figure.read().value() <= MOST;
    }
}
