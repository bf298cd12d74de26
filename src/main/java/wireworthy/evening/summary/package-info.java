/** What the group stumbled over. */
@NullMarked
package wireworthy.evening.summary;

import org.jspecify.annotations.NullMarked;
