/**
 * Words tags for bagged parts. Open {@link witnessmark.launch.tags.TagPaper} first.
 */
@NullMarked
package witnessmark.launch.tags;

import org.jspecify.annotations.NullMarked;
