package witnessmark.logbook;

import java.nio.file.Path;
import java.time.Instant;
import java.time.InstantSource;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import witnessmark.logbook.port.Logbook;
import witnessmark.logbook.port.SecondPlace;
import witnessmark.logbook.port.Settings;
import witnessmark.outcome.Outcome;
import witnessmark.outcome.Problem;

/**
 * Keeps copies of a logbook in a second place that the team chose. Which place that is, and what the newest copy there
 * holds, is remembered for the logbook on this computer. {@link #place} and {@link #toAsk} may be called from any
 * thread; the rest takes as long as the place does.
 */
public final class CopyElsewhere {
    private final Logbook logbook;
    private final Settings settings;
    private final InstantSource clock;
    private final String key;

    /**
     * How things stand.
     *
     * @param place the second place; null when none was chosen
     * @param there whether it is there now
     * @param written when the newest copy was made there; null when none was
     * @param onlyHereSince the first saving that is on this computer only; null when the newest copy holds all
     * @param problems why no copy could be made, or what is wrong with the logbook
     * @param known what people ought to know of the place while it is there
     */
    public record Look(
            @Nullable Path place,
            boolean there,
            @Nullable Instant written,
            @Nullable Instant onlyHereSince,
            List<Problem> problems,
            List<Problem> known) {
        public Look {
            problems = List.copyOf(problems);
            known = List.copyOf(known);
        }
    }

    public CopyElsewhere(Logbook logbook, Settings settings, InstantSource clock) {
        this.logbook = logbook;
        this.settings = settings;
        this.clock = clock;
        this.key = "elsewhere." + logbook.identity();
    }

    /** The second place; empty when none was chosen. */
    public Optional<Path> place() {
        return settings.get(key + ".place").filter(path -> !path.isEmpty()).map(Path::of);
    }

    /** Whether nobody was asked for a place yet. It is asked for once. */
    public boolean toAsk() {
        return place().isEmpty()
                && settings.get(key + ".asked").isEmpty()
                && logbook.readOnly().isEmpty();
    }

    /** Somebody was asked. */
    public void asked() {
        settings.put(key + ".asked", "yes");
    }

    /** Makes a place the second place, with a first copy in it; where that cannot be, the one before stays. */
    public Outcome<Look> choose(Path place) {
        Outcome<SecondPlace.Made> begun = logbook.secondPlace().begin(place);
        if (begun.didWork()) {
            asked();
            settings.put(key + ".place", place.toAbsolutePath().normalize().toString());
            made(begun.orThrow());
        }
        return begun.map(made -> look(true, begun.problems()));
    }

    /** Makes no more copies there. What lies there stays. */
    public void stop() {
        settings.put(key + ".place", "");
        settings.put(key + ".holds", "");
        settings.put(key + ".written", "0");
    }

    /** Makes a copy when the place is there and the newest one lacks something. */
    public Look bring() {
        Optional<Path> place = place();
        if (place.isEmpty() || !logbook.secondPlace().isThere(place.get())) {
            return look(false, List.of());
        }
        boolean none = logbook.secondPlace().newest(place.get()).isEmpty();
        if (!none && logbook.secondPlace().firstWrittenAfter(holds()).isEmpty()) {
            return look(true, List.of());
        }
        Outcome<SecondPlace.Made> written = logbook.secondPlace().write(place.get());
        if (written.didWork()) {
            made(written.orThrow());
        }
        return look(true, written.problems());
    }

    private Look look(boolean there, List<Problem> problems) {
        Instant written = instant(".written");
        Optional<Instant> since = logbook.secondPlace().firstWrittenAfter(holds());
        return new Look(
                place().orElse(null),
                there,
                written.equals(Instant.EPOCH) ? null : written,
                since.orElse(null),
                problems,
                there ? place().map(logbook.secondPlace()::known).orElse(List.of()) : List.of());
    }

    private void made(SecondPlace.Made made) {
        settings.put(key + ".holds", made.holds());
        settings.put(key + ".written", Long.toString(clock.millis()));
    }

    private String holds() {
        return settings.get(key + ".holds").orElse("");
    }

    private Instant instant(String what) {
        String kept = settings.get(key + what).orElse("0");
        return Instant.ofEpochMilli(kept.matches("\\d{1,15}") ? Long.parseLong(kept) : 0);
    }
}
