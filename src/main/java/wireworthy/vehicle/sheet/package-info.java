/** Spreadsheets in and out, as CSV. */
@NullMarked
package wireworthy.vehicle.sheet;

import org.jspecify.annotations.NullMarked;
