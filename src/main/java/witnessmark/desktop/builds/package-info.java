/**
 * The page of a build: by positions what comes out and goes in, by groups what is tightened, what is still open.
 * {@link witnessmark.desktop.builds.BuildAside} shows it in the place of an engine.
 */
@NullMarked
package witnessmark.desktop.builds;

import org.jspecify.annotations.NullMarked;
