package witnessmark.ledger;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.Chase;
import witnessmark.domain.Engine;
import witnessmark.domain.Entry;
import witnessmark.domain.Facts;
import witnessmark.domain.Id;
import witnessmark.domain.Part;
import witnessmark.domain.PartDesign;
import witnessmark.domain.SentOut;
import witnessmark.ledger.result.Away;
import witnessmark.quantity.Moment;

/** What is out with others as of a day: parts and engines away, new parts on order; promised for when, late or not. */
public final class OutWithOthers {
    private final Facts facts;
    private final AsOf asOf;
    private final List<Away> out;

    /** @param facts everything written */
    public OutWithOthers(Facts facts, AsOf asOf) {
        this.facts = facts;
        this.asOf = asOf;
        Map<Id<SentOut>, List<Entry<Chase>>> chases = new HashMap<>();
        facts.of(Chase.class)
                .inForce()
                .filter(chase -> asOf.counts(chase.fact().at()))
                .sorted(Comparator.comparing(chase -> chase.fact().at()))
                .forEach(chase -> chases.computeIfAbsent(chase.fact().sentOut(), id -> new ArrayList<>())
                        .add(chase));
        this.out = facts.of(SentOut.class)
                .inForce()
                .filter(sent -> isOut(sent.fact()))
                .map(sent -> away(sent, chases.getOrDefault(sent.id(), List.of())))
                .sorted(Comparator.comparing((Away away) -> away.sent().fact().from()))
                .toList();
    }

    /** Everything that is out, what went first first. */
    public List<Away> all() {
        return out;
    }

    /** What is known of something that is out; empty when it is back, or not sent yet. */
    public Optional<Away> of(Id<SentOut> sent) {
        return out.stream().filter(away -> away.sent().id().equals(sent)).findFirst();
    }

    /** What is known of an engine that is away with all that is in it; of two entries the later one. */
    public Optional<Away> engine(@Nullable Id<Engine> engine) {
        return engine == null
                ? Optional.empty()
                : out.stream()
                        .filter(away -> engine.equals(away.sent().fact().engine()))
                        .reduce((earlier, later) -> later);
    }

    private boolean isOut(SentOut sent) {
        return asOf.counts(sent.from()) && (sent.back() == null || !asOf.counts(sent.back()));
    }

    private Away away(Entry<SentOut> sent, List<Entry<Chase>> chases) {
        LocalDate promised = sent.fact().promised();
        Moment heard = sent.fact().from();
        Entry<Chase> last = null;
        for (Entry<Chase> chase : chases) {
            last = chase;
            if (chase.fact().promised() != null) {
                promised = chase.fact().promised();
            }
            if (!chase.fact().answer().isBlank() && heard.isBefore(chase.fact().at())) {
                heard = chase.fact().at();
            }
        }
        Id<Engine> engine = sent.fact().engine();
        Part part = sent.fact().part() == null
                ? null
                : facts.of(Part.class).get(sent.fact().part());
        Id<PartDesign> design = part == null ? sent.fact().design() : part.design();
        return new Away(
                sent,
                engine != null ? facts.of(Engine.class).get(engine).number() : part == null ? "" : part.mark(),
                design == null ? null : facts.of(PartDesign.class).get(design),
                promised,
                last,
                heard,
                promised == null ? 0 : Math.max(0, ChronoUnit.DAYS.between(promised, asOf.day())),
                Math.max(0, ChronoUnit.DAYS.between(heard.day(), asOf.day())));
    }
}
