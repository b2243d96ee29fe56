package witnessmark.logbook.building;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.Build;
import witnessmark.domain.Engine;
import witnessmark.domain.EngineDesign;
import witnessmark.domain.Entry;
import witnessmark.domain.Id;
import witnessmark.domain.Position;
import witnessmark.domain.SignOff;
import witnessmark.fit.result.SheetCounts;
import witnessmark.ledger.AsOf;
import witnessmark.ledger.BuildGaps;
import witnessmark.ledger.BuildJoints;
import witnessmark.ledger.BuildPositions;
import witnessmark.ledger.FoundMarked;
import witnessmark.ledger.FreeParts;
import witnessmark.ledger.LifeLedger;
import witnessmark.ledger.Marks;
import witnessmark.ledger.PartsOfBuild;
import witnessmark.ledger.result.BuildPosition;
import witnessmark.ledger.result.FreePart;
import witnessmark.ledger.result.JointGroup;
import witnessmark.ledger.result.ProposedPart;
import witnessmark.logbook.View;
import witnessmark.logbook.measuring.SeeBuildSheet;
import witnessmark.logbook.measuring.SheetPage;

/** Sees builds as of the day looked at. Reads and computes only. */
public final class SeeBuild {
    private SeeBuild() {}

    /** A build as it is written; empty where the day has no such build. */
    public static Optional<BuildPage> of(View view, Id<Build> id) {
        return view.facts()
                .of(Build.class)
                .find(id)
                .filter(build -> build.inForce()
                        && view.ledger().asOf().counts(build.fact().opened()))
                .map(build -> of(view, build));
    }

    /** A build as it is to be written, seen in a logbook in which the rest of its work is. */
    public static BuildPage of(View view, Entry<Build> written) {
        boolean open = SeeBuildSheet.isOpen(view, written.fact());
        Entry<Build> build = open ? stillOpen(written) : written;
        LifeLedger ledger = open ? view.ledger() : closing(view, build.fact());
        Marks marks = new Marks(ledger);
        List<BuildPosition> positions = new BuildPositions(ledger, marks).of(build);
        List<JointGroup> joints = new BuildJoints(ledger).of(build, positions);
        SheetPage sheet = SeeBuildSheet.of(view, build.id()).orElse(null);
        SheetCounts counts = sheet == null ? SheetCounts.NONE : sheet.counts();
        Entry<SignOff> signed = sheet == null ? null : sheet.signed();
        return new BuildPage(
                view.facts(),
                build,
                view.facts().of(Engine.class).find(build.fact().engine()).orElseThrow(),
                ledger.asOf().day(),
                positions,
                joints,
                BuildGaps.of(
                        build.fact(),
                        positions,
                        joints,
                        new FoundMarked(ledger),
                        counts.outside(),
                        counts.missing(),
                        counts.lessons(),
                        signed == null ? null : signed.fact()),
                open ? free(new FreeParts(ledger, marks), build.fact(), positions) : Map.of(),
                sheet == null ? List.of() : sheet.lessons(),
                signed);
    }

    /** What is free on the shelf for the positions of a build, as a proposal from the parts list of another. */
    public static List<ProposedPart> copy(
            View view, Id<Build> from, Build to, List<Entry<Position>> wanted, Set<String> taken) {
        return view.facts()
                .of(Build.class)
                .find(from)
                .map(earlier -> new PartsOfBuild(view.ledger(), new FreeParts(view.ledger(), new Marks(view.ledger())))
                        .copy(earlier, to, wanted, taken))
                .orElse(List.of());
    }

    /** Builds whose parts list can be copied: closed ones of engines of that design, this engine's first, latest first. */
    public static List<Entry<Build>> earlier(View view, Id<Engine> engine, @Nullable Id<Build> but) {
        Id<EngineDesign> design = view.facts().of(Engine.class).get(engine).design();
        return SeeBuildSheet.all(view).stream()
                .filter(build -> !build.id().equals(but)
                        && !SeeBuildSheet.isOpen(view, build.fact())
                        && view.facts()
                                .of(Engine.class)
                                .get(build.fact().engine())
                                .design()
                                .equals(design))
                .sorted(Comparator.comparing(build -> !build.fact().engine().equals(engine)))
                .toList();
    }

    /** The build of an engine with that number; without one the build that is open, or else the latest. */
    public static Optional<Entry<Build>> find(View view, Id<Engine> engine, @Nullable Integer number) {
        return SeeBuildSheet.all(view).stream()
                .filter(build -> build.fact().engine().equals(engine)
                        && (number == null || build.fact().number() == number))
                .findFirst();
    }

    /** On a day before it was closed, as it stood then. */
    private static Entry<Build> stillOpen(Entry<Build> build) {
        Build fact = build.fact();
        return new Entry<>(
                build.id(),
                new Build(
                        fact.engine(), fact.number(), fact.zones(), fact.opened(), null, fact.signedBy(), fact.note()),
                build.standing(),
                build.struckBecause(),
                build.rev());
    }

    private static Map<Id<Position>, List<FreePart>> free(FreeParts parts, Build build, List<BuildPosition> positions) {
        Map<Id<Position>, List<FreePart>> free = new HashMap<>();
        positions.forEach(each -> free.put(each.position().id(), parts.of(build, each.position())));
        return free;
    }

    /** How everything stood on the day it was closed. */
    private static LifeLedger closing(View view, Build build) {
        LocalDate day = java.util.Objects.requireNonNull(build.closed()).day();
        return LifeLedger.of(view.facts(), new AsOf(day, view.zone()));
    }
}
