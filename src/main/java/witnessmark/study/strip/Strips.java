package witnessmark.study.strip;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.Build;
import witnessmark.domain.Engine;
import witnessmark.domain.EngineDesign;
import witnessmark.domain.Entry;
import witnessmark.domain.Facts;
import witnessmark.domain.Finding;
import witnessmark.domain.Fitment;
import witnessmark.domain.HowMarked;
import witnessmark.domain.Id;
import witnessmark.domain.Part;
import witnessmark.domain.PartDesign;
import witnessmark.domain.PartKind;
import witnessmark.domain.PlaceSide;
import witnessmark.domain.Position;
import witnessmark.ledger.AsOf;
import witnessmark.ledger.LifeLedger;
import witnessmark.ledger.Limits;
import witnessmark.quantity.Counter;
import witnessmark.quantity.Moment;
import witnessmark.study.result.StripCell;
import witnessmark.study.result.StripLine;
import witnessmark.study.result.StripLine.Counted;
import witnessmark.study.result.StripReport;
import witnessmark.study.result.StripRow;
import witnessmark.study.result.StripRow.Pattern;

/**
 * What was found when an engine was opened, place by place, beside what was found there the last time anybody looked. Nothing is
 * added up and nothing judged: how far a mark has gone is what somebody wrote.
 */
public final class Strips {
    /** From how many steps apart one stands alone: common practice, no source. */
    private static final int APART = 2;
    /** With fewer judged positions nothing stands alone: common practice, no source. */
    private static final int FEWEST = 3;

    private final LifeLedger ledger;
    private final Facts facts;

    public Strips(LifeLedger ledger) {
        this.ledger = ledger;
        this.facts = ledger.facts();
    }

    /** The report of a build, with what was written of it by the day the ledger stands at. */
    public StripReport of(Entry<Build> build) {
        return new Report(build).made();
    }

    /** The part of a line that sat in an engine at a moment; null where none did or several may be meant. */
    public @Nullable Entry<Part> part(Id<Engine> engine, StripLine line, Moment at) {
        PartKind kind = line.kind();
        if (kind == null) {
            return null;
        }
        List<Fitment> there = ledger.fittedAt(engine, at).values().stream()
                .map(Entry::fact)
                .filter(fitment -> kind(fitment.part()) == kind)
                .toList();
        List<Fitment> ofSide = there.size() < 2
                ? there
                : there.stream()
                        .filter(fitment -> line.side() != PlaceSide.WHOLE
                                && facts.of(Position.class)
                                        .get(fitment.position())
                                        .name()
                                        .toLowerCase(Locale.ROOT)
                                        .contains(line.side().word()))
                        .toList();
        return ofSide.size() == 1
                ? facts.of(Part.class).find(ofSide.get(0).part()).orElse(null)
                : null;
    }

    private PartKind kind(Id<Part> part) {
        return facts.of(PartDesign.class)
                .get(facts.of(Part.class).get(part).design())
                .kind();
    }

    /** One report, gathered line by line. */
    private final class Report {
        private final Entry<Build> build;
        private final Entry<Engine> engine;
        private final EngineDesign design;
        private final Moment apart;
        private final LifeLedger then;
        private final List<Entry<Finding>> found;
        private final List<Entry<Build>> earlier;

        Report(Entry<Build> build) {
            this.build = build;
            this.engine = facts.of(Engine.class).find(build.fact().engine()).orElseThrow();
            this.design = facts.of(EngineDesign.class).get(engine.fact().design());
            this.apart = build.fact().opened().before();
            this.then = asItWas();
            this.found = found(build.id());
            this.earlier = facts
                    .of(Build.class)
                    .where(other -> other.engine().equals(engine.id())
                            && other.opened().isBefore(build.fact().opened()))
                    .stream()
                    .sorted(Comparator.comparing(
                                    (Entry<Build> other) -> other.fact().opened())
                            .reversed())
                    .toList();
        }

        /** As it was when the engine was opened. */
        private LifeLedger asItWas() {
            AsOf now = ledger.asOf();
            return apart.day().isBefore(now.day()) ? LifeLedger.of(facts, new AsOf(apart.day(), now.zone())) : ledger;
        }

        StripReport made() {
            List<StripRow> rows = Stream.of(StripLine.values())
                    .map(this::row)
                    .filter(row -> row.opened() || row.looked())
                    .toList();
            return new StripReport(
                    engine,
                    build,
                    then.sinceRebuild(engine.id(), Limits.REBUILD, Counter.RUNNING),
                    rows,
                    found.stream()
                            .filter(finding -> StripLine.of(finding.fact()) == null)
                            .toList(),
                    rows.stream().mapToInt(row -> row.cells().size()).max().orElse(0));
        }

        private List<Entry<Finding>> found(Id<Build> of) {
            return facts.of(Finding.class).where(finding -> of.equals(finding.build())).stream()
                    .filter(finding -> ledger.asOf().counts(finding.fact().at()))
                    .sorted(Comparator.comparing(finding -> finding.fact().at()))
                    .toList();
        }

        private StripRow row(StripLine line) {
            List<Entry<Finding>> here = on(line, found);
            List<StripCell> cells = IntStream.rangeClosed(1, positions(line, here))
                    .mapToObj(number -> cell(line, number, here))
                    .toList();
            Entry<Part> part = part(engine.id(), line, apart);
            return new StripRow(
                    line,
                    line.openedBy(build.fact().zones()),
                    part,
                    part == null ? null : then.life(part.id(), Counter.RUNNING),
                    cell(line, null, here),
                    cells,
                    pattern(cells));
        }

        /** As many as the engine has, and more where somebody wrote a number beyond them: nothing written is left out. */
        private int positions(StripLine line, List<Entry<Finding>> here) {
            int known = line.counted() == Counted.CYLINDERS
                    ? design.cylinders()
                    : line.counted() == Counted.MAINS ? Objects.requireNonNullElse(design.mains(), 0) : 0;
            return here.stream()
                    .map(finding -> finding.fact().number())
                    .filter(Objects::nonNull)
                    .reduce(known, Math::max);
        }

        private StripCell cell(StripLine line, @Nullable Integer number, List<Entry<Finding>> here) {
            return new StripCell(number, at(number, here), before(line, number));
        }

        /** From the last build before in which somebody wrote down anything of that position. */
        private List<Entry<Finding>> before(StripLine line, @Nullable Integer number) {
            for (Entry<Build> other : earlier) {
                List<Entry<Finding>> was = at(number, on(line, found(other.id())));
                if (!was.isEmpty()) {
                    return was;
                }
            }
            return List.of();
        }
    }

    private static List<Entry<Finding>> on(StripLine line, List<Entry<Finding>> found) {
        return found.stream()
                .filter(finding -> StripLine.of(finding.fact()) == line)
                .toList();
    }

    private static List<Entry<Finding>> at(@Nullable Integer number, List<Entry<Finding>> found) {
        return found.stream()
                .filter(finding -> Objects.equals(finding.fact().number(), number))
                .toList();
    }

    private static Pattern pattern(List<StripCell> cells) {
        List<Integer> judged = new ArrayList<>(cells.stream()
                .map(StripCell::how)
                .flatMap(Optional::stream)
                .map(HowMarked::ordinal)
                .sorted()
                .toList());
        if (judged.size() < Math.min(FEWEST, Math.max(2, cells.size()))) {
            return Pattern.NONE;
        }
        int most = judged.get(judged.size() - 1);
        if (most - judged.get(judged.size() - 2) >= APART) {
            return Pattern.ONE_ALONE;
        }
        boolean all = judged.size() == cells.size();
        return all && judged.get(0) > 0 && most - judged.get(0) < APART ? Pattern.ALL_ALIKE : Pattern.NONE;
    }
}
