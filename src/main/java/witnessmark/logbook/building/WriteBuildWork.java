package witnessmark.logbook.building;

import java.time.LocalDate;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.Build;
import witnessmark.domain.Coded;
import witnessmark.domain.Entry;
import witnessmark.domain.Facts;
import witnessmark.domain.Fitment;
import witnessmark.domain.Id;
import witnessmark.domain.Zone;
import witnessmark.logbook.Desk;
import witnessmark.logbook.View;
import witnessmark.logbook.building.BuildField.Name;
import witnessmark.logbook.port.Ids;
import witnessmark.logbook.port.Written;
import witnessmark.logbook.sheets.CloseBuild;
import witnessmark.logbook.sheets.LogSheet;
import witnessmark.logbook.sheets.SheetUnits;
import witnessmark.logbook.sheets.SheetsTogether;
import witnessmark.outcome.Outcome;
import witnessmark.outcome.Problem;
import witnessmark.outcome.ProblemKind;
import witnessmark.quantity.Moment;
import witnessmark.quantity.typed.TypedClock;
import witnessmark.quantity.typed.TypedDate;

/**
 * Reads and writes what is typed on the page of a build: a build opened or opened further, parts out and in, groups
 * tightened, the closing, the signature, all of it one change. Off the event thread.
 */
public final class WriteBuildWork {
    private final Desk desk;
    private final SheetsTogether together;
    private final SheetUnits units;

    public WriteBuildWork(Desk desk, Ids ids, SheetUnits units) {
        this.desk = desk;
        this.units = units;
        this.together = new SheetsTogether(desk, ids, units);
    }

    /**
     * What is wrong.
     *
     * @param field beside which it is shown, or null when it belongs to none
     * @param sheet the sheet whose words its fields go by
     */
    public record Found(@Nullable BuildField field, LogSheet sheet, Problem problem) {}

    /**
     * What the typed text came to.
     *
     * @param found what is wrong or asks for a second look
     * @param page the build as it would stand; null while a new one cannot be opened so
     */
    public record Reading(
            List<Found> found, @Nullable BuildPage page, SheetsTogether.Reading together, List<Found> contradictions) {
        public Reading {
            found = List.copyOf(found);
            contradictions = List.copyOf(contradictions);
        }

        /** Everything that keeps it from being written. */
        public List<Found> stopping() {
            List<Found> all = new ArrayList<>(found);
            all.addAll(contradictions);
            all.removeIf(each -> !each.problem().stops());
            return all;
        }
    }

    /** What it comes to, held against the rest of the logbook. This may take a while in a large logbook. */
    public Reading read(BuildDraft draft) {
        View view = desk.view();
        BuildSteps steps = new BuildSteps(draft);
        List<Entry<?>> first = new ArrayList<>();
        deeper(view, draft).ifPresent(first::add);
        SheetsTogether.Reading read = together.read(first, steps.all());
        Facts after = view.facts().with(read.entries());
        Entry<Build> build =
                steps.build(after).filter(found -> isMeant(view, draft, found)).orElse(null);
        SheetsTogether.Reading whole =
                build == null ? read : read.with(entry -> inBuild(view.facts(), draft, build.id(), entry));
        Facts finished = view.facts().with(whole.entries());
        List<Found> found = new ArrayList<>();
        read.found().forEach(each -> found.add(found(steps, each)));
        if (build != null) {
            outOfOrder(view, draft, build.fact()).ifPresent(found::add);
        }
        return new Reading(
                found,
                build == null ? null : page(view, finished, build.id()),
                whole,
                together.check(whole).stream().map(each -> found(steps, each)).toList());
    }

    /** Writes it; what stops keeps all of it from being written. */
    public Outcome<Written> save(Reading reading, String why) {
        List<Problem> stops = reading.stopping().stream().map(Found::problem).toList();
        return stops.isEmpty() ? together.save(reading.together(), why) : Outcome.didNot(stops);
    }

    private static boolean isMeant(View view, BuildDraft draft, Entry<Build> found) {
        return draft.build() != null
                || view.facts().of(Build.class).find(found.id()).isEmpty();
    }

    private static BuildPage page(View view, Facts facts, Id<Build> build) {
        View after = new View(facts, view.day(), view.zone(), view.ledger().after(facts), view.readOnly());
        return SeeBuild.of(after, facts.of(Build.class).find(build).orElseThrow());
    }

    /** An open build with more zones than are written. What was opened once is never taken away here. */
    private static Optional<Entry<Build>> deeper(View view, BuildDraft draft) {
        if (draft.build() == null) {
            return Optional.empty();
        }
        Entry<Build> build = view.facts().of(Build.class).find(draft.build()).orElseThrow();
        Build was = build.fact();
        Set<Zone> zones = EnumSet.copyOf(was.zones());
        for (String code : draft.text(Name.ZONES).split(",")) {
            Coded.find(Zone.class, code.strip()).ifPresent(zones::add);
        }
        return zones.equals(was.zones())
                ? Optional.empty()
                : Optional.of(new Entry<>(
                        build.id(),
                        new Build(
                                was.engine(),
                                was.number(),
                                zones,
                                was.opened(),
                                was.closed(),
                                was.signedBy(),
                                was.note()),
                        build.standing(),
                        build.struckBecause(),
                        build.rev() + 1));
    }

    /** Parts that come out and go in carry the build. */
    private static Entry<?> inBuild(Facts before, BuildDraft draft, Id<Build> build, Entry<?> entry) {
        if (!(entry.fact() instanceof Fitment now) || !draft.engine().equals(now.engine())) {
            return entry;
        }
        Fitment was = before.of(Fitment.class)
                .find(new Id<>(entry.id().value()))
                .map(Entry::fact)
                .orElse(null);
        boolean out = now.to() != null && (was == null || was.to() == null);
        Fitment named = new Fitment(
                now.part(),
                now.engine(),
                now.car(),
                now.position(),
                now.from(),
                now.to(),
                was == null ? build : now.buildIn(),
                out ? build : now.buildOut(),
                now.why(),
                now.condition(),
                now.borrowed());
        return new Entry<>(new Id<>(entry.id().value()), named, entry.standing(), entry.struckBecause(), entry.rev());
    }

    private static Found found(BuildSteps steps, SheetsTogether.Found each) {
        SheetsTogether.Step step = each.step();
        if (step == null) {
            return new Found(null, new CloseBuild(), each.problem());
        }
        BuildField field = each.field() == null ? steps.first(step) : steps.field(step, each.field());
        return new Found(field, step.sheet(), each.problem());
    }

    /** What is done to an engine lies between its opening and its closing. */
    private Optional<Found> outOfOrder(View view, BuildDraft draft, Build build) {
        boolean work = new HashSet<>(draft.texts().keySet())
                .stream().anyMatch(field -> !field.row().equals(BuildField.BUILD) && draft.has(field));
        Moment when = moment(view, draft, Name.WHEN, Name.WHEN_TIME);
        if (!work || when == null) {
            return Optional.empty();
        }
        if (when.isBefore(build.opened())) {
            return Optional.of(late(Name.WHEN, when, build.opened()));
        }
        Moment closed = moment(view, draft, Name.CLOSED, Name.CLOSED_TIME);
        return closed != null && closed.isBefore(when)
                ? Optional.of(late(Name.CLOSED, closed, when))
                : Optional.empty();
    }

    private static Found late(Name name, Moment moment, Moment least) {
        LogSheet sheet = new CloseBuild();
        Object field = name == Name.CLOSED ? CloseBuild.CLOSED : witnessmark.logbook.sheets.TakeOffPart.WHEN;
        return new Found(BuildField.of(name), sheet, Problem.of(ProblemKind.EARLIER_THAN, field, moment, least));
    }

    private @Nullable Moment moment(View view, BuildDraft draft, Name day, Name time) {
        LocalDate on = TypedDate.read(draft.text(day), desk.today().day(), units.days())
                .only()
                .orElse(null);
        LocalTime at = TypedClock.read(draft.text(time)).only().orElse(null);
        return on == null ? null : at == null ? Moment.endOf(on, view.zone()) : Moment.of(on.atTime(at), view.zone());
    }
}
