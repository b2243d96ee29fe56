package witnessmark.study.result;

import org.jspecify.annotations.Nullable;
import witnessmark.domain.Entry;
import witnessmark.domain.PartDesign;
import witnessmark.domain.Trial;
import witnessmark.quantity.Counter;

/**
 * A trial as it stands: lives side by side, and a test where enough failed. What comes of it a person says.
 *
 * @param trial which
 * @param triedDesign the design that is tried
 * @param usualDesign what it is held against, or null for every other of its kind
 * @param counter what both are lifed by: running or loaded time
 * @param limit at what age a part of it is renewed, in milliseconds; null where nothing says so, or not the same of all
 * @param tried the lives of what is tried
 * @param usual the lives of what is usual
 * @param test the log-rank test, or null where one side has no life that can be compared
 * @param judged whether its verdict counts by the day looked at
 */
public record TrialAnswer(
        Entry<Trial> trial,
        PartDesign triedDesign,
        @Nullable PartDesign usualDesign,
        Counter counter,
        @Nullable Long limit,
        TrialSide tried,
        TrialSide usual,
        @Nullable TrialTest test,
        boolean judged) {}
