/**
 * The short sheets on which a team writes down cars, engines, parts, events and limits by hand, each a page shown in the
 * window for a while. What they ask and write is {@code logbook.sheets}; here they are laid out and typed into. Open
 * {@link witnessmark.desktop.sheets.Sheets} first.
 */
@NullMarked
package witnessmark.desktop.sheets;

import org.jspecify.annotations.NullMarked;
