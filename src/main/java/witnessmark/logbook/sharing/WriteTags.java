package witnessmark.logbook.sharing;

import java.nio.file.Path;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.Build;
import witnessmark.domain.Engine;
import witnessmark.domain.Entry;
import witnessmark.domain.Facts;
import witnessmark.domain.Fitment;
import witnessmark.domain.Id;
import witnessmark.domain.Incident;
import witnessmark.domain.Part;
import witnessmark.domain.PartDesign;
import witnessmark.domain.Position;
import witnessmark.ledger.AsOf;
import witnessmark.logbook.Desk;
import witnessmark.logbook.View;
import witnessmark.logbook.money.LifeThen;
import witnessmark.logbook.port.Paper;
import witnessmark.logbook.port.PaperFiles;
import witnessmark.outcome.Outcome;
import witnessmark.quantity.Counter;
import witnessmark.quantity.Moment;

/**
 * Writes tags for the bags of an engine that comes apart: those of the parts that came off in the build that is open, and of
 * all that is in it still. Off the event thread.
 */
public final class WriteTags {
    private final PaperFiles files;
    private final Function<TagFacts, Paper> layOut;

    /** @param layOut words the tags and lays them out */
    public WriteTags(PaperFiles files, Function<TagFacts, Paper> layOut) {
        this.files = files;
        this.layOut = layOut;
    }

    /**
     * Writes them as of the day looked at.
     *
     * @return how many pages they take
     * @throws IllegalArgumentException when there is no such engine
     */
    public Outcome<Integer> write(Desk desk, Id<Engine> engine, Path file) {
        View view = desk.view();
        Moment now = Moment.of(desk.today().now(), view.zone());
        TagFacts facts = facts(view, engine, desk.name(), now)
                .orElseThrow(() -> new IllegalArgumentException("no engine " + engine));
        return files.write(layOut.apply(facts), file);
    }

    /** The engine that tags are wanted of when none is in view: that of the latest open incident, or one that is apart. */
    public static Optional<Id<Engine>> usual(View view) {
        AsOf asOf = view.ledger().asOf();
        Optional<Id<Engine>> failed = view
                .facts()
                .of(Incident.class)
                .where(incident -> incident.engine() != null && isOpen(incident, asOf))
                .stream()
                .max(Comparator.comparing(incident -> incident.fact().at()))
                .map(incident -> incident.fact().engine());
        return failed.or(() -> view.facts().of(Build.class).where(build -> isOpen(build, asOf)).stream()
                .max(Comparator.comparing(build -> build.fact().opened()))
                .map(build -> build.fact().engine()));
    }

    /** What is worded and laid out; empty where there is no such engine. */
    public static Optional<TagFacts> facts(View view, Id<Engine> engine, String logbook, Moment printed) {
        return view.facts()
                .of(Engine.class)
                .find(engine)
                .map(found -> new TagFacts(view, found, incident(view, engine), tags(view, engine), logbook, printed));
    }

    private static @Nullable Entry<Incident> incident(View view, Id<Engine> engine) {
        AsOf asOf = view.ledger().asOf();
        return view
                .facts()
                .of(Incident.class)
                .where(incident -> engine.equals(incident.engine()) && isOpen(incident, asOf))
                .stream()
                .max(Comparator.comparing(incident -> incident.fact().at()))
                .orElse(null);
    }

    private static boolean isOpen(Incident incident, AsOf asOf) {
        return asOf.counts(incident.at()) && incident.openAt(asOf.last());
    }

    private static boolean isOpen(Build build, AsOf asOf) {
        return asOf.counts(build.opened()) && (build.closed() == null || !asOf.counts(build.closed()));
    }

    private static List<TagFacts.Tag> tags(View view, Id<Engine> engine) {
        Facts facts = view.facts();
        AsOf asOf = view.ledger().asOf();
        List<Moment> opened =
                facts.of(Build.class).where(build -> build.engine().equals(engine) && isOpen(build, asOf)).stream()
                        .map(build -> build.fact().opened())
                        .toList();
        List<Fitment> all = facts
                .of(Fitment.class)
                .where(fitment -> engine.equals(fitment.engine()) && asOf.counts(fitment.from()))
                .stream()
                .map(Entry::fact)
                .toList();
        Stream<Fitment> off = all.stream().filter(fitment -> {
            Moment out = out(fitment, asOf);
            return out != null && opened.stream().anyMatch(moment -> !out.isBefore(moment));
        });
        Stream<Fitment> in = all.stream().filter(fitment -> out(fitment, asOf) == null);
        Map<Id<Part>, Fitment> last = new LinkedHashMap<>();
        Stream.concat(off, in).forEach(fitment -> last.put(fitment.part(), fitment));
        Map<Moment, LifeThen> lives = new HashMap<>();
        return last.values().stream()
                .map(fitment -> tag(view, fitment, out(fitment, asOf), lives))
                .sorted(Comparator.comparing((TagFacts.Tag tag) -> tag.off() == null)
                        .thenComparing(tag -> tag.position().ordinal()))
                .toList();
    }

    /** When it came off, as far as that counts; null while it is in. */
    private static @Nullable Moment out(Fitment fitment, AsOf asOf) {
        Moment to = fitment.to();
        return to == null || !asOf.counts(to) ? null : to;
    }

    /** @param lives what parts had run by then, of each moment at which one came off so far */
    private static TagFacts.Tag tag(View view, Fitment fitment, @Nullable Moment off, Map<Moment, LifeThen> lives) {
        Entry<Part> part = view.facts().of(Part.class).find(fitment.part()).orElseThrow();
        return new TagFacts.Tag(
                part,
                view.facts().of(PartDesign.class).get(part.fact().design()),
                view.facts().of(Position.class).get(fitment.position()),
                off,
                off == null
                        ? view.ledger().life(fitment.part(), Counter.RUNNING)
                        : lives.computeIfAbsent(off, then -> LifeThen.at(view.facts(), then, view.zone()))
                                .running(fitment.part()));
    }
}
