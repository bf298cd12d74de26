/** Evenings to start from, as files. */
@NullMarked
package wireworthy.evening.course;

import org.jspecify.annotations.NullMarked;
