/** Tests of the place Parts shelf, on the sample season and on a small shelf of one part for each way to be somewhere. */
@org.jspecify.annotations.NullMarked
package witnessmark.desktop.shelf;
