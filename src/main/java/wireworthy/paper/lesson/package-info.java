/** A lesson to print. */
@NullMarked
package wireworthy.paper.lesson;

import org.jspecify.annotations.NullMarked;
