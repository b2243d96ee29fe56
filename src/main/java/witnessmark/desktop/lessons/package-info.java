/**
 * Everything that incidents taught, in the place of an engine: what each lesson asks, and which build sheets it was asked on.
 * Begin with {@link witnessmark.desktop.lessons.LessonsAside}.
 */
@NullMarked
package witnessmark.desktop.lessons;

import org.jspecify.annotations.NullMarked;
