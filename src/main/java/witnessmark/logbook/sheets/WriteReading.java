package witnessmark.logbook.sheets;

import static witnessmark.logbook.sheets.SheetField.choice;
import static witnessmark.logbook.sheets.SheetField.of;
import static witnessmark.logbook.sheets.SheetField.text;

import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.Coded;
import witnessmark.domain.Engine;
import witnessmark.domain.Entry;
import witnessmark.domain.Fact;
import witnessmark.domain.Grade;
import witnessmark.domain.Id;
import witnessmark.domain.Reading;
import witnessmark.domain.ReadingKind;
import witnessmark.domain.Tool;
import witnessmark.domain.Warmth;
import witnessmark.outcome.ProblemKind;
import witnessmark.quantity.Moment;

/** Writes down what was read on an engine or a part: a figure, or a grade. */
public final class WriteReading implements LogSheet {
    public static final SheetField KIND = choice("reading_kind", 1);
    public static final SheetField ON = choice("reading_on", 1);
    public static final SheetField PLACE = text("reading_place", 1);
    public static final SheetField VALUE = text("reading_value", 1);
    public static final SheetField GRADE = choice("reading_grade", 1);
    public static final SheetField HEARD = text("heard_at", 3);
    public static final SheetField WARMTH = choice("warmth", 1);
    public static final SheetField BASELINE = choice("baseline", 1);
    public static final SheetField WHEN = of("reading_day", FieldKind.DAY);
    public static final SheetField WHEN_TIME = of("reading_time", FieldKind.CLOCK);
    public static final SheetField BY = text("reading_by", 1);
    public static final SheetField TOOL = choice("tool", 1);
    public static final SheetField NOTE = text("note", 3);

    @Override
    public String key() {
        return "write_reading";
    }

    @Override
    public List<SheetGroup> groups() {
        return List.of(
                SheetGroup.of("reading", List.of(KIND, ON, PLACE, VALUE), List.of(HEARD, GRADE)),
                SheetGroup.of("reading_how", List.of(WHEN, WHEN_TIME, WARMTH, BASELINE), List.of(BY, TOOL, NOTE)));
    }

    @Override
    public Map<SheetField, String> fresh(SheetSight sight) {
        return Map.of(
                KIND, ReadingKind.LEAK_DOWN.code(),
                WARMTH, Warmth.NOT_SAID.code(),
                BASELINE, SheetWord.NO.key(),
                WHEN, sight.today().toString(),
                BY, sight.who());
    }

    @Override
    public Map<SheetField, String> picksFor(Id<Engine> engine, SheetSight sight) {
        return Map.of(ON, EngineOrPart.key(engine, null));
    }

    @Override
    public boolean asks(SheetField field, SheetTyped typed, SheetSight sight) {
        ReadingKind kind = kind(typed);
        boolean graded = kind != null && kind.graded();
        if (field.equals(VALUE)) {
            return !graded;
        }
        if (field.equals(GRADE)) {
            return graded;
        }
        return !field.equals(HEARD) || kind == ReadingKind.LEAK_DOWN;
    }

    @Override
    public Set<SheetField> kept() {
        return Set.of(KIND, ON, WHEN, WHEN_TIME, WARMTH, BASELINE, BY, TOOL);
    }

    @Override
    public boolean oneAfterTheOther() {
        return true;
    }

    @Override
    public List<Choice> choices(SheetField field, SheetTyped typed, SheetSight sight) {
        return switch (field.key()) {
            case "reading_kind" -> Choice.words(ReadingKind.values());
            case "reading_on" -> EngineOrPart.choices(sight);
            case "reading_grade" -> {
                ReadingKind kind = kind(typed);
                yield Arrays.stream(Grade.values())
                        .filter(grade -> kind != null && grade.of(kind))
                        .map(grade -> Choice.of(grade.code(), grade))
                        .toList();
            }
            case "warmth" -> Choice.words(Warmth.values());
            case "tool" ->
                Stream.concat(Stream.of(SheetWord.NONE.choice()), ToolsNow.choices(sight).stream())
                        .toList();
            case "baseline" -> List.of(SheetWord.NO.choice(), SheetWord.YES.choice());
            default -> List.of();
        };
    }

    @Override
    public void read(ReadSheet in) {
        ReadingKind kind = in.word(KIND, ReadingKind.class);
        EngineOrPart on = EngineOrPart.read(in, ON);
        Moment when = new ReadValues(in).moment(WHEN, WHEN_TIME);
        Warmth warmth = in.word(WARMTH, Warmth.class);
        in.note(BASELINE, SheetNote.of("baseline"));
        ReadingsBefore before = kind == null || on == null ? null : ReadingsBefore.of(in.sight(), kind, on);
        if (before != null) {
            before.queryCylinder(in, PLACE);
        }
        String place = before == null ? in.text(PLACE) : before.place(in, PLACE);
        if (before != null && warmth != null) {
            before.noteApart(in, WARMTH, place, warmth);
        }
        @Nullable Long value = null;
        @Nullable Grade grade = null;
        if (kind != null && kind.graded()) {
            grade = grade(in, kind);
            if (before != null && grade != null && when != null) {
                before.noteSilent(in, GRADE, place, grade, when.day());
            }
        } else if (kind != null) {
            in.needed(VALUE);
            value = ReadingFigure.read(in, VALUE, kind);
        }
        if (before != null && value != null && when != null) {
            before.query(in, VALUE, place, value);
            before.queryForce(in, VALUE, place, value, when);
        }
        Entry<Tool> tool = in.text(TOOL).isEmpty() || in.is(TOOL, SheetWord.NONE) ? null : in.chosen(TOOL, Tool.class);
        if (!in.fine() || kind == null || on == null || when == null || warmth == null) {
            return;
        }
        in.make(
                VALUE,
                new Reading(
                        kind,
                        when,
                        engine(in.sight(), on, when),
                        on.partId(),
                        place,
                        value,
                        grade,
                        kind == ReadingKind.LEAK_DOWN ? in.text(HEARD) : "",
                        warmth,
                        in.is(BASELINE, SheetWord.YES),
                        in.text(BY),
                        in.text(NOTE),
                        tool == null ? null : tool.id()));
    }

    @Override
    public Optional<Map<SheetField, String>> written(Fact fact, SheetSight sight) {
        if (!(fact instanceof Reading reading)) {
            return Optional.empty();
        }
        Map<SheetField, String> out = new HashMap<>();
        out.put(KIND, reading.kind().code());
        out.put(ON, EngineOrPart.key(reading.engine(), reading.part()));
        out.put(PLACE, reading.place());
        out.put(VALUE, AsText.reading(reading.kind().unit(), reading.value(), sight.units()));
        out.put(GRADE, AsText.code(reading.grade()));
        out.put(HEARD, reading.heardAt());
        out.put(WARMTH, reading.warmth().code());
        out.put(BASELINE, AsText.yes(reading.baseline()));
        out.put(WHEN, AsText.day(reading.at()));
        out.put(WHEN_TIME, AsText.clock(reading.at()));
        out.put(BY, reading.by());
        out.put(TOOL, reading.tool() == null ? "" : reading.tool().text());
        out.put(NOTE, reading.note());
        return Optional.of(out);
    }

    @Override
    public List<String> about(SheetTyped typed, SheetSight sight) {
        String name =
                EngineOrPart.of(sight, typed.text(ON)).map(EngineOrPart::name).orElse("");
        return List.of((name + " " + typed.text(PLACE)).strip());
    }

    private static @Nullable Grade grade(ReadSheet in, ReadingKind kind) {
        Grade grade = in.word(GRADE, Grade.class);
        if (grade != null && !grade.of(kind)) {
            in.wrong(GRADE, ProblemKind.NEEDED, GRADE);
            return null;
        }
        return grade;
    }

    /** The engine itself, or the one the part was in when it was read. */
    private static @Nullable Id<Engine> engine(SheetSight sight, EngineOrPart on, Moment when) {
        return on.part() == null
                ? on.engineId()
                : sight.view()
                        .ledger()
                        .whereIs(on.part().id(), when)
                        .map(there -> there.fact().engine())
                        .orElse(null);
    }

    private static @Nullable ReadingKind kind(SheetTyped typed) {
        return Coded.find(ReadingKind.class, typed.text(KIND)).orElse(null);
    }
}
