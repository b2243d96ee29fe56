/** Tests of the measuring bench, on the sample season as it opens. */
@org.jspecify.annotations.NullMarked
package witnessmark.desktop.bench;
