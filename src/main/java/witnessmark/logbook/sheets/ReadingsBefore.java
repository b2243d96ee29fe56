package witnessmark.logbook.sheets;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.EngineDesign;
import witnessmark.domain.Entry;
import witnessmark.domain.Grade;
import witnessmark.domain.Part;
import witnessmark.domain.Reading;
import witnessmark.domain.ReadingKind;
import witnessmark.domain.ReadingLimit;
import witnessmark.domain.Trigger;
import witnessmark.domain.Warmth;
import witnessmark.ledger.LifeLedger;
import witnessmark.logbook.run.UsualBand;
import witnessmark.outcome.ProblemKind;
import witnessmark.quantity.Counter;
import witnessmark.quantity.Moment;
import witnessmark.study.Differs;

/** What was read of one kind on one engine or part before: its places as they were written, and what is usual there. */
final class ReadingsBefore {
    private static final Pattern CYLINDER = Pattern.compile("(?i)(?:cyl(?:inder|\\.)?\\s*)?([0-9]{1,2})");

    private final ReadingKind kind;
    private final EngineOrPart on;
    private final List<Reading> readings;
    private final List<String> members;

    private ReadingsBefore(ReadingKind kind, EngineOrPart on, List<Reading> readings, List<String> members) {
        this.kind = kind;
        this.on = on;
        this.readings = readings;
        this.members = members;
    }

    static ReadingsBefore of(SheetSight sight, ReadingKind kind, EngineOrPart on) {
        return new ReadingsBefore(
                kind,
                on,
                sight
                        .facts()
                        .of(Reading.class)
                        .where(reading -> reading.kind() == kind
                                && Objects.equals(reading.part(), on.partId())
                                && (on.engine() == null || on.engine().id().equals(reading.engine())))
                        .stream()
                        .map(Entry::fact)
                        .sorted(Comparator.comparing(Reading::at))
                        .toList(),
                on.part() == null
                        ? List.of()
                        : PartsNow.members(sight, on.part().id()).stream()
                                .map(member -> member.fact().mark())
                                .toList());
    }

    /**
     * The place typed, spelt as before where it was read before, else as the member of the set is: readings of one place
     * are told apart by their spelling. The end of a place stands for it where no other ends so.
     */
    String place(ReadSheet in, SheetField field) {
        String typed = in.text(field);
        List<String> places = readings.stream().map(Reading::place).distinct().toList();
        for (String place : places) {
            if (Words.place(place).equals(Words.place(typed))) {
                noteLast(in, field, place);
                return place;
            }
        }
        for (String member : members) {
            if (Words.place(member).equals(Words.place(typed))) {
                in.note(field, SheetNote.echo("understood", member));
                return member;
            }
        }
        List<String> ending = typed.isEmpty()
                ? List.of()
                : places.stream().filter(place -> endsWith(place, typed)).toList();
        if (ending.size() > 1) {
            in.wrong(field, ProblemKind.TWO_READINGS, field, typed, ending.get(0), ending.get(1));
            return typed;
        }
        if (ending.size() == 1) {
            in.note(field, SheetNote.echo("understood", ending.get(0)));
            return ending.get(0);
        }
        in.note(field, SheetNote.of(typed.isEmpty() ? example() : "first_of_place"));
        return typed;
    }

    /** What a place is called where the kind is read at more than one. */
    private String example() {
        return switch (kind) {
            case LEAK_DOWN, COMPRESSION, PLUG, BORESCOPE -> "place_cylinder";
            case SPRING_FORCE, LASH -> "place_valve";
            case OIL_METAL -> "place_metal";
            case HARDNESS, OIL_PRESSURE, FILTER -> "place_example";
        };
    }

    /** Asks for a second look at a figure that is unlike those read there before. */
    void query(ReadSheet in, SheetField field, String place, long value) {
        List<Long> values = readings.stream()
                .filter(reading -> reading.place().equals(place) && reading.value() != null)
                .map(reading -> Objects.requireNonNull(reading.value()))
                .toList();
        UsualBand.of(values, Differs.by(kind.unit()))
                .filter(band -> !band.holds(value))
                .ifPresent(band -> in.wrong(
                        field,
                        ProblemKind.UNUSUAL,
                        field,
                        new ReadingFigure(kind, value),
                        new ReadingFigure(kind, band.low()),
                        new ReadingFigure(kind, band.high())));
    }

    /** Asks where a spring reads stronger than the last time though nothing ran since: it does not get force back. */
    void queryForce(ReadSheet in, SheetField field, String place, long value, Moment when) {
        Entry<Part> part = on.part();
        if (kind != ReadingKind.SPRING_FORCE || part == null) {
            return;
        }
        LifeLedger ledger = in.sight().view().ledger();
        readings.stream()
                .filter(reading -> reading.place().equals(place)
                        && reading.value() != null
                        && reading.at().isBefore(when))
                .reduce((one, other) -> other)
                .filter(last -> value > Objects.requireNonNull(last.value()) + Differs.by(kind.unit())
                        && ledger.since(part.id(), Counter.RUNNING, last.at()).highest() == 0)
                .ifPresent(last -> in.wrong(
                        field,
                        ProblemKind.FORCE_CAME_BACK,
                        field,
                        new ReadingFigure(kind, value),
                        new ReadingFigure(kind, Objects.requireNonNull(last.value()))));
    }

    /** Asks where what is read cylinder by cylinder names something else, as a valve. */
    void queryCylinder(ReadSheet in, SheetField field) {
        String place = in.text(field);
        boolean byCylinder =
                kind == ReadingKind.LEAK_DOWN || kind == ReadingKind.COMPRESSION || kind == ReadingKind.PLUG;
        if (!byCylinder || on.engine() == null || place.isEmpty()) {
            return;
        }
        int cylinders = in.sight()
                .facts()
                .of(EngineDesign.class)
                .get(on.engine().fact().design())
                .cylinders();
        Matcher named = CYLINDER.matcher(place);
        if (!named.matches() || !isOneOf(cylinders, Integer.parseInt(named.group(1)))) {
            in.wrong(field, ProblemKind.NOT_A_CYLINDER, field, place, cylinders);
        }
    }

    /** Says where a grade that is not as it should be, and no better than before, raises nothing. */
    void noteSilent(ReadSheet in, SheetField field, String place, Grade grade, LocalDate day) {
        int before = readings.stream()
                .filter(reading -> reading.place().equals(place) && reading.grade() != null)
                .reduce((one, other) -> other)
                .map(last -> Objects.requireNonNull(last.grade()).badness())
                .orElse(0);
        boolean limited = in.sight()
                .facts()
                .of(ReadingLimit.class)
                .inForce()
                .anyMatch(limit -> limit.fact().kind() == kind
                        && limit.fact().worstGrade() != null
                        && stands(limit.fact().validFrom(), limit.fact().validTo(), day));
        boolean triggered = in.sight()
                .facts()
                .of(Trigger.class)
                .inForce()
                .anyMatch(trigger -> trigger.fact().readingKind() == kind
                        && stands(trigger.fact().validFrom(), trigger.fact().validTo(), day));
        if (grade.badness() > before && !limited && !triggered) {
            in.note(field, SheetNote.of("grade_shows_nowhere"));
        }
    }

    /** Says which readings of the place it will not be held against, since one made hot is compared with none made cold. */
    void noteApart(ReadSheet in, SheetField field, String place, Warmth warmth) {
        List<Reading> others = readings.stream()
                .filter(reading -> reading.place().equals(place) && reading.warmth() != warmth)
                .toList();
        boolean byWarmth = kind == ReadingKind.LEAK_DOWN || kind == ReadingKind.COMPRESSION;
        if (!others.isEmpty()) {
            Warmth last = others.get(others.size() - 1).warmth();
            int alike = Math.toIntExact(
                    others.stream().filter(reading -> reading.warmth() == last).count());
            in.note(field, SheetNote.of("apart_from_" + last.name().toLowerCase(Locale.ROOT), alike));
        } else if (byWarmth && warmth == Warmth.NOT_SAID) {
            in.note(field, SheetNote.of("warmth_not_said"));
        }
    }

    private static boolean isOneOf(int cylinders, int number) {
        return number >= 1 && number <= cylinders;
    }

    private static boolean stands(LocalDate from, @Nullable LocalDate to, LocalDate day) {
        return !day.isBefore(from) && (to == null || !day.isAfter(to));
    }

    private void noteLast(ReadSheet in, SheetField field, String place) {
        Reading last = readings.stream()
                .filter(reading -> reading.place().equals(place))
                .reduce((one, other) -> other)
                .orElseThrow();
        Object read =
                last.grade() != null ? last.grade() : new ReadingFigure(kind, Objects.requireNonNull(last.value()));
        in.note(field, SheetNote.of("last_read", read, last.at().day()));
    }

    private static boolean endsWith(String place, String typed) {
        int from = place.length() - typed.length();
        return from > 0 && place.charAt(from - 1) == ' ' && place.regionMatches(true, from, typed, 0, typed.length());
    }
}
