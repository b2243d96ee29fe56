package witnessmark.domain;

import java.time.LocalDate;
import org.jspecify.annotations.Nullable;

/**
 * A tool held against a standard.
 *
 * @param tool which tool
 * @param day when
 * @param by by whom
 * @param asFound error as found in hundredths of a percent, or null when not said: of a wrench what it gave less what was
 *     set, of a gauge what it read less the true value
 * @param due when it is due again, or null
 * @param note anything else
 */
public record Calibration(
        Id<Tool> tool,
        LocalDate day,
        String by,
        @Nullable Integer asFound,
        @Nullable LocalDate due,
        String note) implements Fact {
    public Calibration {
        if (due != null && due.isBefore(day)) {
            throw new IllegalArgumentException("a calibration is due again later");
        }
    }
}
