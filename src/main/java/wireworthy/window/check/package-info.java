/** The place where a builder's own sums are checked. */
@NullMarked
package wireworthy.window.check;

import org.jspecify.annotations.NullMarked;
