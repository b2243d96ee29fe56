/** Tests of the page of a trial, on the sample season and on springs of which most broke. */
@org.jspecify.annotations.NullMarked
package witnessmark.desktop.trials;
