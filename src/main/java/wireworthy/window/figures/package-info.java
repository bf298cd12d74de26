/** The live figures: for each a model that asks the engine, and a view that draws it. */
@NullMarked
package wireworthy.window.figures;

import org.jspecify.annotations.NullMarked;
