/** Lesson files, their figures and questions. */
@NullMarked
package wireworthy.lessons;

import org.jspecify.annotations.NullMarked;
