package wireworthy.window.evening;

import java.util.function.Supplier;
import wireworthy.record.SumsInUse;
import wireworthy.working.Solver;

/**
 * What live figures need beside the desk of the evening.
 *
 * @param sums what a figure goes by where its lesson leaves it open
 */
public record ProjectorDesk(Solver solver, Supplier<SumsInUse> sums) {}
