package witnessmark.domain;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.Stream;

/** All entries of one kind of fact, in the order they were first written; immutable. */
public final class Table<F extends Fact> {
    private final List<Entry<F>> entries;
    private final Map<Id<F>, Integer> places;

    Table(Collection<Entry<F>> entries) {
        this.entries = new ArrayList<>(entries);
        this.places = new HashMap<>(entries.size() * 2);
        for (int i = 0; i < this.entries.size(); i++) {
            if (places.put(this.entries.get(i).id(), i) != null) {
                throw new IllegalArgumentException(
                        "two entries with the id " + this.entries.get(i).id());
            }
        }
    }

    private Table(List<Entry<F>> entries, Map<Id<F>, Integer> places) {
        this.entries = entries;
        this.places = places;
    }

    /** The same table with these entries added, or put in place of those with the same id. */
    Table<F> with(Collection<Entry<F>> changed) {
        List<Entry<F>> next = new ArrayList<>(entries.size() + changed.size());
        next.addAll(entries);
        Map<Id<F>, Integer> nextPlaces = places;
        for (Entry<F> entry : changed) {
            Integer place = nextPlaces.get(entry.id());
            if (place != null) {
                next.set(place, entry);
                continue;
            }
            if (nextPlaces == places) {
                nextPlaces = new HashMap<>(places);
            }
            nextPlaces.put(entry.id(), next.size());
            next.add(entry);
        }
        return new Table<>(next, nextPlaces);
    }

    /** Every entry, whatever its standing. */
    public List<Entry<F>> all() {
        return java.util.Collections.unmodifiableList(entries);
    }

    /** The entries that count. */
    public Stream<Entry<F>> inForce() {
        return entries.stream().filter(Entry::inForce);
    }

    /** The entries that count and whose fact is as asked. */
    public List<Entry<F>> where(Predicate<F> asked) {
        return inForce().filter(entry -> asked.test(entry.fact())).toList();
    }

    public Optional<Entry<F>> find(Id<F> id) {
        Integer place = places.get(id);
        return place == null ? Optional.empty() : Optional.of(entries.get(place));
    }

    /**
     * The fact with this id, whatever its standing.
     *
     * @throws IllegalArgumentException if there is none: the store lets no reference dangle
     */
    public F get(Id<F> id) {
        Integer place = places.get(id);
        if (place == null) {
            throw new IllegalArgumentException("no entry with the id " + id.text());
        }
        return entries.get(place).fact();
    }

    /** The entry in force that people know by this word, letter case, spaces and dashes aside. */
    public Optional<Entry<F>> named(String word) {
        String wanted = plain(word);
        return inForce()
                .filter(entry -> {
                    String known = entry.fact().knownAs();
                    return known != null && plain(known).equals(wanted);
                })
                .findFirst();
    }

    public int size() {
        return entries.size();
    }

    private static String plain(String word) {
        return word.replaceAll("[\\s\\-]", "").toLowerCase(java.util.Locale.ROOT);
    }
}
