/** Pages to print: PDF with the program's own fonts, equal bytes for equal input. */
@NullMarked
package wireworthy.paper;

import org.jspecify.annotations.NullMarked;
