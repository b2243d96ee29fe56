package witnessmark.ledger;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import witnessmark.domain.Calibration;
import witnessmark.domain.Entry;
import witnessmark.domain.Facts;
import witnessmark.domain.Id;
import witnessmark.domain.Joint;
import witnessmark.domain.Tool;

/** Which tools were held against a standard when, and what they tightened. */
public final class Calibrations {
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
}
