package witnessmark.domain;

/**
 * Two incidents that belong together without one being the other again.
 *
 * @param incident the one
 * @param other the other
 * @param why what joins them
 * @param by who says so
 */
public record IncidentLink(Id<Incident> incident, Id<Incident> other, String why, String by) implements Fact {
    public IncidentLink {
        if (incident.equals(other)) {
            throw new IllegalArgumentException("an incident is not linked to itself");
        }
        if (why.isBlank()) {
            throw new IllegalArgumentException("a link says what joins two incidents");
        }
    }
}
