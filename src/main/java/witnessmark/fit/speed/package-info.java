/** What an engine's clearances become when it turns fast: what closes them, how well that is known, and when it touches. */
@NullMarked
package witnessmark.fit.speed;

import org.jspecify.annotations.NullMarked;
