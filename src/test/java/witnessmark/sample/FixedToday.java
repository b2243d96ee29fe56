package witnessmark.sample;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import witnessmark.logbook.port.Today;

/** A day that does not move. */
public record FixedToday(LocalDate day) implements Today {
    @Override
    public Instant now() {
        return day.atTime(18, 0).toInstant(ZoneOffset.UTC);
    }
}
