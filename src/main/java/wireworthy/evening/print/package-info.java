/** The pages of an evening: sheets, key, slip finder. */
@NullMarked
package wireworthy.evening.print;

import org.jspecify.annotations.NullMarked;
