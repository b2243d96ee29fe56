/**
 * Charts, described first and drawn after. A {@link witnessmark.chart.Chart} says what is on it: the finding, axes with
 * their units, lines, marks, the same numbers as a table, and what a screen reader is told. A
 * {@link witnessmark.chart.DrawnChart} puts it on any {@code Graphics2D}, so that window, picture and print match. The
 * chart library stops here: none of its types is seen outside. It differs from {@code desktop} in that it knows no
 * component and no theme; colours and fonts are handed in. Open {@link witnessmark.chart.Chart} first.
 */
@NullMarked
package witnessmark.chart;

import org.jspecify.annotations.NullMarked;
