package witnessmark.ledger;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.Entry;
import witnessmark.domain.Fact;
import witnessmark.domain.Facts;
import witnessmark.domain.Fitment;
import witnessmark.domain.Id;
import witnessmark.domain.Part;
import witnessmark.domain.Quarantine;
import witnessmark.domain.Scrapping;
import witnessmark.domain.SentOut;
import witnessmark.domain.SetMember;
import witnessmark.ledger.result.Where;
import witnessmark.quantity.Moment;

/**
 * Where parts are, found by living through the history: one thing after another up to the last moment, each part with
 * what lies upon it just then. It asks no stretch of time whether it covers a moment, and shares no code with the
 * ledger.
 */
final class PlainShelf {
    private final Map<Id<Part>, Lying> lying = new LinkedHashMap<>();
    private final List<Happens> all = new ArrayList<>();

    /** At one moment what ends goes first, then sets are split, then things begin. */
    private enum Turn {
        ENDS,
        SPLITS,
        BEGINS
    }

    private record Happens(long at, Turn turn, String id, Runnable what) {}

    /** What lies upon a part just now; what lies upon a member of it under the member's mark. */
    private static final class Lying {
        final List<Entry<Fitment>> fitments = new ArrayList<>();
        final Map<Entry<?>, String> asides = new LinkedHashMap<>();
        final Set<String> members = new HashSet<>();
        final Set<String> gone = new HashSet<>();
        boolean there = true;
        boolean wasSet;

        @Nullable
        Long split;

        @Nullable
        Long free;
    }

    /** What is said of a part. */
    record Said(
            Where.State state,
            @Nullable Long since,
            @Nullable Id<Fitment> fitment,
            Set<Id<?>> asides,
            Set<Id<?>> members) {}

    PlainShelf(Facts facts, AsOf asOf) {
        long last = asOf.day().plusDays(1).atStartOfDay(asOf.zone()).toInstant().toEpochMilli() - 1;
        each(facts, Part.class, part -> lying.put(part.id(), new Lying()));
        each(facts, SetMember.class, member -> {
            lying.get(member.fact().set()).members.add(member.fact().mark());
            lying.get(member.fact().set()).wasSet = true;
        });
        each(facts, Part.class, part -> {
            if (part.fact().splitAt() != null) {
                lying.get(part.id()).there = false;
                happens(part.fact().splitAt(), Turn.SPLITS, part, () -> split(part));
            }
        });
        each(facts, Fitment.class, this::fitment);
        each(facts, Quarantine.class, entry -> {
            Quarantine fact = entry.fact();
            aside(entry, fact.part(), fact.member(), fact.from(), fact.to());
        });
        each(facts, SentOut.class, entry -> {
            SentOut fact = entry.fact();
            if (fact.part() != null) {
                aside(entry, fact.part(), "", fact.from(), fact.back());
            }
        });
        each(facts, Scrapping.class, entry -> {
            Scrapping fact = entry.fact();
            aside(entry, fact.part(), fact.member(), fact.at(), null);
        });
        all.sort(Comparator.comparingLong(Happens::at)
                .thenComparing(Happens::turn)
                .thenComparing(Happens::id));
        for (Happens each : all) {
            if (each.at() <= last) {
                each.what().run();
            }
        }
    }

    /** The parts that are there, members not split off aside. */
    Set<Id<Part>> parts() {
        Set<Id<Part>> there = new HashSet<>();
        lying.forEach((part, upon) -> {
            if (upon.there) {
                there.add(part);
            }
        });
        return there;
    }

    Said of(Id<Part> part) {
        Lying upon = lying.get(part);
        Set<Id<?>> asides = new HashSet<>();
        Set<Id<?>> members = new HashSet<>();
        upon.asides.forEach((entry, member) -> {
            if (member.isEmpty()) {
                asides.add(entry.id());
            } else if (!upon.gone.contains(member)) {
                members.add(entry.id());
            }
        });
        Entry<Fitment> fitment = upon.fitments.isEmpty() ? null : upon.fitments.get(upon.fitments.size() - 1);
        Said said = new Said(Where.State.SPARE, upon.free, fitment == null ? null : fitment.id(), asides, members);
        said = as(said, Where.State.QUARANTINE, everyMember(upon, Fact.class));
        said = as(said, Where.State.QUARANTINE, first(upon, Quarantine.class));
        said = as(said, Where.State.AWAY, latest(upon, SentOut.class));
        said = as(said, Where.State.SCRAPPED, everyMember(upon, Scrapping.class));
        said = as(said, Where.State.SPLIT, upon.wasSet && upon.members.isEmpty() ? upon.split : null);
        said = as(said, Where.State.FITTED, fitment == null ? null : begun(fitment));
        return as(said, Where.State.SCRAPPED, first(upon, Scrapping.class));
    }

    private static Said as(Said before, Where.State state, @Nullable Long since) {
        return since == null ? before : new Said(state, since, before.fitment(), before.asides(), before.members());
    }

    private static @Nullable Long first(Lying upon, Class<? extends Fact> kind) {
        Long first = null;
        for (Map.Entry<Entry<?>, String> aside : upon.asides.entrySet()) {
            if (kind.isInstance(aside.getKey().fact()) && aside.getValue().isEmpty()) {
                first = first == null ? begun(aside.getKey()) : Long.valueOf(Math.min(first, begun(aside.getKey())));
            }
        }
        return first;
    }

    private static @Nullable Long latest(Lying upon, Class<? extends Fact> kind) {
        Long latest = null;
        for (Map.Entry<Entry<?>, String> aside : upon.asides.entrySet()) {
            if (kind.isInstance(aside.getKey().fact()) && aside.getValue().isEmpty()) {
                latest = latest == null ? begun(aside.getKey()) : Long.valueOf(Math.max(latest, begun(aside.getKey())));
            }
        }
        return latest;
    }

    /** When the last member left of a set came to have something of a kind upon it; null while one has not. */
    private static @Nullable Long everyMember(Lying upon, Class<? extends Fact> kind) {
        Map<String, Long> since = new HashMap<>();
        upon.asides.forEach((entry, member) -> {
            if (kind.isInstance(entry.fact())) {
                since.merge(member, begun(entry), Math::min);
            }
        });
        Long last = null;
        for (String member : upon.members) {
            if (!since.containsKey(member)) {
                return null;
            }
            last = last == null ? since.get(member) : Long.valueOf(Math.max(last, since.get(member)));
        }
        return last;
    }

    private void fitment(Entry<Fitment> entry) {
        Lying upon = lying.get(entry.fact().part());
        happens(entry.fact().from(), Turn.BEGINS, entry, () -> upon.fitments.add(entry));
        happens(entry.fact().to(), Turn.ENDS, entry, () -> {
            upon.fitments.remove(entry);
            upon.free = entry.fact().to().epochMillis();
        });
    }

    private void aside(Entry<?> entry, Id<Part> part, String member, Moment from, @Nullable Moment to) {
        happens(from, Turn.BEGINS, entry, () -> lying.get(part).asides.put(entry, member));
        happens(to, Turn.ENDS, entry, () -> {
            for (Lying upon : lying.values()) {
                String of = upon.asides.remove(entry);
                if (of != null && of.isEmpty()) {
                    upon.free = to.epochMillis();
                }
            }
        });
    }

    /** A member takes with it what lies upon the set, or upon itself within the set. */
    private void split(Entry<Part> part) {
        Lying set = lying.get(part.fact().ofSet());
        Lying member = lying.get(part.id());
        String mark = part.fact().memberMark();
        long at = part.fact().splitAt().epochMillis();
        set.asides.forEach((entry, of) -> {
            if (of.isEmpty() || of.equals(mark)) {
                member.asides.put(entry, "");
            }
        });
        set.members.remove(mark);
        set.gone.add(mark);
        set.split = at;
        member.there = true;
        member.free = at;
    }

    private void happens(@Nullable Moment at, Turn turn, Entry<?> entry, Runnable what) {
        if (at != null) {
            all.add(new Happens(at.epochMillis(), turn, entry.id().value().toString(), what));
        }
    }

    private static long begun(Entry<?> entry) {
        return entry.fact().happened().epochMillis();
    }

    private static <F extends Fact> void each(Facts facts, Class<F> kind, java.util.function.Consumer<Entry<F>> what) {
        facts.of(kind).inForce().forEach(what);
    }
}
