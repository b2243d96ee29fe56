/**
 * The place Engines: what is in an engine, what it has done, and the entries behind every figure. It differs from
 * {@code beforewego} in that it looks at one engine in full, and from its entries wrong ones are struck out. Classes
 * ending in Model word what the use cases answer and need no display. Open
 * {@link witnessmark.desktop.engines.EnginesPlace} first.
 */
@NullMarked
package witnessmark.desktop.engines;

import org.jspecify.annotations.NullMarked;
