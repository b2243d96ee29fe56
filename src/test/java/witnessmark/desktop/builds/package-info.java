/** The page of a build, in the window it stands in. */
@org.jspecify.annotations.NullMarked
package witnessmark.desktop.builds;
