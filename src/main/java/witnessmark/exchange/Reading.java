package witnessmark.exchange;

import java.time.ZoneId;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.UUID;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.Entry;
import witnessmark.domain.Event;
import witnessmark.domain.Fact;
import witnessmark.domain.Facts;
import witnessmark.domain.Id;
import witnessmark.domain.Team;
import witnessmark.logbook.port.RowsRead;

/** How far the reading of one folder has come: the kinds read so far over what the logbook holds. */
final class Reading {
    private final Facts known;
    private final Supplier<UUID> newId;
    private final RowsRead told;
    private final Problems problems = new Problems();
    private final LeftOut leftOut = new LeftOut();
    private final Map<Class<? extends Fact>, NameIndex> names = new HashMap<>();
    private final Map<Class<? extends Fact>, Set<UUID>> ofFolder = new HashMap<>();
    private final List<Entry<?>> toWrite = new ArrayList<>();
    private Facts soFar;
    private long bytesLeft = Limits.BYTES;
    private int rowsLeft = Limits.ROWS;

    Reading(Facts known, Supplier<UUID> newId, RowsRead told) {
        this.known = known;
        this.soFar = known;
        this.newId = newId;
        this.told = told;
    }

    Facts known() {
        return known;
    }

    /** What the logbook holds, with the kinds read so far put over it. */
    Facts soFar() {
        return soFar;
    }

    Problems problems() {
        return problems;
    }

    LeftOut leftOut() {
        return leftOut;
    }

    /** Who is told about the rows. */
    RowsRead told() {
        return told;
    }

    UUID newId() {
        return newId.get();
    }

    /** The entries to write, each after those it refers to. */
    List<Entry<?>> toWrite() {
        return toWrite;
    }

    long bytesLeft() {
        return bytesLeft;
    }

    void tookBytes(long bytes) {
        bytesLeft -= bytes;
    }

    /** Takes one more row, unless there are too many. */
    boolean takeRow() {
        return rowsLeft-- > 0;
    }

    /**
     * A kind has been read to its end.
     *
     * @param ids the rows of the folder that are taken, also those the logbook has already
     * @param entries those of them that are to be written
     */
    void settled(Class<? extends Fact> kind, Set<UUID> ids, List<? extends Entry<?>> entries) {
        ofFolder.put(kind, ids);
        toWrite.addAll(entries);
        if (!entries.isEmpty()) {
            soFar = soFar.with(entries);
        }
    }

    /** The rows of a kind that has been read, folder and logbook together. */
    NameIndex names(Class<? extends Fact> kind) {
        NameIndex index = names.get(kind);
        if (index == null) {
            index = index(kind);
            names.put(kind, index);
        }
        return index;
    }

    private <F extends Fact> NameIndex index(Class<F> kind) {
        NameIndex index = new NameIndex();
        Set<UUID> own = ofFolder.getOrDefault(kind, new HashSet<>());
        for (Entry<F> entry : soFar.of(kind).all()) {
            UUID id = entry.id().value();
            index.add(id, WholeName.of(entry.fact(), soFar), entry.inForce(), own.contains(id));
        }
        return index;
    }

    /** The zone whose days the team counts in, or null when no team is known. */
    @Nullable
    ZoneId teamZone() {
        return soFar.of(Team.class)
                .inForce()
                .findFirst()
                .map(team -> team.fact().zone())
                .orElse(null);
    }

    /** The zone of an event's clocks; the team's when the event is null. */
    @Nullable
    ZoneId zoneOf(@Nullable Id<Event> event) {
        return event == null
                ? teamZone()
                : soFar.of(Event.class)
                        .find(event)
                        .map(found -> found.fact().zone())
                        .orElse(null);
    }
}
