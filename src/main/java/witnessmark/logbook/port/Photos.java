package witnessmark.logbook.port;

import java.nio.file.Path;
import java.util.List;
import witnessmark.domain.Facts;
import witnessmark.domain.Photo;
import witnessmark.outcome.Outcome;
import witnessmark.outcome.Problem;

/**
 * The photos of one logbook: their bytes lie in a folder beside it, each under its SHA-256, as they came. They are put there
 * by the change that names them ({@link Change#kept}). Everything blocks and belongs off the event thread.
 */
public interface Photos {
    /** Pixels of the longer side of a small picture. */
    int SMALL = 320;

    /**
     * Looks at a file somebody wants to keep; nothing of it is written.
     *
     * @return what it is; worked-except with what is to be known of it; did-not when it is no picture that is kept
     */
    Outcome<PhotoFile> look(Path file);

    /** Looks at a file and puts its bytes there, whether or not a record names them yet. */
    Outcome<PhotoFile> take(Path file);

    /** A small picture of it, made the first time it is asked for. */
    Outcome<Pixels> small(Photo photo);

    /**
     * Its picture, upright.
     *
     * @param longest of its longer side at most, pixels
     * @return did-not when its bytes are not there, are not what they were, or cannot be drawn
     */
    Outcome<Pixels> drawn(Photo photo, int longest);

    /** The same as a JPEG file that says nothing but the picture: no place, no camera, no time. */
    Outcome<byte[]> forPaper(Photo photo, int longest);

    /**
     * Its own bytes without where it was taken and whatever else is written beside the picture, which stays as it is to the
     * last bit.
     *
     * @return did-not for what is neither JPEG nor PNG
     */
    Outcome<byte[]> withoutPlace(Photo photo);

    /**
     * Reads the bytes of every photo that facts name, as far as they are in force.
     *
     * @return one problem for each that is missing or is not what it was; empty when all are as they came
     */
    List<Problem> check(Facts facts);

    /** Where they lie. */
    Path folder();
}
