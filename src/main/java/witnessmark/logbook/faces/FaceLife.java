package witnessmark.logbook.faces;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import witnessmark.domain.Engine;
import witnessmark.domain.Entry;
import witnessmark.domain.Id;
import witnessmark.domain.Incident;
import witnessmark.domain.Part;
import witnessmark.domain.PartKind;
import witnessmark.ledger.LifeLedger;
import witnessmark.logbook.View;
import witnessmark.quantity.Counter;
import witnessmark.quantity.Moment;
import witnessmark.study.FailedAt;

/**
 * The life of a head or block with its skims and what broke while it was in the engine; hours of running.
 *
 * @param page its face
 * @param total what it has run
 * @param since what it had run at its last skim; 0 when none is written down
 * @param skims each skim with what it had run then
 * @param incidents each incident with what it had run then
 */
public record FaceLife(
        FacePage page, double total, double since, List<At<SkimLine>> skims, List<At<Entry<Incident>>> incidents) {
    private static final double HOUR = 3_600_000;

    public FaceLife {
        skims = List.copyOf(skims);
        incidents = List.copyOf(incidents);
    }

    /** Something that happened after so many hours. */
    public record At<T>(T what, double hours) {}

    /**
     * Every head and block, the one longest since its skim first.
     *
     * @param pages their faces as {@link SeeFaces#all} has them
     */
    public static List<FaceLife> of(View view, List<FacePage> pages) {
        return pages.stream()
                .filter(page -> page.kind() != PartKind.HEAD_GASKET)
                .map(page -> of(view, page))
                .sorted(Comparator.comparingDouble(life -> life.since() - life.total()))
                .toList();
    }

    private static FaceLife of(View view, FacePage page) {
        Id<Part> part = page.part().id();
        double total = view.ledger().life(part, Counter.RUNNING).total() / HOUR;
        List<At<SkimLine>> skims = new ArrayList<>();
        for (SkimLine skim : page.skims()) {
            skims.add(
                    0,
                    new At<>(
                            skim,
                            by(view.ledger(), part, total, skim.work().fact().at())));
        }
        List<At<Entry<Incident>>> incidents = view.facts()
                .of(Incident.class)
                .inForce()
                .filter(incident -> view.ledger().asOf().counts(incident.fact().happened()) && of(view, page, incident))
                .map(incident -> new At<>(
                        incident,
                        by(
                                view.ledger(),
                                part,
                                total,
                                Objects.requireNonNull(incident.fact().happened()))))
                .toList();
        double since = skims.isEmpty() ? 0 : skims.get(skims.size() - 1).hours();
        return new FaceLife(page, total, since, skims, incidents);
    }

    private static double by(LifeLedger ledger, Id<Part> part, double total, Moment at) {
        return total - ledger.since(part, Counter.RUNNING, at).total() / HOUR;
    }

    /** Whether it happened to the engine while the part was in it. */
    private static boolean of(View view, FacePage page, Entry<Incident> incident) {
        Moment at = incident.fact().happened();
        Id<Engine> engine = FailedAt.engine(view.facts(), incident.fact());
        return at != null
                && engine != null
                && Optional.ofNullable(view.ledger()
                                .whereIs(page.part().id(), at)
                                .map(fitted -> fitted.fact().engine())
                                .orElse(null))
                        .filter(engine::equals)
                        .isPresent();
    }
}
