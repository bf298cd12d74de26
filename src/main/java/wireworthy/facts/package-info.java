/** Published tables and limits, read from data files; every value with its source. */
@NullMarked
package wireworthy.facts;

import org.jspecify.annotations.NullMarked;
