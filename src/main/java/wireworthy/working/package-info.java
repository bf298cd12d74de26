/** From a question to its working. */
@NullMarked
package wireworthy.working;

import org.jspecify.annotations.NullMarked;
