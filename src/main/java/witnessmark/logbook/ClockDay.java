package witnessmark.logbook;

import java.time.Instant;
import java.time.InstantSource;
import java.time.LocalDate;
import witnessmark.logbook.port.Logbook;
import witnessmark.logbook.port.Today;

/** Today by the wall clock, in the team's zone. */
public record ClockDay(InstantSource clock, Logbook logbook) implements Today {
    @Override
    public LocalDate day() {
        return LocalDate.ofInstant(now(), Desk.zoneOf(logbook.facts()));
    }

    @Override
    public Instant now() {
        return clock.instant();
    }
}
