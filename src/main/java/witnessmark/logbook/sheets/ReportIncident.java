package witnessmark.logbook.sheets;

import static witnessmark.logbook.sheets.SheetField.choice;
import static witnessmark.logbook.sheets.SheetField.of;
import static witnessmark.logbook.sheets.SheetField.text;

import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.Car;
import witnessmark.domain.Engine;
import witnessmark.domain.Entry;
import witnessmark.domain.Event;
import witnessmark.domain.Fact;
import witnessmark.domain.FoundWhen;
import witnessmark.domain.Id;
import witnessmark.domain.Incident;
import witnessmark.domain.MissedShare;
import witnessmark.domain.PartHarm;
import witnessmark.domain.Run;
import witnessmark.domain.Severity;
import witnessmark.outcome.ProblemKind;
import witnessmark.quantity.Moment;
import witnessmark.quantity.typed.TypedClock;
import witnessmark.quantity.typed.TypedDate;

/**
 * Reports something that broke, stopped a car, or was found before it could, with the parts it concerns and what they
 * had run by then. A run that is picked says event, car, engine and day.
 */
public final class ReportIncident implements LogSheet {
    public static final SheetField MARK = text("incident_mark", 1);
    public static final SheetField TITLE = text("incident_title", 3);
    public static final SheetField RUN = choice("incident_run", 2);
    public static final SheetField WHEN = of("when", FieldKind.DAY);
    public static final SheetField WHEN_TIME = of("when_time", FieldKind.CLOCK);
    public static final SheetField CAR = choice("incident_car", 1);
    public static final SheetField ENGINE = choice("incident_engine", 1);
    public static final SheetField EVENT = choice("incident_event", 2);
    public static final SheetField FOUND = choice("incident_found", 1);
    public static final SheetField SEVERITY = choice("incident_severity", 1);
    public static final SheetField SHARE = text("incident_share", 1);
    public static final SheetField BY = text("by", 1);
    public static final SheetField SEEN = new SheetField("incident_seen", FieldKind.LINES, 4);
    public static final SheetField BEFORE = choice("incident_before", 2);

    /** The parts it can name at once; more are named on their own sheet. */
    static final List<HarmedPart> PARTS = List.of(HarmedPart.of("1"), HarmedPart.of("2"), HarmedPart.of("3"));

    @Override
    public String key() {
        return "report_incident";
    }

    @Override
    public List<SheetGroup> groups() {
        return List.of(
                SheetGroup.of(
                        "incident",
                        List.of(MARK, TITLE),
                        List.of(RUN, WHEN, WHEN_TIME),
                        List.of(CAR, ENGINE, EVENT),
                        List.of(FOUND, SEVERITY, SHARE, BY)),
                SheetGroup.of("incident_seen", List.of(SEEN), List.of(BEFORE)),
                new SheetGroup(
                        "incident_parts", PARTS.stream().map(HarmedPart::row).toList()));
    }

    @Override
    public Map<SheetField, String> fresh(SheetSight sight) {
        Map<SheetField, String> out = new HashMap<>();
        out.put(MARK, Incidents.nextMark(sight));
        out.put(WHEN, sight.today().toString());
        out.put(FOUND, FoundWhen.ON_A_RUN.code());
        out.put(BY, sight.who());
        PARTS.forEach(part -> out.put(part.harm(), PartHarm.FAILED.code()));
        return out;
    }

    @Override
    public Map<SheetField, String> picksFor(Id<Engine> engine, SheetSight sight) {
        return Map.of(ENGINE, engine.text(), CAR, carOf(engine, sight.today(), null, sight));
    }

    /** The car the engine sat in then; none where it sat in none. */
    @Override
    public Map<SheetField, String> follows(SheetField picked, SheetTyped typed, SheetSight sight) {
        boolean moves = picked.equals(ENGINE) || picked.equals(WHEN) || picked.equals(WHEN_TIME);
        LocalDate day = TypedDate.read(typed.text(WHEN), sight.today(), sight.days())
                .only()
                .orElse(null);
        if (!moves || day == null || run(typed, sight) != null) {
            return Map.of();
        }
        Id<Engine> engine = id(sight, Engine.class, typed.text(ENGINE));
        LocalTime clock = TypedClock.read(typed.text(WHEN_TIME)).only().orElse(null);
        return Map.of(CAR, engine == null ? "" : carOf(engine, day, clock, sight));
    }

    /** Without a time the car it ran in that day, though it came out in the evening; else the one it was put in. */
    private static String carOf(Id<Engine> engine, LocalDate day, @Nullable LocalTime clock, SheetSight sight) {
        ZoneId zone = sight.view().zone();
        Moment evening = Moment.endOf(day, zone);
        List<Moment> asked =
                clock == null ? List.of(evening.before(), evening) : List.of(Moment.of(day.atTime(clock), zone));
        return asked.stream()
                .flatMap(at -> sight.view().ledger().carOf(engine, at).stream())
                .map(stay -> stay.fact().car().text())
                .findFirst()
                .orElse("");
    }

    @Override
    public boolean asks(SheetField field, SheetTyped typed, SheetSight sight) {
        if (field.equals(WHEN) || field.equals(CAR) || field.equals(ENGINE) || field.equals(EVENT)) {
            return run(typed, sight) == null;
        }
        if (field.equals(SHARE)) {
            Run run = run(typed, sight);
            return run != null && run.event() != null && run.car() != null;
        }
        for (int i = 0; i < PARTS.size(); i++) {
            HarmedPart part = PARTS.get(i);
            if (part.row().contains(field)) {
                boolean named = !typed.text(part.part()).isEmpty();
                return field.equals(part.part())
                        ? named
                                || i == 0
                                || !typed.text(PARTS.get(i - 1).part()).isEmpty()
                        : named && part.asks(field, typed, sight);
            }
        }
        return true;
    }

    private static @Nullable Run run(SheetTyped typed, SheetSight sight) {
        return sight.find(Run.class, typed.text(RUN)).map(Entry::fact).orElse(null);
    }

    @Override
    public List<Choice> choices(SheetField field, SheetTyped typed, SheetSight sight) {
        return switch (field.key()) {
            case "incident_run" -> none(Incidents.runs(sight));
            case "incident_car" -> none(sight.all(Car.class, car -> true));
            case "incident_engine" -> none(sight.all(Engine.class, engine -> true));
            case "incident_event" -> none(EnterCar.events(sight));
            case "incident_before" -> none(Incidents.choices(sight, incident -> true));
            case "incident_found" -> Choice.words(FoundWhen.values());
            case "incident_severity" -> Choice.words(Severity.values());
            default ->
                PARTS.stream()
                        .filter(part -> part.row().contains(field))
                        .findFirst()
                        .map(part -> field.equals(part.part())
                                ? none(part.choices(field, typed, sight, there(typed, sight)))
                                : part.choices(field, typed, sight, there(typed, sight)))
                        .orElse(List.of());
        };
    }

    private static List<Choice> none(List<Choice> choices) {
        List<Choice> all = new ArrayList<>(List.of(SheetWord.NONE.choice()));
        all.addAll(choices);
        return all;
    }

    /** Without a run, what is fitted by today is what is most likely meant. */
    private static HarmedPart.There there(SheetTyped typed, SheetSight sight) {
        Run run = run(typed, sight);
        return run != null
                ? new HarmedPart.There(run.engine(), run.car(), run.start())
                : new HarmedPart.There(
                        id(sight, Engine.class, typed.text(ENGINE)),
                        id(sight, Car.class, typed.text(CAR)),
                        sight.now());
    }

    private static <F extends Fact> @Nullable Id<F> id(SheetSight sight, Class<F> kind, String key) {
        return sight.find(kind, key).map(Entry::id).orElse(null);
    }

    @Override
    public void read(ReadSheet in) {
        String mark = in.newName(MARK, Incident.class);
        String title = in.needed(TITLE);
        in.note(TITLE, SheetNote.of("incident_title_example"));
        in.note(SEEN, SheetNote.of("incident_seen_example"));
        Entry<Run> run = picked(in, RUN, Run.class);
        Moment at = run == null ? new ReadValues(in).moment(WHEN, WHEN_TIME) : during(in, run.fact());
        Entry<Car> car = run == null ? picked(in, CAR, Car.class) : null;
        Entry<Engine> engine = run == null ? picked(in, ENGINE, Engine.class) : null;
        Entry<Event> event = run == null ? picked(in, EVENT, Event.class) : null;
        FoundWhen found = in.word(FOUND, FoundWhen.class);
        Severity severity = in.word(SEVERITY, Severity.class);
        Integer share = asks(SHARE, in.typed(), in.sight()) ? share(in) : null;
        String by = in.needed(BY);
        Entry<Incident> before = picked(in, BEFORE, Incident.class);
        List<HarmedPart.Named> parts = parts(in, at);
        if (!in.fine() || at == null || found == null || severity == null) {
            return;
        }
        Id<Incident> id = in.make(
                TITLE,
                new Incident(
                        mark,
                        title,
                        at,
                        found,
                        id(run),
                        run == null ? id(event) : run.fact().event(),
                        run == null ? id(car) : run.fact().car(),
                        run == null ? id(engine) : run.fact().engine(),
                        severity,
                        in.text(SEEN),
                        id(before),
                        by,
                        null,
                        "",
                        "",
                        ""));
        for (int i = 0; i < parts.size(); i++) {
            in.make(PARTS.get(i).part(), parts.get(i).of(id, ""));
        }
        if (run != null && share != null) {
            in.make(SHARE, new MissedShare(null, run.id(), id, share, ""));
        }
    }

    private static @Nullable Integer share(ReadSheet in) {
        in.note(SHARE, SheetNote.of("incident_share"));
        return Percent.read(in, SHARE, 1);
    }

    /** When on the run: the time given, else when it ended. */
    private static @Nullable Moment during(ReadSheet in, Run run) {
        LocalTime clock = new ReadValues(in).read(WHEN_TIME, TypedClock::read);
        if (!in.text(WHEN_TIME).isEmpty() && clock == null) {
            return null;
        }
        if (clock == null) {
            in.note(WHEN_TIME, SheetNote.of("incident_run_ended", run.back()));
            return run.back();
        }
        Moment at = Moment.of(run.start().day().atTime(clock), run.start().zone());
        in.note(WHEN_TIME, SheetNote.echo("understood", clock));
        if (at.isBefore(run.start())) {
            in.wrong(WHEN_TIME, ProblemKind.EARLIER_THAN, WHEN_TIME, at, run.start());
            return null;
        }
        return at;
    }

    private static List<HarmedPart.Named> parts(ReadSheet in, @Nullable Moment at) {
        List<HarmedPart.Named> all = new ArrayList<>();
        for (HarmedPart part : PARTS) {
            if (!in.text(part.part()).isEmpty()) {
                HarmedPart.Named named = part.read(in, at);
                boolean twice = named != null
                        && all.stream()
                                .anyMatch(other -> other.part().equals(named.part())
                                        && other.member().equals(named.member()));
                if (twice) {
                    in.wrong(
                            part.part(),
                            ProblemKind.PART_NAMED_ALREADY,
                            in.sight()
                                    .name(
                                            witnessmark.domain.Part.class,
                                            Objects.requireNonNull(named).part()));
                } else if (named != null) {
                    all.add(named);
                }
            }
        }
        return all;
    }

    private static <F extends Fact> @Nullable Entry<F> picked(ReadSheet in, SheetField field, Class<F> kind) {
        return in.text(field).isEmpty() ? null : in.chosen(field, kind);
    }

    private static <F extends Fact> @Nullable Id<F> id(@Nullable Entry<F> entry) {
        return entry == null ? null : entry.id();
    }

    @Override
    public List<String> about(SheetTyped typed, SheetSight sight) {
        return List.of(typed.text(MARK), typed.text(TITLE));
    }
}
