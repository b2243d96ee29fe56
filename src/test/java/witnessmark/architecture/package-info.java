/**
 * The map of rooms and the habits of the house, as tests. Class rules are read from the compiled program, text rules
 * from the sources, SQL rules by preparing every statement. Open {@link witnessmark.architecture.Room} first.
 */
@NullMarked
package witnessmark.architecture;

import org.jspecify.annotations.NullMarked;
