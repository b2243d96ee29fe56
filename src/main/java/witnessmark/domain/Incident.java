package witnessmark.domain;

import org.jspecify.annotations.Nullable;
import witnessmark.quantity.Moment;

/**
 * Something that broke, stopped a car, or was found before it could.
 *
 * @param mark the short name it goes by; unique
 * @param title what it was, in a few words
 * @param at when it happened, or was found
 * @param found how it showed itself
 * @param run on which run, or null
 * @param event at which event, or null
 * @param car on which car, or null
 * @param engine on which engine, or null
 * @param severity how bad it was
 * @param seen what was seen and heard, in words
 * @param before the incident this looks like again, or null
 * @param by who reported it
 * @param closed when it was closed, or null while it is open
 * @param closedBy who closed it; empty while it is open
 * @param closedBecause with what words; empty while it is open
 * @param note anything else
 */
public record Incident(
        String mark,
        String title,
        Moment at,
        FoundWhen found,
        @Nullable Id<Run> run,
        @Nullable Id<Event> event,
        @Nullable Id<Car> car,
        @Nullable Id<Engine> engine,
        Severity severity,
        String seen,
        @Nullable Id<Incident> before,
        String by,
        @Nullable Moment closed,
        String closedBy,
        String closedBecause,
        String note)
        implements Fact {
    public Incident {
        if (title.isBlank()) {
            throw new IllegalArgumentException("an incident says what it was");
        }
        if (closed != null && closed.isBefore(at)) {
            throw new IllegalArgumentException("an incident is closed after it happened");
        }
    }

    /** Whether it is not closed by then. */
    public boolean openAt(Moment then) {
        return closed == null || closed.isAfter(then);
    }

    @Override
    public String knownAs() {
        return mark;
    }

    @Override
    public Moment happened() {
        return at;
    }
}
