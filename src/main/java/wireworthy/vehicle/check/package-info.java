/** The sums of a vehicle checked: every circuit, and all of them together. */
@NullMarked
package wireworthy.vehicle.check;

import org.jspecify.annotations.NullMarked;
