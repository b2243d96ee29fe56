/**
 * Faces on the measuring bench: the face map of a head, gasket or block, its low zones and skims, and what is written down
 * of it. Open {@link witnessmark.desktop.faces.FacesPage} first; {@link witnessmark.desktop.faces.MapWords} makes the map,
 * {@link witnessmark.chart.DrawnFaceMap} draws it.
 */
@NullMarked
package witnessmark.desktop.faces;

import org.jspecify.annotations.NullMarked;
