package witnessmark.store;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import witnessmark.logbook.port.Kept;
import witnessmark.outcome.Problem;
import witnessmark.outcome.ProblemKind;
import witnessmark.picture.Media;
import witnessmark.picture.Picture;

/** What is to be said of a picture file before it is kept. */
final class PhotoWords {
    private PhotoWords() {}

    /** Why it is not kept; empty when it is. */
    static Optional<Problem> refused(String name, long size, Picture picture) {
        if (picture.media() == Media.SVG) {
            return Optional.of(Problem.of(ProblemKind.PHOTO_IS_DRAWING, name));
        }
        if (!picture.media().isKept()) {
            return Optional.of(Problem.of(ProblemKind.PHOTO_NO_PICTURE, name));
        }
        if (size > Kept.MOST) {
            return Optional.of(Problem.of(ProblemKind.PHOTO_TOO_LARGE, name, Kept.MOST >> 20));
        }
        return picture.isTooLarge()
                ? Optional.of(Problem.of(ProblemKind.PHOTO_TOO_MANY_PIXELS, name, picture.width(), picture.height()))
                : Optional.empty();
    }

    /** What people ought to know of one that is kept. */
    static List<Problem> toBeKnown(String name, Picture picture) {
        List<Problem> known = new ArrayList<>();
        if (picture.media() == Media.HEIC) {
            known.add(Problem.of(ProblemKind.PHOTO_HEIC, name));
        } else if (!picture.isDrawn()) {
            known.add(Problem.of(
                    ProblemKind.PHOTO_WITHOUT_PICTURE, name, picture.media().mime()));
        }
        if (!picture.whole()) {
            known.add(Problem.of(ProblemKind.PHOTO_BREAKS_OFF, name));
        }
        if (picture.frames() > 1) {
            known.add(Problem.of(ProblemKind.PHOTO_MOVES, name, picture.frames()));
        }
        return known;
    }
}
