package witnessmark.logbook.sheets;

import static witnessmark.logbook.sheets.SheetField.choice;
import static witnessmark.logbook.sheets.SheetField.of;
import static witnessmark.logbook.sheets.SheetField.text;

import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.Entry;
import witnessmark.domain.Id;
import witnessmark.domain.MeterReading;
import witnessmark.domain.Part;
import witnessmark.domain.PartDesign;
import witnessmark.domain.PartKind;
import witnessmark.outcome.ProblemKind;
import witnessmark.quantity.Moment;
import witnessmark.quantity.RunningTime;

/** What an hour meter showed. */
public final class ReadMeter implements LogSheet {
    public static final SheetField METER = choice("meter", 2);
    public static final SheetField SHOWS = of("meter_shows", FieldKind.HOURS);
    public static final SheetField WHEN = of("when", FieldKind.DAY);
    public static final SheetField WHEN_TIME = of("when_time", FieldKind.CLOCK);
    public static final SheetField BY = text("by", 1);
    public static final SheetField NOTE = text("note", 2);

    @Override
    public String key() {
        return "read_meter";
    }

    @Override
    public List<SheetGroup> groups() {
        return List.of(SheetGroup.of("meter", List.of(METER, WHEN, WHEN_TIME), List.of(SHOWS, BY, NOTE)));
    }

    @Override
    public Map<SheetField, String> fresh(SheetSight sight) {
        List<Choice> meters = meters(sight);
        return Map.of(
                METER,
                meters.size() == 1 ? meters.get(0).key() : "",
                WHEN,
                sight.today().toString(),
                BY,
                sight.who());
    }

    @Override
    public Set<SheetField> kept() {
        return Set.of(WHEN, WHEN_TIME, BY);
    }

    @Override
    public boolean oneAfterTheOther() {
        return true;
    }

    @Override
    public List<Choice> choices(SheetField field, SheetTyped typed, SheetSight sight) {
        return field.equals(METER) ? meters(sight) : List.of();
    }

    private static List<Choice> meters(SheetSight sight) {
        return PartsNow.choices(
                sight,
                where -> PartsNow.inUse(where)
                        && sight.facts()
                                        .of(PartDesign.class)
                                        .get(where.part().fact().design())
                                        .kind()
                                == PartKind.HOUR_METER);
    }

    @Override
    public void read(ReadSheet in) {
        if (meters(in.sight()).isEmpty()) {
            in.note(METER, SheetNote.of("no_meter"));
        }
        ReadValues values = new ReadValues(in);
        @Nullable Entry<Part> meter = in.chosen(METER, Part.class);
        Moment when = values.moment(WHEN, WHEN_TIME);
        in.needed(SHOWS);
        in.blame(SHOWS, ProblemKind.METER_BACKWARDS);
        RunningTime shows = values.hours(SHOWS);
        if (meter == null || when == null) {
            return;
        }
        Optional<MeterReading> last = last(in.sight(), meter.id(), when);
        last.ifPresent(before -> in.note(METER, SheetNote.of("meter_last", before.shows(), before.at())));
        if (shows == null) {
            return;
        }
        last.ifPresent(before -> query(in, before, when, shows));
        if (in.fine()) {
            in.make(SHOWS, new MeterReading(meter.id(), when, shows, in.text(BY), in.text(NOTE)));
        }
    }

    /** A meter runs no faster than the clock; that it does not run back either, the ledger asks. */
    private static void query(ReadSheet in, MeterReading before, Moment when, RunningTime shows) {
        long gone = Math.max(0, when.epochMillis() - before.at().epochMillis());
        RunningTime most = new RunningTime(before.shows().millis() + gone);
        if (shows.compareTo(most) > 0) {
            in.wrong(SHOWS, ProblemKind.UNUSUAL, SHOWS, shows, before.shows(), most);
        }
    }

    private static Optional<MeterReading> last(SheetSight sight, Id<Part> meter, Moment at) {
        return sight
                .facts()
                .of(MeterReading.class)
                .where(reading -> reading.meter().equals(meter) && !reading.at().isAfter(at))
                .stream()
                .map(Entry::fact)
                .max(Comparator.comparing(MeterReading::at));
    }

    @Override
    public List<String> about(SheetTyped typed, SheetSight sight) {
        return List.of(PartsNow.name(sight, typed.text(METER), ""));
    }
}
