package witnessmark.logbook.sheets;

import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import witnessmark.domain.Entry;
import witnessmark.domain.Reading;
import witnessmark.domain.ReadingKind;
import witnessmark.logbook.run.UsualBand;
import witnessmark.outcome.ProblemKind;

/** What was read of one kind on one engine or part before: its places as they were written, and what is usual there. */
final class ReadingsBefore {
    private final ReadingKind kind;
    private final List<Reading> readings;
    private final List<String> members;

    private ReadingsBefore(ReadingKind kind, List<Reading> readings, List<String> members) {
        this.kind = kind;
        this.readings = readings;
        this.members = members;
    }

    static ReadingsBefore of(SheetSight sight, ReadingKind kind, EngineOrPart on) {
        return new ReadingsBefore(
                kind,
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
        in.note(field, SheetNote.of(typed.isEmpty() ? "place_example" : "first_of_place"));
        return typed;
    }

    /** Asks for a second look at a figure that is unlike those read there before. */
    void query(ReadSheet in, SheetField field, String place, long value) {
        List<Long> values = readings.stream()
                .filter(reading -> reading.place().equals(place) && reading.value() != null)
                .map(reading -> Objects.requireNonNull(reading.value()))
                .toList();
        UsualBand.of(values, leastSpread())
                .filter(band -> !band.holds(value))
                .ifPresent(band -> in.wrong(
                        field,
                        ProblemKind.UNUSUAL,
                        field,
                        new ReadingFigure(kind, value),
                        new ReadingFigure(kind, band.low()),
                        new ReadingFigure(kind, band.high())));
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

    /** What two readings of the same thing differ by, whoever reads: common practice, no source. */
    private long leastSpread() {
        return switch (kind.unit()) {
            case HUNDREDTH_OF_PERCENT -> 100;
            case PASCAL -> 50_000;
            case MILLINEWTON -> 5_000;
            case NANOMETRE -> 20_000;
            case TENTH_OF_BRINELL -> 50;
            case MILLIGRAM_PER_TONNE -> 2_000;
            case GRADE -> 0;
        };
    }
}
