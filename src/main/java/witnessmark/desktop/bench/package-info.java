/**
 * The measuring bench: a build's sheet as it is measured, and beside it how what is measured stands. Open {@link
 * witnessmark.desktop.bench.BenchPlace} first, then {@link witnessmark.desktop.bench.BenchModel}.
 */
@NullMarked
package witnessmark.desktop.bench;

import org.jspecify.annotations.NullMarked;
