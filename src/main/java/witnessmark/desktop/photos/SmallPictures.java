package witnessmark.desktop.photos;

import java.awt.image.BufferedImage;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import witnessmark.domain.Photo;
import witnessmark.logbook.port.Pixels;
import witnessmark.outcome.Outcome;
import witnessmark.outcome.ProblemKind;

/**
 * The small pictures in sight: made off the event thread when they are first painted, the latest of them kept. Event thread
 * only.
 */
final class SmallPictures {
    private static final Logger LOG = LoggerFactory.getLogger(SmallPictures.class);

    /** About 300 kB each. */
    private static final int KEPT = 80;

    private final PhotosContext context;
    private int most = KEPT;
    private final Set<String> asked = new HashSet<>();
    private final Map<String, Small> kept = new LinkedHashMap<>(16, 0.75f, true) {
        private static final long serialVersionUID = 1;

        @Override
        protected boolean removeEldestEntry(Map.Entry<String, Small> eldest) {
            return size() > most;
        }
    };

    /**
     * What there is to be painted.
     *
     * @param image null where it cannot be drawn
     * @param why a few words for why not; empty where it can
     */
    record Small(@Nullable BufferedImage image, String why) {}

    SmallPictures(PhotosContext context) {
        this.context = context;
    }

    /** So many are in sight at a time: they must not drive each other out, or they are made for ever. */
    void inSight(int count) {
        most = Math.max(KEPT, count);
    }

    /** The picture, if it is there; else it is asked for, and the listener told when it is. */
    Optional<Small> of(Photo photo, Runnable listener) {
        Small there = kept.get(photo.content());
        if (there == null && asked.add(photo.content())) {
            context.tools()
                    .tasks()
                    .run(
                            context.texts().get("photos.reading"),
                            () -> context.book().logbook().photos().small(photo),
                            small -> {
                                asked.remove(photo.content());
                                kept.put(photo.content(), small(small));
                                listener.run();
                            },
                            failure -> {
                                LOG.error("a small picture could not be made", failure);
                                asked.remove(photo.content());
                                kept.put(
                                        photo.content(),
                                        new Small(null, context.texts().get("photos.none.drawn")));
                                listener.run();
                            });
        }
        return Optional.ofNullable(there);
    }

    /** What is missing may be there by now. */
    void lookAgain() {
        kept.values().removeIf(small -> small.image() == null);
    }

    private Small small(Outcome<Pixels> drawn) {
        return drawn.didWork()
                ? new Small(image(drawn.orThrow()), "")
                : new Small(
                        null, context.texts().get(key(drawn.problems().get(0).kind())));
    }

    private static String key(ProblemKind kind) {
        return switch (kind) {
            case PHOTO_MISSING -> "photos.none.missing";
            case PHOTO_CHANGED -> "photos.none.changed";
            default -> "photos.none.drawn";
        };
    }

    /** The pixels as the window draws them. */
    static BufferedImage image(Pixels pixels) {
        BufferedImage image = new BufferedImage(pixels.width(), pixels.height(), BufferedImage.TYPE_INT_RGB);
        image.setRGB(0, 0, pixels.width(), pixels.height(), pixels.rgb(), 0, pixels.width());
        return image;
    }
}
