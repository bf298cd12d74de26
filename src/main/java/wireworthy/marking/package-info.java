/** Sound or not; which slips explain a figure; the explanation. */
@NullMarked
package wireworthy.marking;

import org.jspecify.annotations.NullMarked;
