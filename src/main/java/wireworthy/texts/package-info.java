/** The language in use, and the texts in it. */
@NullMarked
package wireworthy.texts;

import org.jspecify.annotations.NullMarked;
