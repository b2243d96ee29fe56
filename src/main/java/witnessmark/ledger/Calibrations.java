package witnessmark.ledger;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.Calibration;
import witnessmark.domain.Entry;
import witnessmark.domain.Facts;
import witnessmark.domain.Id;
import witnessmark.domain.Joint;
import witnessmark.domain.Tool;
import witnessmark.domain.ToolKind;
import witnessmark.ledger.result.TightenedWith;

/** Which tools were held against a standard when, and what they tightened. */
public final class Calibrations {
    /**
     * How far a torque wrench may be off, in hundredths of a percent: ISO 6789-1 lets most of those above 10 N·m deviate
     * by 4 %.
     */
    public static final int WRENCH_TOLERANCE = 400;

    private Calibrations() {}

    /** The last calibration of a tool by the end of a day. */
    public static Optional<Entry<Calibration>> last(Facts facts, Id<Tool> tool, LocalDate day) {
        return facts
                .of(Calibration.class)
                .where(each -> each.tool().equals(tool) && !each.day().isAfter(day))
                .stream()
                .max(Comparator.comparing(entry -> entry.fact().day()));
    }

    /** The day its last calibration was due again, when that is past: it holds through the day it is due. */
    public static Optional<LocalDate> overdue(Facts facts, Id<Tool> tool, LocalDate day) {
        return last(facts, tool, day).map(entry -> entry.fact().due()).filter(day::isAfter);
    }

    /** What it tightened, in order. */
    public static List<Entry<Joint>> tightened(Facts facts, Id<Tool> tool) {
        return facts.of(Joint.class).where(joint -> tool.equals(joint.tool())).stream()
                .sorted(Comparator.comparingLong(entry -> entry.fact().at().epochMillis()))
                .toList();
    }

    /** What it tightened after its calibration before this one and up to this one. */
    public static TightenedWith tightenedBefore(Facts facts, Entry<Calibration> calibration) {
        return tightenedBefore(
                facts, calibration.fact().tool(), calibration.fact().day());
    }

    /** The same up to a day on which it is calibrated, or taken out of use, or neither. */
    public static TightenedWith tightenedBefore(Facts facts, Id<Tool> tool, LocalDate day) {
        LocalDate since = last(facts, tool, day.minusDays(1))
                .map(last -> last.fact().day())
                .orElse(null);
        return new TightenedWith(
                since,
                tightened(facts, tool).stream()
                        .filter(joint ->
                                (since == null || joint.fact().at().day().isAfter(since))
                                        && !joint.fact().at().day().isAfter(day))
                        .toList());
    }

    /** Whether it found a torque wrench further off than it may be; of other tools no bound is known. */
    public static boolean isOutside(Facts facts, Calibration calibration) {
        return facts.of(Tool.class)
                .find(calibration.tool())
                .filter(tool -> isOutside(tool.fact(), calibration.asFound()))
                .isPresent();
    }

    /** The same for an error as found, in hundredths of a percent. */
    public static boolean isOutside(Tool tool, @Nullable Integer asFound) {
        return tool.kind() == ToolKind.TORQUE_WRENCH && asFound != null && Math.abs(asFound) > WRENCH_TOLERANCE;
    }
}
