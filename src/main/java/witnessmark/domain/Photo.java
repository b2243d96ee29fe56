package witnessmark.domain;

import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import witnessmark.quantity.Moment;

/**
 * A picture somebody took. Its bytes stay as they were, under their digest.
 *
 * @param name the name of the file
 * @param content SHA-256 of its bytes, 64 hexadecimal digits
 * @param size of the file, bytes, 1 or more
 * @param media what it is: {@code image/jpeg}
 * @param width pixels as stored, 1 or more, or null where it cannot be read
 * @param height pixels as stored, 1 or more, or null where it cannot be read
 * @param taken when the camera says it was taken, or null
 * @param incident of which incident, or null
 * @param finding of which finding, or null
 * @param engine of which engine, or null
 * @param part of which part, or null
 * @param reading of which reading, or null
 * @param number of which cylinder or main bearing, counted from 1; null for none
 * @param caption what it shows
 * @param at when it was put in the logbook
 * @param by by whom
 */
public record Photo(
        String name,
        String content,
        long size,
        String media,
        @Nullable Integer width,
        @Nullable Integer height,
        @Nullable Moment taken,
        @Nullable Id<Incident> incident,
        @Nullable Id<Finding> finding,
        @Nullable Id<Engine> engine,
        @Nullable Id<Part> part,
        @Nullable Id<Reading> reading,
        @Nullable Integer number,
        String caption,
        Moment at,
        String by)
        implements Fact {
    private static final Pattern DIGEST = Pattern.compile("[0-9a-f]{64}");

    public Photo {
        if (size < 1 || width != null && width < 1 || height != null && height < 1) {
            throw new IllegalArgumentException("a picture has something in it");
        }
        if ((width == null) != (height == null)) {
            throw new IllegalArgumentException("a picture has both its sides or neither");
        }
        if (!DIGEST.matcher(content).matches()) {
            throw new IllegalArgumentException("a SHA-256 has 64 hexadecimal digits");
        }
        if (number != null && number < 1) {
            throw new IllegalArgumentException("cylinders and bearings are counted from 1");
        }
    }

    @Override
    public Moment happened() {
        return at;
    }

    /** The same photo with another caption. */
    public Photo showing(String other) {
        return new Photo(
                name, content, size, media, width, height, taken, incident, finding, engine, part, reading, number,
                other, at, by);
    }

    @Override
    public String beside() {
        return content;
    }
}
