/** A builder's own vehicle: its circuits as typed, kept in one file. */
@NullMarked
package wireworthy.vehicle;

import org.jspecify.annotations.NullMarked;
