/** What learners hand in, as files. */
@NullMarked
package wireworthy.evening.handin;

import org.jspecify.annotations.NullMarked;
