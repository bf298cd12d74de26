/** Banks, drawing numbers, skills and their state, choice of the next problem. */
@NullMarked
package wireworthy.practice;

import org.jspecify.annotations.NullMarked;
