/** What an engine's clearances become at speed: the answer, how it comes about, its chart, and what somebody tries. */
@NullMarked
package witnessmark.desktop.speed;

import org.jspecify.annotations.NullMarked;
