/** What a group calls out at the projector, sorted by where it comes from. */
@NullMarked
package wireworthy.evening.called;

import org.jspecify.annotations.NullMarked;
