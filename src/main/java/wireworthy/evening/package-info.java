/** The evening class: sheets and their marks, code names. */
@NullMarked
package wireworthy.evening;

import org.jspecify.annotations.NullMarked;
