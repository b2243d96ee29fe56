/**
 * The strip report on the measuring bench: what is found when an engine is taken down, position by position. Begin with
 * {@link witnessmark.desktop.strip.StripReportPage}.
 */
@NullMarked
package witnessmark.desktop.strip;

import org.jspecify.annotations.NullMarked;
