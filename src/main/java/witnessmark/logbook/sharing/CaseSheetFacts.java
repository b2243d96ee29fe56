package witnessmark.logbook.sharing;

import java.util.List;
import witnessmark.domain.Photo;
import witnessmark.logbook.View;
import witnessmark.logbook.money.IncidentPage;
import witnessmark.logbook.money.LifeThen;
import witnessmark.logbook.proof.CaseSeen;
import witnessmark.quantity.Moment;

/**
 * What the case sheet of an incident is made of.
 *
 * @param view the logbook as of the day looked at
 * @param page the incident
 * @param ran what its parts had run by then, in their order
 * @param seen its investigation
 * @param photos pictures that say nothing but themselves; empty where none are wanted
 * @param undrawn how many photos were wanted and could not be drawn
 * @param words whether what people typed stands on it
 * @param printed when
 */
public record CaseSheetFacts(
        View view,
        IncidentPage page,
        List<LifeThen.Ran> ran,
        CaseSeen seen,
        List<Picture> photos,
        int undrawn,
        boolean words,
        Moment printed) {
    public CaseSheetFacts {
        ran = List.copyOf(ran);
        photos = List.copyOf(photos);
    }

    /**
     * A photo on paper.
     *
     * @param photo what it is of
     * @param jpeg drawn anew
     */
    @SuppressWarnings("ArrayRecordComponent") // made once and put on the paper
    public record Picture(Photo photo, byte[] jpeg) {}
}
