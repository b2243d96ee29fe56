package witnessmark.ledger;

import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.Entry;
import witnessmark.domain.Finding;
import witnessmark.domain.FindingPlace;
import witnessmark.domain.HowMarked;
import witnessmark.domain.Id;
import witnessmark.domain.Part;
import witnessmark.domain.PlaceSide;

/**
 * What was found on parts that has gone far. That such a part does not go back in before somebody decided so is common practice, no
 * source; nothing here says that one which is marked less may.
 */
public final class FoundMarked {
    private static final Comparator<Entry<Finding>> EARLIEST =
            Comparator.comparing((Entry<Finding> each) -> each.fact().at());

    private final Map<Id<Part>, List<Entry<Finding>>> found;

    public FoundMarked(LifeLedger ledger) {
        this.found = ledger
                .facts()
                .of(Finding.class)
                .where(finding -> finding.part() != null && ledger.asOf().counts(finding.at()))
                .stream()
                .collect(Collectors.groupingBy(
                        finding -> Objects.requireNonNull(finding.fact().part())));
    }

    /** One place of a part. */
    private record Spot(
            @Nullable FindingPlace place, @Nullable Integer number, String member) {
        Spot(Finding finding) {
            this(finding.place(), finding.number(), finding.number() == null ? finding.member() : "");
        }
    }

    /** What is heavily marked or failed on a part by the last look at each of its places, the worst first. */
    public List<Entry<Finding>> on(Id<Part> part) {
        return found.getOrDefault(part, List.of()).stream()
                .collect(Collectors.groupingBy(finding -> new Spot(finding.fact())))
                .values()
                .stream()
                .flatMap(FoundMarked::lastLooks)
                .filter(FoundMarked::isFarGone)
                .sorted(Comparator.comparing(
                                (Entry<Finding> each) -> each.fact().how())
                        .reversed()
                        .thenComparing(EARLIEST))
                .toList();
    }

    /** One look at each side of a place; one that names no side is a look at all of them. */
    private static Stream<Entry<Finding>> lastLooks(List<Entry<Finding>> there) {
        return there.stream()
                .map(each -> side(each.fact()))
                .distinct()
                .flatMap(side -> lastLook(there.stream()
                                .filter(each -> side(each.fact()) == side || side(each.fact()) == PlaceSide.WHOLE)
                                .toList())
                        .stream())
                .distinct();
    }

    private static PlaceSide side(Finding finding) {
        return PlaceSide.of(finding.spot());
    }

    /** What was seen at one place when somebody looked there last: at the same build, or on the same day where it was at none. */
    private static List<Entry<Finding>> lastLook(Collection<Entry<Finding>> there) {
        Finding last = there.stream().max(EARLIEST).orElseThrow().fact();
        return there.stream()
                .filter(each -> last.build() == null
                        ? each.fact().at().day().equals(last.at().day())
                        : Objects.equals(last.build(), each.fact().build()))
                .toList();
    }

    private static boolean isFarGone(Entry<Finding> finding) {
        HowMarked how = finding.fact().how();
        return how != null && how.compareTo(HowMarked.HEAVY) >= 0;
    }
}
