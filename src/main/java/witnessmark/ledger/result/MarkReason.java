package witnessmark.ledger.result;

import java.util.function.Function;

/** Why a mark stands where it does. */
public sealed interface MarkReason permits HeldBy, LimitUse, ReadingUse, PrintedDate, UnprovenBuild, JointDoubt {
    /** How it stands by itself, without looking ahead. */
    MarkState state();

    /**
     * What it is held against, as text: the same for one thing while the figures move on, and another for each rule, limit,
     * written hold, build or calibration.
     */
    default String against() {
        return fold(
                held -> held.rule() == null
                        ? held.cause().id().text()
                        : held.cause().id().text() + "-" + held.rule().id().text(),
                use -> use.limit().id().text(),
                use -> use.limit().id().text(),
                date -> "date",
                build -> build.build().id().text(),
                doubt -> doubt.calibration().id().text());
    }

    /** One answer for each kind of reason. */
    default <T> T fold(
            Function<HeldBy, T> held,
            Function<LimitUse, T> limit,
            Function<ReadingUse, T> reading,
            Function<PrintedDate, T> date,
            Function<UnprovenBuild, T> unproven,
            Function<JointDoubt, T> doubt) {
        if (this instanceof HeldBy by) {
            return held.apply(by);
        }
        if (this instanceof LimitUse use) {
            return limit.apply(use);
        }
        if (this instanceof ReadingUse use) {
            return reading.apply(use);
        }
        if (this instanceof UnprovenBuild build) {
            return unproven.apply(build);
        }
        if (this instanceof JointDoubt joints) {
            return doubt.apply(joints);
        }
        return date.apply((PrintedDate) this);
    }
}
