/** The circuit schedule of a vehicle, to print. */
@NullMarked
package wireworthy.paper.schedule;

import org.jspecify.annotations.NullMarked;
