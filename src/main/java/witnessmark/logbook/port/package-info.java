/**
 * What the use cases need from outside, as interfaces: {@code store} and {@code exchange} implement them. Open
 * {@link witnessmark.logbook.port.Logbook} first.
 */
@NullMarked
package witnessmark.logbook.port;

import org.jspecify.annotations.NullMarked;
