package wireworthy.window.figures;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import wireworthy.lessons.Handle;
import wireworthy.rules.Dimension;
import wireworthy.rules.FigureText;
import wireworthy.rules.Quantity;
import wireworthy.rules.Reading;
import wireworthy.rules.Ref;
import wireworthy.working.Caution;
import wireworthy.working.Cautions;
import wireworthy.working.Question;
import wireworthy.working.Solver;
import wireworthy.working.Worked;

/** A question whose givens are numbers already, not text; all values are SI. */
final class Asking {
    private static final int DIGITS = 6;

    private final Map<Ref, Reading.Read> figures = new LinkedHashMap<>();
    private final Map<Quantity, String> names = new LinkedHashMap<>();
    private final List<String> loads = new ArrayList<>();

    Asking with(final Quantity quantity, final double si) {
        return with(Ref.circuit(quantity), si);
    }

    Asking with(final Knob knob) {
        return with(knob.quantity(), knob.value());
    }

    Asking with(final Handle.Named named) {
        return with(named.quantity(), named.name());
    }

    Asking with(final Quantity quantity, final String name) {
        names.put(quantity, name);
        return this;
    }

    /** Adds a load to the list of loads. */
    Asking with(final Handle.Load load) {
        loads.add(load.name());
        final int subject = loads.size();
        with(new Ref(Quantity.LOAD_POWER, subject), load.watts());
        load.share().ifPresent(share -> with(new Ref(Quantity.SHARE_OF_TIME, subject), share));
        return with(new Ref(Quantity.LOAD_COUNT, subject), load.count());
    }

    private Asking with(final Ref ref, final double si) {
        final Dimension dimension = ref.quantity().dimension();
        figures.put(
                ref,
                new Reading.Read(
                        si,
                        dimension.unit(),
                        FigureText.of(si, dimension, DIGITS),
                        0,
                        DIGITS,
                        true));
        return this;
    }

    /**
     * Works what is asked.
     *
     * @throws wireworthy.working.Unworkable where no circuit has these numbers
     */
    Worked find(final Solver solver, final Quantity... asked) {
        return solver.work(question(asked));
    }

    /** What could hurt someone in these numbers, worst first. */
    List<Caution> cautions(final Solver solver, final Quantity... asked) {
        final Question question = question(asked);
        return Cautions.of(question, solver.widely(question));
    }

    /** Works everything around what is asked, as cautions and remedies want it. */
    Worked around(final Solver solver, final Quantity... asked) {
        return solver.widely(question(asked));
    }

    private Question question(final Quantity... asked) {
        return new Question(figures, names, loads, List.of(), List.of(asked), Map.of());
    }

    /** Works one quantity that the givens always allow. */
    double value(final Solver solver, final Quantity asked) {
        return find(solver, asked).value(asked).orElseThrow();
    }
}
