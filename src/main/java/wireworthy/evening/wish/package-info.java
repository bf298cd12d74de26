/** What a leader wants on a sheet, before it is known whether it can be made. */
@NullMarked
package wireworthy.evening.wish;

import org.jspecify.annotations.NullMarked;
