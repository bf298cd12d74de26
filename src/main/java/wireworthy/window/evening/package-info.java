/** The place of the evening class: a file a part, each with its model. */
@NullMarked
package wireworthy.window.evening;

import org.jspecify.annotations.NullMarked;
