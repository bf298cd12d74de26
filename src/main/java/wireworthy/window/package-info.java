/** The JavaFX window: a file a place. */
@NullMarked
package wireworthy.window;

import org.jspecify.annotations.NullMarked;
