/** What was answered and when. */
@NullMarked
package wireworthy.record;

import org.jspecify.annotations.NullMarked;
