/** Where I stand: what the record says of each skill, and how it is shown. */
@NullMarked
package wireworthy.window.stand;

import org.jspecify.annotations.NullMarked;
