/** Tests of the place Incidents, on the sample season as it opens and when it is over. */
@org.jspecify.annotations.NullMarked
package witnessmark.desktop.incidents;
