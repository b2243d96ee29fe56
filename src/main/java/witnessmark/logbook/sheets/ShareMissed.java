package witnessmark.logbook.sheets;

import static witnessmark.logbook.sheets.SheetField.choice;
import static witnessmark.logbook.sheets.SheetField.text;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.Car;
import witnessmark.domain.Engine;
import witnessmark.domain.Entry;
import witnessmark.domain.Event;
import witnessmark.domain.Fact;
import witnessmark.domain.Facts;
import witnessmark.domain.Id;
import witnessmark.domain.Incident;
import witnessmark.domain.MissedRun;
import witnessmark.domain.MissedShare;
import witnessmark.domain.PlannedRun;
import witnessmark.domain.Run;
import witnessmark.domain.image.RecordTypes;
import witnessmark.outcome.ProblemKind;

/** Says which start, event or run was missed or lost because of an incident, and what share of the car's weekend. */
public final class ShareMissed implements LogSheet {
    public static final SheetField INCIDENT = choice("incident", 4);
    public static final SheetField WHAT = choice("missed_because", 3);
    public static final SheetField SHARE = text("missed_share", 1);
    public static final SheetField NOTE = text("missed_note", 4);

    private static final String MISSED = "missed:";
    private static final String RUN = "run:";

    @Override
    public String key() {
        return "missed_because";
    }

    @Override
    public List<SheetGroup> groups() {
        return List.of(SheetGroup.of("missed_because", List.of(INCIDENT), List.of(WHAT, SHARE), List.of(NOTE)));
    }

    @Override
    public Map<SheetField, String> fresh(SheetSight sight) {
        return new HashMap<>(Map.of(INCIDENT, Incidents.onlyOpen(sight)));
    }

    @Override
    public Map<SheetField, String> picksFor(Id<Engine> engine, SheetSight sight) {
        return Incidents.ofEngine(INCIDENT, engine, sight);
    }

    @Override
    public Set<SheetField> kept() {
        return Set.of(INCIDENT);
    }

    @Override
    public boolean oneAfterTheOther() {
        return true;
    }

    @Override
    public List<Choice> choices(SheetField field, SheetTyped typed, SheetSight sight) {
        if (field.equals(INCIDENT)) {
            return Incidents.choices(sight, incident -> true);
        }
        Incident incident = sight.find(Incident.class, typed.text(INCIDENT))
                .map(Entry::fact)
                .orElse(null);
        if (!field.equals(WHAT) || incident == null) {
            return List.of();
        }
        List<Choice> choices = new ArrayList<>();
        missed(sight, incident)
                .forEach(missed -> choices.add(Choice.of(MISSED + missed.id().text(), phrase(sight, missed.fact()))));
        runs(sight, incident)
                .forEach(run -> choices.add(Choice.of(RUN + run.id().text(), Incidents.run(sight, run.fact()))));
        return choices;
    }

    /** What its car missed from that day on, the first first; of an incident of no car, what any car did. */
    private static List<Entry<MissedRun>> missed(SheetSight sight, Incident incident) {
        return sight
                .facts()
                .of(MissedRun.class)
                .where(missed -> (incident.car() == null || incident.car().equals(missed.car()))
                        && !missed.at().day().isBefore(incident.at().day()))
                .stream()
                .sorted(Comparator.comparing(missed -> missed.fact().at()))
                .toList();
    }

    /** The run it happened on, and what its car ran at that event. */
    private static List<Entry<Run>> runs(SheetSight sight, Incident incident) {
        return sight
                .facts()
                .of(Run.class)
                .where(run -> run.event() != null
                        && run.car() != null
                        && (incident.car() == null || incident.car().equals(run.car()))
                        && run.event().equals(incident.event()))
                .stream()
                .sorted(Comparator.comparing(run -> run.fact().start()))
                .toList();
    }

    private static SheetNote phrase(SheetSight sight, MissedRun missed) {
        Id<PlannedRun> planned = missed.planned();
        return SheetNote.of(
                "incident_missed",
                planned == null ? SheetNote.of("incident_whole_event") : sight.name(PlannedRun.class, planned),
                sight.name(Event.class, missed.event()),
                sight.name(Car.class, missed.car()),
                missed.how());
    }

    @Override
    public void read(ReadSheet in) {
        Entry<Incident> incident = in.chosen(INCIDENT, Incident.class);
        String key = in.needed(WHAT);
        Entry<MissedRun> missed = entry(in, key, MISSED, MissedRun.class);
        Entry<Run> run = entry(in, key, RUN, Run.class);
        if (!key.isEmpty() && missed == null && run == null) {
            in.wrong(WHAT, ProblemKind.NOT_FOUND, RecordTypes.of(MissedRun.class), key);
        }
        in.note(SHARE, SheetNote.of("incident_share"));
        in.needed(SHARE);
        Integer share = Percent.read(in, SHARE, 1);
        if (incident != null && already(in.sight().facts(), incident.id(), id(missed), id(run))) {
            in.wrong(WHAT, ProblemKind.SHARE_WRITTEN_ALREADY, incident.fact().mark());
        }
        if (incident != null && share != null && in.fine()) {
            in.make(WHAT, new MissedShare(id(missed), id(run), incident.id(), share, in.text(NOTE)));
        }
    }

    private static boolean already(
            Facts facts, Id<Incident> incident, @Nullable Id<MissedRun> missed, @Nullable Id<Run> run) {
        return (missed != null || run != null)
                && !facts.of(MissedShare.class)
                        .where(share -> share.incident().equals(incident)
                                && Objects.equals(share.missed(), missed)
                                && Objects.equals(share.run(), run))
                        .isEmpty();
    }

    private static <F extends Fact> @Nullable Entry<F> entry(ReadSheet in, String key, String before, Class<F> kind) {
        return key.startsWith(before)
                ? in.sight().find(kind, key.substring(before.length())).orElse(null)
                : null;
    }

    private static <F extends Fact> @Nullable Id<F> id(@Nullable Entry<F> entry) {
        return entry == null ? null : entry.id();
    }

    @Override
    public Optional<Map<SheetField, String>> written(Fact fact, SheetSight sight) {
        if (!(fact instanceof MissedShare share)) {
            return Optional.empty();
        }
        Id<MissedRun> missed = share.missed();
        return Optional.of(Map.of(
                INCIDENT, share.incident().text(),
                WHAT,
                        missed != null
                                ? MISSED + missed.text()
                                : RUN + Objects.requireNonNull(share.run()).text(),
                SHARE, AsText.percent(share.share()),
                NOTE, share.note()));
    }

    @Override
    public List<String> about(SheetTyped typed, SheetSight sight) {
        return List.of(Incidents.name(sight, typed.text(INCIDENT)), typed.text(SHARE));
    }
}
