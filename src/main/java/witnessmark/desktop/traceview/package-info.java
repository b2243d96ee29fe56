/** A trace of a run: its channels in rows over one time, its marks, its time at each speed; another run laid over it. */
@NullMarked
package witnessmark.desktop.traceview;

import org.jspecify.annotations.NullMarked;
