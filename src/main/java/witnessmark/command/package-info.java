/**
 * The command line over the same use cases as the window: new, import, export, life, due, log, verify. Answers go to
 * standard output as plain tables or, with {@code --json}, as versioned JSON; problems go to standard error. Open
 * {@link witnessmark.command.Program} first.
 */
@NullMarked
package witnessmark.command;

import org.jspecify.annotations.NullMarked;
