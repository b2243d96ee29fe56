/** Tests of statements: seeded ones written in every dialect, and read back. Open {@link witnessmark.logbook.bank.Dialect} first. */
@NullMarked
package witnessmark.logbook.bank;

import org.jspecify.annotations.NullMarked;
