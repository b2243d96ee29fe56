/**
 * Finding what is written down: engines, parts, events, runs. The field and its results are the shell's; what is found
 * and where it leads is here. Open {@link witnessmark.desktop.find.RecordsFindable} first.
 */
@NullMarked
package witnessmark.desktop.find;

import org.jspecify.annotations.NullMarked;
