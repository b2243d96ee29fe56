package witnessmark.logbook.port;

import java.time.LocalDateTime;
import java.time.ZoneOffset;
import org.jspecify.annotations.Nullable;

/**
 * A picture file as it lies there.
 *
 * @param name of the file
 * @param bytes to be kept, with their SHA-256
 * @param media what it is: {@code image/jpeg}
 * @param width pixels as stored, or null where it does not say
 * @param height pixels as stored, or null where it does not say
 * @param taken when, by the camera's clock, or null
 * @param offset what that clock is ahead of UTC, or null
 */
public record PhotoFile(
        String name,
        Kept bytes,
        String media,
        @Nullable Integer width,
        @Nullable Integer height,
        @Nullable LocalDateTime taken,
        @Nullable ZoneOffset offset) {}
