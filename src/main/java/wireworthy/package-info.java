/** The program: its rooms, each importing only rooms above it, and the one entry. */
@NullMarked
package wireworthy;

import org.jspecify.annotations.NullMarked;
