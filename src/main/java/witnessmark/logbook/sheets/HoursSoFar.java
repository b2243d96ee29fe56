package witnessmark.logbook.sheets;

import static witnessmark.logbook.sheets.SheetField.choice;
import static witnessmark.logbook.sheets.SheetField.of;
import static witnessmark.logbook.sheets.SheetField.text;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.Engine;
import witnessmark.domain.Id;
import witnessmark.domain.Part;
import witnessmark.domain.PriorKind;
import witnessmark.domain.PriorLife;
import witnessmark.outcome.ProblemKind;
import witnessmark.quantity.Counter;
import witnessmark.quantity.Moment;
import witnessmark.quantity.RunningTime;

/**
 * The fields for a life from before the logbook: known, about so much between two figures, or not known, as of the
 * evening of a day. Of an engine or part that is not new every other counter is not known, and says so.
 */
final class HoursSoFar {
    static final SheetField HOW = choice("hours_how", 1);
    static final SheetField HOURS = of("hours", FieldKind.HOURS);
    static final SheetField LOWEST = of("hours_lowest", FieldKind.HOURS);
    static final SheetField HIGHEST = of("hours_highest", FieldKind.HOURS);
    static final SheetField AS_OF = of("hours_as_of", FieldKind.DAY);
    static final SheetField WORDS = text("hours_words", 3);

    /** What was read: nothing to write for what is new. */
    record Life(PriorKind kind, RunningTime amount, RunningTime lowest, RunningTime highest, Moment at, String words) {}

    private HoursSoFar() {}

    static SheetGroup group() {
        return SheetGroup.of("hours", List.of(HOW, HOURS, LOWEST, HIGHEST), List.of(AS_OF, WORDS));
    }

    /** Yesterday evening, so that what runs today is added. */
    static void fresh(Map<SheetField, String> out, SheetWord how, SheetSight sight) {
        out.put(HOW, how.key());
        out.put(AS_OF, sight.today().minusDays(1).toString());
    }

    static List<Choice> choices() {
        return List.of(
                SheetWord.PART_NEW.choice(),
                SheetWord.KNOWN.choice(),
                SheetWord.ABOUT.choice(),
                SheetWord.NOT_KNOWN.choice());
    }

    static boolean asks(SheetField field, SheetTyped typed) {
        if (field.equals(HOW)) {
            return true;
        }
        if (field.equals(HOURS)) {
            return typed.is(HOW, SheetWord.KNOWN) || typed.is(HOW, SheetWord.ABOUT);
        }
        if (field.equals(LOWEST) || field.equals(HIGHEST)) {
            return typed.is(HOW, SheetWord.ABOUT);
        }
        return !typed.is(HOW, SheetWord.PART_NEW);
    }

    /**
     * The life carried in, or null for what is new or while something is wrong.
     *
     * @param otherwise the moment it is stated for when no day is given, or null when a day has to be
     */
    static @Nullable Life read(ReadSheet in, ReadValues values, @Nullable Moment otherwise) {
        in.needed(HOW);
        if (in.is(HOW, SheetWord.PART_NEW)) {
            return null;
        }
        Moment asOf = asOf(in, values, otherwise);
        boolean about = in.is(HOW, SheetWord.ABOUT);
        boolean counted = about || in.is(HOW, SheetWord.KNOWN);
        RunningTime hours = counted ? needed(in, values, HOURS) : RunningTime.NONE;
        RunningTime lowest = about ? needed(in, values, LOWEST) : hours;
        RunningTime highest = about ? needed(in, values, HIGHEST) : hours;
        if (asOf == null
                || hours == null
                || lowest == null
                || highest == null
                || !ordered(in, lowest, hours, highest)) {
            return null;
        }
        PriorKind kind = about ? PriorKind.TOLD : counted ? PriorKind.KNOWN : PriorKind.UNKNOWN;
        return new Life(kind, hours, lowest, highest, asOf, in.text(WORDS));
    }

    private static @Nullable Moment asOf(ReadSheet in, ReadValues values, @Nullable Moment otherwise) {
        if (otherwise != null && in.text(AS_OF).isEmpty()) {
            in.note(AS_OF, SheetNote.of("when_fitted"));
            return otherwise;
        }
        LocalDate day = values.neededDay(AS_OF);
        if (day == null) {
            return null;
        }
        in.note(AS_OF, SheetNote.echo("evening_of", day));
        return Moment.endOf(day, in.sight().view().zone());
    }

    static void make(ReadSheet in, @Nullable Life life, @Nullable Id<Part> part, @Nullable Id<Engine> engine) {
        if (life == null) {
            return;
        }
        in.blame(AS_OF, ProblemKind.PRIOR_LIFE_OVERLAPS_RUNS);
        in.make(
                AS_OF,
                new PriorLife(
                        part,
                        engine,
                        Counter.RUNNING,
                        life.kind(),
                        life.amount().millis(),
                        life.lowest().millis(),
                        life.highest().millis(),
                        life.at(),
                        life.words()));
        for (Counter other : Counter.values()) {
            if (other != Counter.RUNNING) {
                in.make(AS_OF, new PriorLife(part, engine, other, PriorKind.UNKNOWN, 0, 0, 0, life.at(), life.words()));
            }
        }
    }

    private static boolean ordered(ReadSheet in, RunningTime lowest, RunningTime hours, RunningTime highest) {
        if (lowest.compareTo(highest) > 0) {
            in.wrong(LOWEST, ProblemKind.OUT_OF_RANGE, LOWEST, lowest, RunningTime.NONE, highest);
            return false;
        }
        if (hours.compareTo(lowest) < 0 || hours.compareTo(highest) > 0) {
            in.wrong(HOURS, ProblemKind.OUT_OF_RANGE, HOURS, hours, lowest, highest);
            return false;
        }
        return true;
    }

    private static @Nullable RunningTime needed(ReadSheet in, ReadValues values, SheetField field) {
        in.needed(field);
        return values.hours(field);
    }
}
