/** Tests of the place Engines, on the sample season in a real file. */
@org.jspecify.annotations.NullMarked
package witnessmark.desktop.engines;
