/**
 * What many entries together say that none says alone. Begin with {@link witnessmark.study.Trends}: what is read again and
 * again at one place, and where it is going. Answers are in {@link witnessmark.study.result}.
 */
@NullMarked
package witnessmark.study;

import org.jspecify.annotations.NullMarked;
