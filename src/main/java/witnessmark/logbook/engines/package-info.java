/**
 * What is in an engine and what it has done: the engines and heads of the logbook, one engine in full, the entries
 * behind any of its figures, and the history of one entry. It differs from the rest of {@code logbook} in that it writes
 * nothing. Results are plain records; sentences are made of them elsewhere. Open
 * {@link witnessmark.logbook.engines.SeeEngine} first.
 */
@NullMarked
package witnessmark.logbook.engines;

import org.jspecify.annotations.NullMarked;
