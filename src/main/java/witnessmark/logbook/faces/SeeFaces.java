package witnessmark.logbook.faces;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import witnessmark.domain.Entry;
import witnessmark.domain.FaceKind;
import witnessmark.domain.FaceLook;
import witnessmark.domain.Id;
import witnessmark.domain.Part;
import witnessmark.domain.PartDesign;
import witnessmark.domain.PartKind;
import witnessmark.logbook.View;

/** Sees faces as of the day looked at. Reads and computes only. */
public final class SeeFaces {
    /** What has a face, in the order they are shown. */
    private static final List<PartKind> KINDS = List.of(PartKind.HEAD, PartKind.BLOCK, PartKind.HEAD_GASKET);

    private SeeFaces() {}

    /** Every head and block there is on that day, and the gaskets that somebody looked at; heads first, by their marks. */
    public static List<Entry<Part>> parts(View view) {
        return view.facts()
                .of(Part.class)
                .inForce()
                .filter(part -> KINDS.contains(kind(view, part))
                        && (kind(view, part) != PartKind.HEAD_GASKET || looked(view, part)))
                .filter(part -> view.ledger().firstEntry(part.id()).isEmpty())
                .sorted(Comparator.comparing((Entry<Part> part) -> KINDS.indexOf(kind(view, part)))
                        .thenComparing(part -> part.fact().mark()))
                .toList();
    }

    /** Whether a part has a face to be seen: a head, a block, a gasket somebody looked at. */
    public static boolean has(View view, Id<Part> part) {
        return parts(view).stream().anyMatch(each -> each.id().equals(part));
    }

    /** Every head and block with its face, as a list shows them. */
    public static List<FacePage> all(View view) {
        FacePages pages = new FacePages(view);
        return parts(view).stream().map(pages::page).toList();
    }

    /** The face that comes up where nobody chose one: the one that was looked at last, else the first. */
    public static Optional<FacePage> usual(List<FacePage> pages) {
        return pages.stream()
                .filter(page -> !page.looks().isEmpty())
                .max(Comparator.comparing(
                        page -> page.looks().get(0).look().fact().at()))
                .or(() -> pages.stream().findFirst());
    }

    /** The faces of one part; empty where the day has no such head, gasket or block. */
    public static Optional<FacePage> of(View view, Id<Part> part) {
        return view.facts()
                .of(Part.class)
                .find(part)
                .filter(found -> found.inForce() && KINDS.contains(kind(view, found)))
                .map(found -> new FacePages(view).page(found));
    }

    /**
     * What can be laid over the looks of a face: gaskets that were clamped to it first, the last one foremost, then all
     * else with the same frame as listed, itself too.
     */
    public static List<FacePage> over(FacePage page, List<FacePage> all) {
        return all.stream()
                .filter(each -> page.design() != null
                        && each.design() != null
                        && page.design().id().equals(each.design().id()))
                .sorted(Comparator.comparing(
                        (FacePage each) -> each.kind() == PartKind.HEAD_GASKET
                                ? page.against(each).orElse(null)
                                : null,
                        Comparator.nullsLast(Comparator.reverseOrder())))
                .toList();
    }

    /** The faces a part of a kind has. */
    public static Set<FaceKind> faces(PartKind kind) {
        return switch (kind) {
            case HEAD -> Set.of(FaceKind.HEAD);
            case BLOCK -> Set.of(FaceKind.DECK);
            case HEAD_GASKET -> Set.of(FaceKind.GASKET_TO_HEAD, FaceKind.GASKET_TO_BLOCK);
            default -> Set.of();
        };
    }

    static PartKind kind(View view, Entry<Part> part) {
        return view.facts().of(PartDesign.class).get(part.fact().design()).kind();
    }

    private static boolean looked(View view, Entry<Part> part) {
        return view.facts()
                .of(FaceLook.class)
                .inForce()
                .anyMatch(look -> look.fact().part().equals(part.id())
                        && view.ledger().asOf().counts(look.fact().at()));
    }
}
