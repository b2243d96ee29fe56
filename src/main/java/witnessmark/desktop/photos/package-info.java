/**
 * Photos on the pages of incidents, engines and parts, and looked at large. Open
 * {@link witnessmark.desktop.photos.Photographs} first.
 */
@NullMarked
package witnessmark.desktop.photos;

import org.jspecify.annotations.NullMarked;
