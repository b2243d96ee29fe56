package witnessmark.logbook.sheets;

import static witnessmark.logbook.sheets.SheetField.choice;
import static witnessmark.logbook.sheets.SheetField.of;
import static witnessmark.logbook.sheets.SheetField.text;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import java.util.stream.Stream;
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
import witnessmark.quantity.typed.TimeUnit;
import witnessmark.quantity.typed.TypedTime;

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

    /** Typed by hand only, never filled in. */
    private static final List<SheetField> LOST_OTHERWISE = List.of(HOURS, LOWEST, HIGHEST, WORDS);

    /** What makes hours typed as known a word of mouth. */
    private static final Pattern ABOUT =
            Pattern.compile("(?iu)(?:about|around|roughly|approx\\.?|circa|ca\\.?|~|≈)\\s*");

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
        return belongs(field, typed) || isLeftOver(field, typed);
    }

    /** Whether a field goes with how the hours are known. */
    private static boolean belongs(SheetField field, SheetTyped typed) {
        if (field.equals(HOURS)) {
            return typed.is(HOW, SheetWord.KNOWN) || typed.is(HOW, SheetWord.ABOUT);
        }
        if (field.equals(LOWEST) || field.equals(HIGHEST)) {
            return typed.is(HOW, SheetWord.ABOUT) || (typed.is(HOW, SheetWord.KNOWN) && saysAbout(typed.text(HOURS)));
        }
        return !typed.is(HOW, SheetWord.PART_NEW);
    }

    /** Whether something typed stands in a field that does not go with how the hours are known: it stays in sight. */
    private static boolean isLeftOver(SheetField field, SheetTyped typed) {
        return LOST_OTHERWISE.contains(field)
                && !belongs(field, typed)
                && !typed.text(field).isEmpty();
    }

    /** Nothing typed is dropped in silence. */
    private static void stopAtLeftOvers(ReadSheet in) {
        for (SheetField field : LOST_OTHERWISE) {
            if (isLeftOver(field, in.typed())) {
                in.wrong(field, ProblemKind.SAYS_OTHERWISE, field, in.text(field), HOW, how(in));
            }
        }
    }

    private static SheetWord how(ReadSheet in) {
        return Stream.of(SheetWord.KNOWN, SheetWord.ABOUT, SheetWord.NOT_KNOWN)
                .filter(word -> in.is(HOW, word))
                .findFirst()
                .orElse(SheetWord.PART_NEW);
    }

    /**
     * The life carried in, or null for what is new or while something is wrong.
     *
     * @param otherwise the moment it is stated for when no day is given, or null when a day has to be
     */
    static @Nullable Life read(ReadSheet in, ReadValues values, @Nullable Moment otherwise) {
        if (!in.needed(HOW).isEmpty()) {
            stopAtLeftOvers(in);
        }
        if (in.is(HOW, SheetWord.PART_NEW)) {
            return null;
        }
        Moment asOf = asOf(in, values, otherwise);
        boolean known = in.is(HOW, SheetWord.KNOWN);
        boolean about = in.is(HOW, SheetWord.ABOUT) || (known && saysAbout(in.text(HOURS)));
        RunningTime hours = about || known ? hours(in, values, about) : RunningTime.NONE;
        RunningTime lowest = about ? bound(in, values, LOWEST, hours) : hours;
        RunningTime highest = about ? bound(in, values, HIGHEST, hours) : hours;
        if (asOf == null
                || hours == null
                || lowest == null
                || highest == null
                || !ordered(in, lowest, hours, highest)) {
            return null;
        }
        PriorKind kind = about ? PriorKind.TOLD : known ? PriorKind.KNOWN : PriorKind.UNKNOWN;
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
        in.blame(AS_OF, ProblemKind.PRIOR_LIFE_OVERLAPS_RUNS, ProblemKind.PRIOR_LIVES_DIFFER);
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
        for (Counter other : Counter.fedByRuns()) {
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

    /** The likely hours; {@code about 9} is read as 9 and said to be about so much. */
    private static @Nullable RunningTime hours(ReadSheet in, ReadValues values, boolean about) {
        in.needed(HOURS);
        RunningTime hours =
                values.read(HOURS, text -> TypedTime.read(ABOUT.matcher(text).replaceFirst(""), TimeUnit.HOUR));
        if (hours != null) {
            in.note(HOURS, SheetNote.echo(about ? "understood_about" : "understood", hours));
        }
        return hours;
    }

    /** The least or the most it may be: without one, nobody has said how far off the likely hours are. */
    private static @Nullable RunningTime bound(
            ReadSheet in, ReadValues values, SheetField field, @Nullable RunningTime hours) {
        if (in.text(field).isEmpty()) {
            in.note(field, SheetNote.of("no_range"));
            return hours;
        }
        return values.hours(field);
    }

    private static boolean saysAbout(String text) {
        return ABOUT.matcher(text).lookingAt();
    }
}
