package witnessmark.logbook.measuring;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.Build;
import witnessmark.domain.Engine;
import witnessmark.domain.EngineDesign;
import witnessmark.domain.Entry;
import witnessmark.domain.Facts;
import witnessmark.domain.Fastener;
import witnessmark.domain.GasketClass;
import witnessmark.domain.Id;
import witnessmark.domain.Joint;
import witnessmark.domain.MeasurePlace;
import witnessmark.domain.Measurement;
import witnessmark.domain.Part;
import witnessmark.domain.PartDesign;
import witnessmark.domain.PartKind;
import witnessmark.domain.SizeLimit;
import witnessmark.domain.SpeedFigures;
import witnessmark.domain.StockBatch;
import witnessmark.fit.AtTwenty;
import witnessmark.fit.Gasket;
import witnessmark.fit.Pulls;
import witnessmark.fit.Sheet;
import witnessmark.fit.result.Pull;
import witnessmark.ledger.Stock;
import witnessmark.ledger.Whereabouts;
import witnessmark.ledger.result.Where;
import witnessmark.logbook.View;
import witnessmark.quantity.Moment;

/**
 * Gathers what is known of an engine on the bench. A sheet is held against the limits that stood while its engine was
 * together on that bench: those of the day it was closed, or of the day looked at while it is open.
 */
final class BuildSheets {
    /** What every engine has that limits of size are set for. */
    private static final List<PartKind> WHOLE = List.of(
            PartKind.BLOCK, PartKind.CRANK, PartKind.RODS, PartKind.PISTONS, PartKind.HEAD, PartKind.HEAD_GASKET);

    private final View view;
    private final Facts facts;
    private final Map<Id<Measurement>, Entry<Measurement>> instead = new LinkedHashMap<>();
    private final Map<Id<Build>, List<Entry<Measurement>>> measured = new HashMap<>();

    BuildSheets(View view) {
        this(view, List.of());
    }

    /** @param instead figures as they would stand, in place of what is written of them or beside it */
    BuildSheets(View view, List<Entry<Measurement>> instead) {
        this.view = view;
        this.facts = view.facts();
        instead.forEach(entry -> this.instead.put(entry.id(), entry));
    }

    EngineDesign design(Build build) {
        Engine engine = facts.of(Engine.class).get(build.engine());
        return facts.of(EngineDesign.class).get(engine.design());
    }

    Sheet sheet(Entry<Build> build) {
        Engine engine = facts.of(Engine.class).get(build.fact().engine());
        Set<Id<PartDesign>> designs = designs(build.fact());
        return new Sheet(
                design(build.fact()),
                figures(build.id(), new AtTwenty(made(engine.design()))),
                limits(engine.design(), designs, day(build.fact())),
                gasket(designs));
    }

    /** Every measurement of a build up to the day looked at, repeats too, in the order they were taken. */
    List<Entry<Measurement>> measured(Id<Build> build) {
        return measured.computeIfAbsent(build, this::gather);
    }

    private List<Entry<Measurement>> gather(Id<Build> build) {
        return Stream.concat(
                        facts.of(Measurement.class).inForce().filter(entry -> !instead.containsKey(entry.id())),
                        instead.values().stream().filter(Entry::inForce))
                .filter(entry -> entry.fact().build().equals(build)
                        && view.ledger().asOf().counts(entry.fact().at()))
                .sorted(Comparator.comparing(entry -> entry.fact().at()))
                .toList();
    }

    /** What engines of a design are made of and how warm they get; null where nobody wrote it down. */
    @Nullable
    SpeedFigures made(Id<EngineDesign> design) {
        return facts.of(SpeedFigures.class)
                .inForce()
                .map(Entry::fact)
                .filter(figures -> figures.design().equals(design))
                .reduce((one, other) -> other)
                .orElse(null);
    }

    private Map<MeasurePlace, Sheet.Stated> figures(Id<Build> build, AtTwenty atTwenty) {
        Map<MeasurePlace, Sheet.Stated> figures = new HashMap<>();
        for (Entry<Measurement> entry : measured(build)) {
            Measurement figure = entry.fact();
            if (figure.inUse()) {
                figures.put(figure.place(), new Sheet.Stated(figure.value(), figure.stood(), atTwenty.of(figure)));
            }
        }
        return figures;
    }

    private Moment moment(Build build) {
        Moment last = view.ledger().asOf().last();
        Moment closed = build.closed();
        return closed == null || last.isBefore(closed) ? last : closed;
    }

    private LocalDate day(Build build) {
        return moment(build).day();
    }

    /** Designs of the parts that are in the engine at the end of the build. */
    private Set<Id<PartDesign>> designs(Build build) {
        Set<Id<PartDesign>> designs = new HashSet<>();
        view.ledger()
                .fittedAt(build.engine(), moment(build))
                .values()
                .forEach(fitment -> designs.add(
                        facts.of(Part.class).get(fitment.fact().part()).design()));
        return designs;
    }

    /** Kinds without which an engine is none of which no part is in it at the end of the build. */
    List<PartKind> lacking(Build build) {
        Set<PartKind> there = EnumSet.noneOf(PartKind.class);
        designs(build)
                .forEach(design ->
                        there.add(facts.of(PartDesign.class).get(design).kind()));
        return WHOLE.stream().filter(kind -> !there.contains(kind)).toList();
    }

    /**
     * What the fasteners of each joint of a build pull with, by the last stage each group was tightened by; the worst
     * first, and of those alike in the order they were tightened.
     */
    List<Pull> pulls(Entry<Build> build, Sheet sheet) {
        Set<Id<PartDesign>> designs = designs(build.fact());
        Map<String, Joint> last = new LinkedHashMap<>();
        facts.of(Joint.class)
                .inForce()
                .map(Entry::fact)
                .filter(joint ->
                        build.id().equals(joint.build()) && view.ledger().asOf().counts(joint.at()))
                .sorted(Comparator.comparing(Joint::at))
                .forEach(joint -> last.put(joint.fasteners().code() + " " + joint.which(), joint));
        Pulls pulls = new Pulls(sheet);
        return last.values().stream()
                .map(joint -> pulls.of(joint, fastener(designs, joint.fasteners())))
                .sorted(Comparator.comparing(Pull::finding))
                .toList();
    }

    /** What the fasteners of a kind in the engine of a build are, or null. */
    @Nullable
    Fastener fastener(Build build, PartKind kind) {
        return fastener(designs(build), kind);
    }

    /** What the fasteners of a kind in an engine are; null where nobody wrote it down, or more than one is meant. */
    private @Nullable Fastener fastener(Set<Id<PartDesign>> designs, PartKind kind) {
        List<Fastener> found = facts.of(Fastener.class)
                .inForce()
                .map(Entry::fact)
                .filter(fastener -> designs.contains(fastener.design())
                        && facts.of(PartDesign.class).get(fastener.design()).kind() == kind)
                .toList();
        return found.isEmpty() || kind == PartKind.OTHER && found.size() > 1 ? null : found.get(found.size() - 1);
    }

    private List<SizeLimit> limits(Id<EngineDesign> design, Set<Id<PartDesign>> parts, LocalDate day) {
        return facts.of(SizeLimit.class)
                .inForce()
                .map(Entry::fact)
                .filter(limit -> stands(limit, day)
                        && (limit.design() == null || limit.design().equals(design))
                        && (limit.partDesign() == null || parts.contains(limit.partDesign())))
                .toList();
    }

    private static boolean stands(SizeLimit limit, LocalDate day) {
        return !limit.validFrom().isAfter(day)
                && (limit.validTo() == null || !limit.validTo().isBefore(day));
    }

    private @Nullable GasketClass gasket(Set<Id<PartDesign>> designs) {
        return designs.stream()
                .map(id -> facts.of(PartDesign.class).get(id))
                .filter(design -> design.kind() == PartKind.HEAD_GASKET)
                .map(PartDesign::gasketClass)
                .filter(Objects::nonNull) // nobody said what it is made like
                .findFirst()
                .orElse(null);
    }

    /** The designs of head gaskets that lie free on the shelf, each once, by name. */
    List<Gasket> gasketsOnShelf(LocalDate day) {
        Stream<Id<PartDesign>> parts = new Whereabouts(view.ledger())
                .all().stream()
                        .filter(where -> where.state() == Where.State.SPARE)
                        .map(where -> where.part().fact().design());
        Stream<Id<PartDesign>> batches = new Stock(facts, view.ledger().asOf())
                .all().stream().filter(level -> level.free() > 0).map(level -> {
                    StockBatch batch = level.batch().fact();
                    return batch.design();
                });
        List<Gasket> gaskets = new ArrayList<>();
        Stream.concat(parts, batches).distinct().forEach(id -> {
            PartDesign design = facts.of(PartDesign.class).get(id);
            if (design.kind() == PartKind.HEAD_GASKET) {
                gaskets.add(new Gasket(design.name(), design.gasketClass(), figures(id, day)));
            }
        });
        gaskets.sort(Comparator.comparing(Gasket::design));
        return gaskets;
    }

    private List<SizeLimit> figures(Id<PartDesign> design, LocalDate day) {
        return facts.of(SizeLimit.class)
                .inForce()
                .map(Entry::fact)
                .filter(limit -> design.equals(limit.partDesign()) && stands(limit, day))
                .toList();
    }
}
