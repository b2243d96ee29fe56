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

    /** Every head and block with its face, as a list shows them. */
    public static List<FacePage> all(View view) {
        FacePages pages = new FacePages(view);
        return parts(view).stream().map(pages::page).toList();
    }

    /** The faces of one part; empty where the day has no such head, gasket or block. */
    public static Optional<FacePage> of(View view, Id<Part> part) {
        return view.facts()
                .of(Part.class)
                .find(part)
                .filter(found -> found.inForce() && KINDS.contains(kind(view, found)))
                .map(found -> new FacePages(view).page(found));
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
