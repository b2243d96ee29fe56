package witnessmark.logbook.sheets;

import static witnessmark.logbook.sheets.SheetField.choice;
import static witnessmark.logbook.sheets.SheetField.of;
import static witnessmark.logbook.sheets.SheetField.text;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import witnessmark.domain.Build;
import witnessmark.domain.Coded;
import witnessmark.domain.Engine;
import witnessmark.domain.Entry;
import witnessmark.domain.FindingMark;
import witnessmark.domain.FindingPlace;
import witnessmark.domain.HowMarked;
import witnessmark.domain.Id;
import witnessmark.domain.Incident;
import witnessmark.domain.Part;
import witnessmark.domain.Zone;
import witnessmark.logbook.strip.AtStrip;
import witnessmark.logbook.strip.SeeStrip;
import witnessmark.outcome.ProblemKind;
import witnessmark.quantity.Moment;
import witnessmark.study.result.StripLine;

/**
 * Writes down what was found on an engine that came apart, or what else speaks to an incident. Without an incident it is of an engine,
 * and of its build where it was found at a strip.
 */
public final class WriteFinding implements LogSheet {
    public static final SheetField INCIDENT = choice("incident", 4);
    public static final SheetField ENGINE = choice("finding_engine", 1);
    public static final SheetField BUILD = choice("finding_build", 3);
    public static final SheetField PLACE = choice("finding_place", 1);
    public static final SheetField NUMBER = text("finding_number", 1);
    public static final SheetField SPOT = text("finding_spot", 2);
    public static final SheetField MARK = choice("finding_mark", 1);
    public static final SheetField HOW = choice("finding_how", 1);
    public static final SheetField PART = choice("finding_part", 2);
    public static final SheetField WORDS = text("finding_words", 4);
    public static final SheetField WHEN = of("finding_on", FieldKind.DAY);
    public static final SheetField WHEN_TIME = of("finding_time", FieldKind.CLOCK);
    public static final SheetField BY = text("by", 1);

    @Override
    public String key() {
        return "finding";
    }

    @Override
    public List<SheetGroup> groups() {
        return List.of(SheetGroup.of(
                "finding",
                List.of(INCIDENT),
                List.of(ENGINE, BUILD),
                List.of(PLACE, NUMBER, SPOT),
                List.of(MARK, HOW, PART),
                List.of(WORDS),
                List.of(WHEN, WHEN_TIME, BY)));
    }

    @Override
    public Map<SheetField, String> fresh(SheetSight sight) {
        Map<SheetField, String> out = new HashMap<>();
        out.put(INCIDENT, Incidents.onlyOpen(sight));
        out.put(WHEN, sight.today().toString());
        out.put(BY, sight.who());
        return out;
    }

    /** What is found on an engine with one open incident is evidence of that; any other is looked at for itself. */
    @Override
    public Map<SheetField, String> picksFor(Id<Engine> engine, SheetSight sight) {
        Map<SheetField, String> ofIncident = Incidents.ofEngine(INCIDENT, engine, sight);
        return ofIncident.isEmpty()
                ? Map.of(INCIDENT, "", ENGINE, engine.text(), BUILD, openBuild(engine, sight))
                : ofIncident;
    }

    /** The build in which it is apart now; empty where it is together. */
    private static String openBuild(Id<Engine> engine, SheetSight sight) {
        return AtStrip.openAt(sight.view(), engine, sight.now())
                .map(build -> build.id().text())
                .orElse("");
    }

    @Override
    public boolean asks(SheetField field, SheetTyped typed, SheetSight sight) {
        boolean incident = !typed.text(INCIDENT).isEmpty();
        return field.equals(ENGINE)
                ? !incident
                : !field.equals(BUILD) || !incident && !typed.text(ENGINE).isEmpty();
    }

    @Override
    public Map<SheetField, String> follows(SheetField picked, SheetTyped typed, SheetSight sight) {
        Map<SheetField, String> out = new HashMap<>();
        SheetTyped now = typed;
        if (picked.equals(ENGINE)) {
            out.put(
                    BUILD,
                    sight.find(Engine.class, typed.text(ENGINE))
                            .map(engine -> openBuild(engine.id(), sight))
                            .orElse(""));
            now = typed.with(BUILD, out.getOrDefault(BUILD, ""));
        }
        if (Set.of(INCIDENT, ENGINE, BUILD, PLACE, SPOT).contains(picked)) {
            out.put(PART, partThere(now, sight));
        }
        return out;
    }

    /** The part that sat at the place picked, where there can be only one. */
    private static String partThere(SheetTyped typed, SheetSight sight) {
        StripLine line = Coded.find(FindingPlace.class, typed.text(PLACE))
                .map(place -> StripLine.of(place, typed.text(SPOT)))
                .orElse(null);
        return line == null
                ? ""
                : there(typed, sight)
                        .flatMap(there -> there.part(line))
                        .map(Id::text)
                        .orElse("");
    }

    /** What it is on: the engine of the incident as it was then, or what is picked without one. */
    private static Optional<AtStrip> there(SheetTyped typed, SheetSight sight) {
        Optional<Entry<Incident>> incident = sight.find(Incident.class, typed.text(INCIDENT));
        if (incident.isPresent()) {
            return incident.filter(each -> each.fact().engine() != null)
                    .map(each -> AtStrip.of(
                            sight.view(),
                            Objects.requireNonNull(each.fact().engine()),
                            each.fact().at()));
        }
        Optional<Entry<Build>> build = sight.find(Build.class, typed.text(BUILD));
        return sight.find(Engine.class, typed.text(ENGINE))
                .map(engine -> build.filter(each -> each.fact().engine().equals(engine.id()))
                        .map(each -> AtStrip.of(sight.view(), each))
                        .orElseGet(() -> AtStrip.of(sight.view(), engine.id(), sight.now())));
    }

    @Override
    public Set<SheetField> kept() {
        return Set.of(INCIDENT, ENGINE, BUILD, WHEN, BY);
    }

    @Override
    public boolean oneAfterTheOther() {
        return true;
    }

    @Override
    public List<Choice> choices(SheetField field, SheetTyped typed, SheetSight sight) {
        return switch (field.key()) {
            case "incident" -> Choice.orNone(Incidents.choices(sight, incident -> true));
            case "finding_engine" -> Choice.orNone(sight.all(Engine.class, engine -> true));
            case "finding_build" -> Choice.orNone(builds(typed, sight));
            case "finding_place" -> Choice.orNone(places(typed, sight));
            case "finding_mark" -> Choice.orNone(Choice.words(FindingMark.values()));
            case "finding_how" -> Choice.orNone(Choice.words(HowMarked.values()));
            case "finding_part" -> Choice.orNone(parts(typed, sight));
            default -> List.of();
        };
    }

    private static List<Choice> builds(SheetTyped typed, SheetSight sight) {
        return SeeStrip.builds(sight.view()).stream()
                .filter(build -> build.fact().engine().text().equals(typed.text(ENGINE)))
                .map(build -> Choice.of(
                        build.id().text(),
                        SheetNote.of(
                                SeeStrip.open(sight.view(), build) ? "finding_build_open" : "finding_build",
                                build.fact().number(),
                                build.fact().opened().day())))
                .toList();
    }

    /** What the build laid open first. */
    private static List<Choice> places(SheetTyped typed, SheetSight sight) {
        Set<Zone> open = sight.find(Build.class, typed.text(INCIDENT).isEmpty() ? typed.text(BUILD) : "")
                .map(build -> build.fact().zones())
                .orElse(Set.of());
        Set<FindingPlace> first = Arrays.stream(StripLine.values())
                .filter(line -> line.openedBy(open))
                .map(StripLine::place)
                .collect(Collectors.toCollection(() -> EnumSet.noneOf(FindingPlace.class)));
        return Stream.of(true, false)
                .flatMap(
                        opened -> Arrays.stream(FindingPlace.values()).filter(place -> opened == first.contains(place)))
                .map(place -> Choice.of(place.code(), place))
                .toList();
    }

    /** What sat in the engine then; of an incident every other part after it, which may speak to it too. */
    private static List<Choice> parts(SheetTyped typed, SheetSight sight) {
        List<Entry<Part>> all =
                new ArrayList<>(there(typed, sight).map(AtStrip::parts).orElse(List.of()));
        if (typed.text(ENGINE).isEmpty() || !typed.text(INCIDENT).isEmpty()) {
            sight.facts().of(Part.class).where(part -> true).stream()
                    .filter(part -> !all.contains(part))
                    .forEach(all::add);
        }
        return all.stream()
                .map(part -> Choice.of(part.id().text(), part.fact()))
                .toList();
    }

    @Override
    public void read(ReadSheet in) {
        ReadValues values = new ReadValues(in);
        Entry<Incident> incident = in.text(INCIDENT).isEmpty() ? null : in.chosen(INCIDENT, Incident.class);
        FindingPlace place = in.text(PLACE).isEmpty() ? null : in.word(PLACE, FindingPlace.class);
        FindingMark mark = in.text(MARK).isEmpty() ? null : in.word(MARK, FindingMark.class);
        HowMarked how = in.text(HOW).isEmpty() ? null : in.word(HOW, HowMarked.class);
        Integer number = in.text(NUMBER).isEmpty() ? null : values.atLeast(NUMBER, 1);
        Entry<Part> part = in.text(PART).isEmpty() ? null : in.chosen(PART, Part.class);
        in.note(SPOT, SheetNote.of("finding_spot_example"));
        in.note(WORDS, SheetNote.of("finding_example"));
        Moment at = values.moment(WHEN, WHEN_TIME);
        String by = in.needed(BY);
        String words = mark == null ? in.needed(WORDS) : in.text(WORDS);
        Optional<AtStrip> on = at == null
                ? Optional.empty()
                : incident != null ? apart(in.sight(), incident.fact(), at) : engine(in, at);
        if (at == null || !in.fine()) {
            return;
        }
        Id<Part> partId = part == null ? null : part.id();
        Id<Incident> of = incident == null ? null : incident.id();
        AtStrip.Where where = new AtStrip.Where(place, number, in.text(SPOT));
        AtStrip.What what = new AtStrip.What(mark, how, words);
        in.make(
                WORDS,
                on.map(there -> there.finding(of, partId, where, what, at, by))
                        .orElseGet(() -> AtStrip.elsewhere(of, partId, where, what, at, by)));
    }

    /** On the engine of an incident, in the build in which it is apart then; empty where the incident names no engine. */
    private static Optional<AtStrip> apart(SheetSight sight, Incident incident, Moment at) {
        Id<Engine> engine = incident.engine();
        return engine == null
                ? Optional.empty()
                : Optional.of(AtStrip.openAt(sight.view(), engine, at)
                        .map(build -> AtStrip.of(sight.view(), build))
                        .orElseGet(() -> AtStrip.of(sight.view(), engine, at)));
    }

    /** On the engine picked, at the strip for its build where one is; it is not found before the engine was opened. */
    private static Optional<AtStrip> engine(ReadSheet in, Moment at) {
        if (in.text(ENGINE).isEmpty()) {
            in.wrong(INCIDENT, ProblemKind.NEEDED, INCIDENT);
            in.note(ENGINE, SheetNote.of("finding_or_engine"));
            return Optional.empty();
        }
        Entry<Engine> engine = in.chosen(ENGINE, Engine.class);
        Entry<Build> build = in.text(BUILD).isEmpty() ? null : in.chosen(BUILD, Build.class);
        if (engine == null || build == null) {
            return engine == null
                    ? Optional.empty()
                    : Optional.of(AtStrip.of(in.sight().view(), engine.id(), at));
        }
        if (!build.fact().engine().equals(engine.id())) {
            in.wrong(BUILD, ProblemKind.NEEDED, BUILD);
        } else if (at.isBefore(build.fact().opened())) {
            in.wrong(WHEN, ProblemKind.EARLIER_THAN, WHEN, at, build.fact().opened());
        }
        return Optional.of(AtStrip.of(in.sight().view(), build));
    }

    @Override
    public List<String> about(SheetTyped typed, SheetSight sight) {
        String incident = Incidents.name(sight, typed.text(INCIDENT));
        return List.of(
                incident.isEmpty()
                        ? sight.find(Engine.class, typed.text(ENGINE))
                                .map(engine -> engine.fact().number())
                                .orElse("")
                        : incident);
    }
}
