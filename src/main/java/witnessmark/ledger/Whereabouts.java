package witnessmark.ledger;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.Entry;
import witnessmark.domain.Facts;
import witnessmark.domain.Fitment;
import witnessmark.domain.Id;
import witnessmark.domain.Part;
import witnessmark.domain.SentOut;
import witnessmark.domain.SetMember;
import witnessmark.domain.Table;
import witnessmark.ledger.result.Away;
import witnessmark.ledger.result.PutAside;
import witnessmark.ledger.result.Stay;
import witnessmark.ledger.result.Where;
import witnessmark.quantity.Moment;

/**
 * Where every part is as of the ledger's day, worked out from what happened to it and written down nowhere else.
 *
 * <p>What puts a whole set aside, or the member in question, goes on for a member that is split off meanwhile: splitting
 * decides nothing. Where entries contradict each other, being out of use outweighs being fitted, and that being put
 * aside.
 */
public final class Whereabouts {
    private static final Comparator<PutAside> OLDEST = Comparator.comparing(PutAside::from)
            .thenComparing(aside -> aside.entry().id().value());

    private final LifeLedger ledger;
    private final Table<Part> parts;
    private final Moment now;
    private final Asides asides;
    private final OutWithOthers out;
    private final Map<Id<Part>, Set<String>> members = new HashMap<>();
    private final Map<Id<Part>, Map<String, Moment>> splitOff = new HashMap<>();

    public Whereabouts(LifeLedger ledger) {
        Facts facts = ledger.facts();
        this.ledger = ledger;
        this.parts = facts.of(Part.class);
        this.now = ledger.asOf().last();
        this.asides = new Asides(facts);
        this.out = new OutWithOthers(facts, ledger.asOf());
        facts.of(SetMember.class)
                .inForce()
                .forEach(member -> members.computeIfAbsent(member.fact().set(), id -> new HashSet<>())
                        .add(member.fact().mark()));
        parts.inForce().forEach(part -> {
            Part fact = part.fact();
            if (fact.ofSet() != null && fact.memberMark() != null && isSplit(fact)) {
                splitOff.computeIfAbsent(fact.ofSet(), id -> new HashMap<>())
                        .merge(fact.memberMark(), splitAt(fact), Whereabouts::earlier);
            }
        });
    }

    /** Every part and set, in the order they were written; a member not yet split off on the day is none of them. */
    public List<Where> all() {
        return parts.inForce()
                .filter(part -> part.fact().splitAt() == null || isSplit(part.fact()))
                .map(this::of)
                .toList();
    }

    /** One part or set. */
    public Where of(Entry<Part> part) {
        List<PutAside> whole = whole(part);
        List<PutAside> ofMembers = ofMembers(part.id());
        Entry<Fitment> fitment = ledger.whereIs(part.id(), now).orElse(null);
        List<Stay> stays = ledger.stays(part.id());
        Stay before = stays.stream()
                .filter(stay -> stay.to() != null)
                .reduce((one, other) -> other)
                .orElse(null);
        Found found = found(part, whole, ofMembers, fitment, before);
        return new Where(part, found.state(), found.since(), fitment, whole, ofMembers, away(whole, fitment), before);
    }

    /** What is out with others on the day. */
    public OutWithOthers out() {
        return out;
    }

    /** In which way, and since when. */
    private record Found(Where.State state, @Nullable Moment since) {}

    private Found found(
            Entry<Part> part,
            List<PutAside> whole,
            List<PutAside> ofMembers,
            @Nullable Entry<Fitment> fitment,
            @Nullable Stay before) {
        PutAside scrapped = first(whole, PutAside.Kind.SCRAPPED);
        if (scrapped != null) {
            return new Found(Where.State.SCRAPPED, scrapped.from());
        }
        if (fitment != null) {
            return new Found(Where.State.FITTED, fitment.fact().from());
        }
        Set<String> left = left(part.id());
        if (left.isEmpty() && members.containsKey(part.id())) {
            return new Found(
                    Where.State.SPLIT,
                    splitOff.getOrDefault(part.id(), Map.of()).values().stream()
                            .max(Comparator.naturalOrder())
                            .orElse(null));
        }
        Moment noneLeft = allAside(left, only(ofMembers, PutAside.Kind.SCRAPPED));
        if (noneLeft != null) {
            return new Found(Where.State.SCRAPPED, noneLeft);
        }
        PutAside away = last(whole, PutAside.Kind.AWAY);
        if (away != null) {
            return new Found(Where.State.AWAY, away.from());
        }
        PutAside doubted = first(whole, PutAside.Kind.QUARANTINE);
        if (doubted != null) {
            return new Found(Where.State.QUARANTINE, doubted.from());
        }
        Moment noneFree = allAside(left, ofMembers);
        return noneFree != null
                ? new Found(Where.State.QUARANTINE, noneFree)
                : new Found(Where.State.SPARE, spareSince(part, before));
    }

    /** When the last of these members was put aside, or null while one of them is not. */
    private static @Nullable Moment allAside(Set<String> left, List<PutAside> aside) {
        Map<String, Moment> since = new HashMap<>();
        aside.forEach(each -> since.merge(each.member(), each.from(), Whereabouts::earlier));
        return left.isEmpty() || !since.keySet().containsAll(left)
                ? null
                : left.stream().map(since::get).max(Comparator.naturalOrder()).orElse(null);
    }

    /** When it last came off, came back, was let out or was split off; null when none of that is written down. */
    private @Nullable Moment spareSince(Entry<Part> part, @Nullable Stay before) {
        Part fact = part.fact();
        return Stream.concat(
                        Stream.of(before == null ? null : before.to(), fact.splitAt()),
                        carried(part).map(PutAside::to))
                .filter(moment -> moment != null && !moment.isAfter(now))
                .max(Comparator.naturalOrder())
                .orElse(null);
    }

    private List<PutAside> whole(Entry<Part> part) {
        return carried(part).filter(aside -> aside.lasts(now)).sorted(OLDEST).toList();
    }

    /** Whatever ever put a part aside, lasting or not: by itself, or with its set before it was split off. */
    private Stream<PutAside> carried(Entry<Part> part) {
        List<PutAside> all = new ArrayList<>();
        asides.of(part.id()).stream().filter(PutAside::whole).forEach(all::add);
        Set<Id<Part>> met = new HashSet<>(Set.of(part.id()));
        Part fact = part.fact();
        Moment until = null;
        while (fact.ofSet() != null && fact.splitAt() != null && met.add(fact.ofSet())) {
            Moment split = until == null ? fact.splitAt() : earlier(until, fact.splitAt());
            String mark = fact.memberMark();
            asides.of(fact.ofSet()).stream()
                    .filter(aside -> aside.whole() || aside.member().equals(mark))
                    .filter(aside -> aside.from().isBefore(split))
                    .filter(aside -> aside.to() == null || aside.to().isAfter(split))
                    .forEach(all::add);
            until = split;
            fact = parts.get(fact.ofSet());
        }
        return all.stream();
    }

    /** What puts members of a set aside on the day that are still in it. */
    private List<PutAside> ofMembers(Id<Part> set) {
        Map<String, Moment> gone = splitOff.getOrDefault(set, Map.of());
        return asides.of(set).stream()
                .filter(aside -> !aside.whole() && aside.lasts(now) && !gone.containsKey(aside.member()))
                .sorted(OLDEST)
                .toList();
    }

    private Set<String> left(Id<Part> set) {
        Set<String> left = new HashSet<>(members.getOrDefault(set, Set.of()));
        left.removeAll(splitOff.getOrDefault(set, Map.of()).keySet());
        return left;
    }

    private @Nullable Away away(List<PutAside> whole, @Nullable Entry<Fitment> fitment) {
        PutAside aside = last(whole, PutAside.Kind.AWAY);
        if (aside != null && aside.entry().fact() instanceof SentOut) {
            return out.all().stream()
                    .filter(away -> away.sent().id().equals(aside.entry().id()))
                    .findFirst()
                    .orElse(null);
        }
        return fitment == null ? null : out.engine(fitment.fact().engine()).orElse(null);
    }

    private boolean isSplit(Part part) {
        return part.splitAt() != null && ledger.asOf().counts(part.splitAt());
    }

    private static Moment splitAt(Part part) {
        return Objects.requireNonNull(part.splitAt());
    }

    private static List<PutAside> only(List<PutAside> asides, PutAside.Kind kind) {
        return asides.stream().filter(aside -> aside.kind() == kind).toList();
    }

    private static @Nullable PutAside first(List<PutAside> asides, PutAside.Kind kind) {
        return only(asides, kind).stream().findFirst().orElse(null);
    }

    private static @Nullable PutAside last(List<PutAside> asides, PutAside.Kind kind) {
        return only(asides, kind).stream().reduce((one, other) -> other).orElse(null);
    }

    private static Moment earlier(Moment one, Moment other) {
        return other.isBefore(one) ? other : one;
    }
}
