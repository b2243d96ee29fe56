package witnessmark.logbook.faces;

import java.time.LocalDate;
import org.jspecify.annotations.Nullable;
import witnessmark.quantity.Moment;

/**
 * What the printed page of a face is worded from.
 *
 * @param page the face
 * @param look the look in sight, or null where there is none
 * @param over the look laid over it, or null
 * @param logbook whose it is
 * @param day the day looked at
 * @param printed the moment it is printed
 */
public record FaceSheetFacts(
        FacePage page,
        @Nullable LookLine look,
        @Nullable LookLine over,
        String logbook,
        LocalDate day,
        Moment printed) {}
