/** Photos of incidents, engines and parts. Begin with {@link witnessmark.logbook.photos.KeepPhotos}. */
@NullMarked
package witnessmark.logbook.photos;

import org.jspecify.annotations.NullMarked;
