/** The command line. */
@NullMarked
package wireworthy.command;

import org.jspecify.annotations.NullMarked;
