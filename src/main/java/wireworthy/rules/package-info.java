/** Quantities with their units; rules with their slips, a file a topic. */
@NullMarked
package wireworthy.rules;

import org.jspecify.annotations.NullMarked;
