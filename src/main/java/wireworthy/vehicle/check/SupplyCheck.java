package wireworthy.vehicle.check;

import static wireworthy.rules.Quantity.*;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import wireworthy.rules.Quantity;
import wireworthy.vehicle.Circuit;
import wireworthy.vehicle.Entries;
import wireworthy.vehicle.Load;
import wireworthy.vehicle.Part;
import wireworthy.working.Assumed;
import wireworthy.working.Solver;

/** The bank: what a day takes out of it, how long it lasts, and what fills it again. */
final class SupplyCheck {
    private static final List<Quantity> FIND =
            List.of(
                    BANK_VOLTAGE,
                    BANK_CAPACITY,
                    BANK_ENERGY,
                    USABLE_ENERGY,
                    DAILY_ENERGY,
                    RUNTIME,
                    CAPACITY_NEEDED,
                    CHARGE_TIME,
                    ARRAY_POWER);
    private static final double DAY = 24 * 3600.0;
    private static final int MOST_NAMES = 5;

    private final FedSums fed;
    private final int circuits;
    private final LastParts last;

    SupplyCheck(final FedSums fed, final int circuits, final LastParts last) {
        this.last = last;
        this.fed = fed;
        this.circuits = circuits;
    }

    CheckedPart of(final Part supply, final Solver solver) {
        final Givens givens = new Givens().all(supply.given());
        needed(supply.given(), givens);
        daily(givens);
        final Sums sums =
                last.supply()
                        .of(
                                List.of(givens.json(), givens.notes(), supply.answers()),
                                () -> Sums.of(solver, givens, FIND, supply.answers()));
        final Sums told = last.earlier().told("supply", sums);
        return withAlwaysOn((circuits().anyMatch(AllDay::in) ? told.inQuestion() : told).part());
    }

    private static void needed(final Entries<Quantity> given, final Givens givens) {
        if (!given.has(SUPPLY_VOLTAGE) && !given.has(BATTERY_VOLTAGE)) {
            givens.note(FieldNote.missing("given.supply-voltage", Said.of("no-supply")));
        }
        if (!given.has(INTERNAL_RESISTANCE)) {
            givens.note(FieldNote.missing("given.internal-resistance", Said.of("no-resistance")));
        }
        if (!given.has(BATTERY_CAPACITY)) {
            givens.note(FieldNote.missing(FieldNote.BATTERY, Said.of("no-battery")));
        }
    }

    /** The day's energy of all circuits; none where one of them is not known. */
    private void daily(final Givens givens) {
        final List<String> open = new ArrayList<>();
        double joules = 0;
        for (int i = 0; i < circuits; i++) {
            if (fed.tree().feeder(i).isEmpty()) {
                final double own = daily(i);
                joules += own;
                if (Double.isNaN(own)) {
                    open.add(fed.circuit(i).name());
                }
            }
        }
        if (joules > 0) {
            givens.worked(DAILY_ENERGY, joules);
            givens.worked(LOAD_POWER, joules / DAY);
        } else if (!open.isEmpty()) {
            givens.note(
                    FieldNote.missing(
                            FieldNote.ENERGY,
                            Said.of("no-energy", "names", String.join(", ", open))));
        }
    }

    private double daily(final int index) {
        final CircuitSums own = fed.own(index);
        return own.network()
                .map(solution -> NetworkSums.dailyEnergy(fed.circuit(index), solution))
                .orElseGet(() -> own.sums().value(DAILY_ENERGY).orElse(Double.NaN));
    }

    private CheckedPart withAlwaysOn(final CheckedPart part) {
        final String always = alwaysOn();
        final List<Assumed> assumed = new ArrayList<>(part.assumed());
        final List<FieldNote> notes = new ArrayList<>(saidOnce(part.notes()));
        if (!always.isEmpty() && part.value(DAILY_ENERGY).isPresent()) {
            assumed.add(new Assumed("hours-a-day", Said.of("always-on", "names", always)));
            notes.add(FieldNote.missing(FieldNote.ENERGY, noHours()));
        }
        return new CheckedPart(
                part.found(),
                part.marks(),
                part.cautions(),
                List.copyOf(notes),
                part.working(),
                assumed);
    }

    /** That there is no voltage is asked about where one gives it, and nowhere else. */
    private static List<FieldNote> saidOnce(final List<FieldNote> notes) {
        final boolean asked =
                notes.stream().anyMatch(note -> note.where().equals("given.supply-voltage"));
        return notes.stream()
                .filter(note -> !asked || !note.where().equals("given.battery-voltage"))
                .toList();
    }

    private String alwaysOn() {
        return circuits()
                .flatMap(
                        circuit ->
                                withoutHours(circuit)
                                        .map(load -> circuit.name() + ": " + load.name()))
                .collect(Collectors.joining(", "));
    }

    private Stream<Circuit> circuits() {
        return IntStream.range(0, circuits).mapToObj(fed::circuit);
    }

    private static Stream<Load> withoutHours(final Circuit circuit) {
        return circuit.loads().stream().filter(load -> !load.hoursKnown());
    }

    /** Names the circuits of which not all hours are known, or how many where they are many. */
    private String noHours() {
        final List<String> names = circuits().filter(AllDay::in).map(Circuit::name).toList();
        return names.size() > MOST_NAMES
                ? Said.of("no-hours.many", "count", names.size())
                : Said.of("no-hours", "names", String.join(", ", names));
    }
}
