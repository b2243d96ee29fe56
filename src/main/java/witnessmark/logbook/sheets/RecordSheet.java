package witnessmark.logbook.sheets;

import java.lang.reflect.RecordComponent;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.Entry;
import witnessmark.domain.Event;
import witnessmark.domain.Fact;
import witnessmark.domain.Id;
import witnessmark.domain.MissedRun;
import witnessmark.domain.PlannedRun;
import witnessmark.domain.image.Component;
import witnessmark.domain.image.RecordType;
import witnessmark.domain.image.RecordTypes;
import witnessmark.outcome.ProblemKind;
import witnessmark.quantity.Moment;

/**
 * The plain form of any kind of record, one field for each of its components, on which a written one is corrected that
 * has no other sheet. What refers to an entry without a name stays as it is.
 *
 * @param <F> the kind of record
 */
public final class RecordSheet<F extends Fact> implements LogSheet {
    private static final int COLUMNS = 4;
    /** First and last of something that lasts, by their components. */
    private static final Map<String, String> ENDS = Map.of("from", "to", "firstDay", "lastDay", "validFrom", "validTo");

    private static final Map<String, List<ProblemKind>> BLAME = Map.of(
            "from",
                    List.of(
                            ProblemKind.CHANGE_INSIDE_RUN,
                            ProblemKind.FITTED_BEFORE_BOUGHT,
                            ProblemKind.ENGINE_NOT_IN_CAR,
                            ProblemKind.TWO_ENGINES_IN_CAR,
                            ProblemKind.ENGINE_IN_TWO_CARS),
            "truckLeaves", List.of(ProblemKind.TRUCK_AFTER_BEGIN),
            "out", List.of(ProblemKind.PLANNED_RUNS_OVERLAP),
            "position", List.of(ProblemKind.TWO_PARTS_IN_POSITION, ProblemKind.POSITION_OF_ANOTHER_DESIGN),
            "part", List.of(ProblemKind.PART_IN_TWO_PLACES, ProblemKind.SINGLE_USE_AGAIN));

    private final Entry<F> entry;
    private final RecordType<F> type;
    private final List<RecordField> fields;

    @SuppressWarnings("unchecked") // a fact is of its own class
    RecordSheet(Entry<F> entry) {
        this.entry = entry;
        this.type = RecordTypes.of((Class<F>) entry.fact().getClass());
        this.fields = new ArrayList<>();
        RecordComponent[] parts = type.kind().getRecordComponents();
        for (int i = 0; i < parts.length; i++) {
            Component component = type.components().get(i);
            if (RecordChoices.canOffer(component)) {
                fields.add(RecordField.of(parts[i], component));
            }
        }
    }

    /** The kind of record. */
    public Class<F> kind() {
        return type.kind();
    }

    /** The component behind a field. */
    public Component component(SheetField field) {
        return fields.stream()
                .filter(each -> each.fields().contains(field))
                .findFirst()
                .orElseThrow()
                .component();
    }

    /** Whether it is the time of a moment, whose day has a field of its own. */
    public boolean isClock(SheetField field) {
        return fields.stream().anyMatch(each -> field.equals(each.clock()));
    }

    @Override
    public String key() {
        return "record";
    }

    @Override
    public List<SheetGroup> groups() {
        List<List<SheetField>> rows = new ArrayList<>();
        List<SheetField> row = new ArrayList<>();
        int used = 0;
        for (RecordField each : fields) {
            int span = each.fields().stream().mapToInt(SheetField::span).sum();
            if (used + span > COLUMNS) {
                rows.add(row);
                row = new ArrayList<>();
                used = 0;
            }
            row.addAll(each.fields());
            used += span;
        }
        rows.add(row);
        return List.of(new SheetGroup("record", rows));
    }

    @Override
    public Map<SheetField, String> fresh(SheetSight sight) {
        return written(entry.fact(), sight).orElseThrow();
    }

    @Override
    public Optional<Map<SheetField, String>> written(Fact fact, SheetSight sight) {
        Map<SheetField, String> texts = new HashMap<>();
        for (RecordField each : fields) {
            texts.put(each.field(), each.text(fact, sight));
            SheetField clock = each.clock();
            if (clock != null) {
                texts.put(clock, AsText.clock((Moment) each.component().value(fact)));
            }
        }
        return Optional.of(texts);
    }

    @Override
    public List<Choice> choices(SheetField field, SheetTyped typed, SheetSight sight) {
        return fields.stream()
                .filter(each -> each.field().equals(field) && field.kind() == FieldKind.CHOICE)
                .findFirst()
                .map(each -> each.component().refersTo() == null
                        ? each.words()
                        : RecordChoices.of(each.component(), entry.fact(), typed, sight))
                .orElse(List.of());
    }

    @Override
    public void read(ReadSheet in) {
        BLAME.forEach((name, kinds) -> fields.stream()
                .filter(each -> each.component().name().equals(name))
                .forEach(each -> in.blame(each.field(), kinds.toArray(ProblemKind[]::new))));
        Map<String, @Nullable Object> values = new HashMap<>();
        for (RecordField each : fields) {
            Object value = each.read(in, entry.fact());
            values.put(each.component().name(), value);
            if (value instanceof Moment moment
                    && mustHaveHappened()
                    && moment.isAfter(in.sight().now())) {
                in.wrong(
                        each.field(),
                        ProblemKind.RUN_IN_FUTURE,
                        moment.day(),
                        in.sight().today());
            }
        }
        name(in);
        ends(in, values);
        days(in, values);
        if (in.fine()) {
            make(in, values);
        }
    }

    /** A run cannot be planned outside its event, whichever of the two is corrected. */
    private void days(ReadSheet in, Map<String, @Nullable Object> values) {
        if (entry.fact() instanceof PlannedRun planned && values.get("day") instanceof LocalDate day) {
            Event event = in.sight().facts().of(Event.class).get(planned.event());
            if (!day.equals(planned.day()) && EventDays.isOutside(day, event.firstDay(), event.lastDay())) {
                outside(in, "day", planned.name(), day, event.firstDay(), event.lastDay());
            }
        }
        EventDays timetable = timetable(in);
        if (timetable == null
                || !(values.get("firstDay") instanceof LocalDate first)
                || !(values.get("lastDay") instanceof LocalDate last)
                || last.isBefore(first)) {
            return;
        }
        timetable
                .leftOut(first, last)
                .ifPresent(planned -> outside(in, "lastDay", planned.name(), planned.day(), first, last));
        if (timetable.moves(first, last) != 0 && !timetable.timetable().isEmpty()) {
            in.note(
                    field("name"),
                    SheetNote.echo("runs_move_along", timetable.timetable().size()));
        }
    }

    private void outside(
            ReadSheet in, String component, String planned, LocalDate day, LocalDate first, LocalDate last) {
        in.wrong(field(component), ProblemKind.OUTSIDE_EVENT, planned, day, first, last);
    }

    private @Nullable EventDays timetable(ReadSheet in) {
        return entry.fact() instanceof Event event
                ? new EventDays(in.sight().facts(), new Id<>(entry.id().value()), event)
                : null;
    }

    private SheetField field(String component) {
        return fields.stream()
                .filter(each -> each.component().name().equals(component))
                .findFirst()
                .orElseThrow()
                .field();
    }

    private boolean mustHaveHappened() {
        return !(entry.fact() instanceof Event || entry.fact() instanceof MissedRun);
    }

    /** The name people know it by has to be there, and to be its own. */
    private void name(ReadSheet in) {
        String known = entry.fact().knownAs();
        if (known == null) {
            return;
        }
        for (RecordField each : fields) {
            if (each.type() == String.class && known.equals(each.component().value(entry.fact()))) {
                String now = in.needed(each.field());
                boolean taken = !now.isEmpty()
                        && !now.equals(known)
                        && entry.fact().knownWithin() == null
                        && in.sight().facts().of(type.kind()).named(now).isPresent();
                if (taken) {
                    in.wrong(each.field(), ProblemKind.NAME_TAKEN, type, now);
                }
                return;
            }
        }
    }

    private void ends(ReadSheet in, Map<String, @Nullable Object> values) {
        ENDS.forEach((first, last) -> {
            Object from = values.get(first);
            Object to = values.get(last);
            boolean wrong = from instanceof Moment began && to instanceof Moment ended
                    ? !began.isBefore(ended)
                    : from instanceof LocalDate one && to instanceof LocalDate other && other.isBefore(one);
            if (wrong) {
                in.wrong(
                        field(last),
                        ProblemKind.ENDS_BEFORE_IT_BEGINS,
                        "",
                        Objects.requireNonNull(from),
                        Objects.requireNonNull(to));
            }
        });
    }

    private void make(ReadSheet in, Map<String, @Nullable Object> values) {
        @Nullable Object[] all = new Object[type.components().size()];
        for (int i = 0; i < all.length; i++) {
            Component component = type.components().get(i);
            all[i] =
                    values.containsKey(component.name()) ? values.get(component.name()) : component.value(entry.fact());
        }
        SheetField first = fields.get(0).field();
        try {
            F made = type.of(all);
            in.make(first, made);
            alongWith(in, made);
        } catch (IllegalArgumentException impossible) {
            in.wrong(first, ProblemKind.NOT_TOGETHER, type);
        }
    }

    /** The timetable of an event goes with it. */
    private void alongWith(ReadSheet in, F made) {
        EventDays timetable = timetable(in);
        long days = timetable != null && made instanceof Event event
                ? timetable.moves(event.firstDay(), event.lastDay())
                : 0;
        if (timetable != null && days != 0) {
            timetable
                    .timetable()
                    .forEach(planned -> in.change(field("firstDay"), planned, EventDays.moved(planned.fact(), days)));
        }
    }

    @Override
    public List<String> about(SheetTyped typed, SheetSight sight) {
        return List.of();
    }
}
