/**
 * What was found when an engine was taken down, place by place and beside the strip before. Begin with
 * {@link witnessmark.study.strip.Strips}.
 */
@NullMarked
package witnessmark.study.strip;

import org.jspecify.annotations.NullMarked;
