package witnessmark.logbook.sheets;

import static witnessmark.logbook.sheets.SheetField.choice;
import static witnessmark.logbook.sheets.SheetField.of;
import static witnessmark.logbook.sheets.SheetField.text;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.Build;
import witnessmark.domain.Engine;
import witnessmark.domain.Entry;
import witnessmark.domain.Finding;
import witnessmark.domain.FindingMark;
import witnessmark.domain.FindingPlace;
import witnessmark.domain.HowMarked;
import witnessmark.domain.Id;
import witnessmark.domain.Incident;
import witnessmark.domain.Part;
import witnessmark.quantity.Moment;

/** Writes down what was found on an engine that came apart, or what else speaks to an incident. */
public final class WriteFinding implements LogSheet {
    public static final SheetField INCIDENT = choice("incident", 4);
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

    @Override
    public Set<SheetField> kept() {
        return Set.of(INCIDENT, WHEN, BY);
    }

    @Override
    public boolean oneAfterTheOther() {
        return true;
    }

    @Override
    public List<Choice> choices(SheetField field, SheetTyped typed, SheetSight sight) {
        return switch (field.key()) {
            case "incident" -> Incidents.choices(sight, incident -> true);
            case "finding_place" -> Choice.orNone(Choice.words(FindingPlace.values()));
            case "finding_mark" -> Choice.orNone(Choice.words(FindingMark.values()));
            case "finding_how" -> Choice.orNone(Choice.words(HowMarked.values()));
            case "finding_part" -> Choice.orNone(sight.all(Part.class, part -> true));
            default -> List.of();
        };
    }

    @Override
    public void read(ReadSheet in) {
        ReadValues values = new ReadValues(in);
        Entry<Incident> incident = in.chosen(INCIDENT, Incident.class);
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
        if (incident != null && at != null && in.fine()) {
            Id<Engine> engine = incident.fact().engine();
            in.make(
                    WORDS,
                    new Finding(
                            incident.id(),
                            engine,
                            engine == null ? null : openBuild(in.sight(), engine, at),
                            part == null ? null : part.id(),
                            "",
                            place,
                            number,
                            in.text(SPOT),
                            mark,
                            how,
                            null,
                            null,
                            null,
                            null,
                            at,
                            by,
                            words,
                            null,
                            null));
        }
    }

    /** The build in which the engine is apart then. */
    private static @Nullable Id<Build> openBuild(SheetSight sight, Id<Engine> engine, Moment at) {
        return sight
                .facts()
                .of(Build.class)
                .where(build -> build.engine().equals(engine)
                        && !build.opened().isAfter(at)
                        && (build.closed() == null || build.closed().isAfter(at)))
                .stream()
                .map(Entry::id)
                .findFirst()
                .orElse(null);
    }

    @Override
    public List<String> about(SheetTyped typed, SheetSight sight) {
        return List.of(Incidents.name(sight, typed.text(INCIDENT)));
    }
}
