/** What the places of the window share. */
@NullMarked
package wireworthy.window.parts;

import org.jspecify.annotations.NullMarked;
