package witnessmark.logbook.photos;

import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.Engine;
import witnessmark.domain.Entry;
import witnessmark.domain.Finding;
import witnessmark.domain.Id;
import witnessmark.domain.Incident;
import witnessmark.domain.Part;
import witnessmark.domain.Photo;
import witnessmark.logbook.View;
import witnessmark.quantity.Moment;

/**
 * What photos are looked at for: one of the four, the others null.
 *
 * @param incident those of the incident and of its findings
 * @param engine those of the engine
 * @param part those of the part
 * @param finding those of one finding
 */
public record PhotosOf(
        @Nullable Id<Incident> incident,
        @Nullable Id<Engine> engine,
        @Nullable Id<Part> part,
        @Nullable Id<Finding> finding) {
    public static PhotosOf incident(Id<Incident> id) {
        return new PhotosOf(id, null, null, null);
    }

    public static PhotosOf engine(Id<Engine> id) {
        return new PhotosOf(null, id, null, null);
    }

    public static PhotosOf part(Id<Part> id) {
        return new PhotosOf(null, null, id, null);
    }

    public static PhotosOf finding(Id<Finding> id) {
        return new PhotosOf(null, null, null, id);
    }

    /** As of the day looked at, in the order they were taken; those that do not say when, by when they were put in. */
    public List<Entry<Photo>> in(View view) {
        return view.facts().of(Photo.class).where(this::isOf).stream()
                .filter(photo -> view.ledger().asOf().counts(photo.fact().at()))
                .filter(photo -> isOfIncident(view, photo.fact()))
                .sorted(Comparator.comparing((Entry<Photo> photo) -> moment(photo.fact()))
                        .thenComparing(photo -> photo.id().text()))
                .toList();
    }

    /** Whether a photo can be one of them, by what it names itself. */
    private boolean isOf(Photo photo) {
        return incident != null
                || engine != null && engine.equals(photo.engine())
                || part != null && part.equals(photo.part())
                || finding != null && finding.equals(photo.finding());
    }

    private boolean isOfIncident(View view, Photo photo) {
        if (incident == null || incident.equals(photo.incident())) {
            return true;
        }
        Id<Finding> shows = photo.finding();
        return shows != null
                && view.facts()
                        .of(Finding.class)
                        .find(shows)
                        .filter(found -> Objects.equals(incident, found.fact().incident()))
                        .isPresent();
    }

    private static Moment moment(Photo photo) {
        return photo.taken() == null ? photo.at() : photo.taken();
    }
}
