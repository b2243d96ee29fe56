package witnessmark.logbook.sheets;

import static witnessmark.logbook.sheets.SheetField.choice;
import static witnessmark.logbook.sheets.SheetField.of;
import static witnessmark.logbook.sheets.SheetField.text;

import java.util.List;
import java.util.Map;
import witnessmark.domain.Entry;
import witnessmark.domain.Lesson;
import witnessmark.outcome.ProblemKind;
import witnessmark.quantity.Moment;

/** Withdraws a lesson with a reason: no sheet signed from then on is asked it, and what was answered stays. */
public final class WithdrawLesson implements LogSheet {
    public static final SheetField LESSON = choice("withdrawn_lesson", 4);
    public static final SheetField WHY = text("withdrawn_because", 4);
    public static final SheetField WHEN = of("withdrawn_on", FieldKind.DAY);
    public static final SheetField WHEN_TIME = of("withdrawn_time", FieldKind.CLOCK);
    public static final SheetField BY = text("by", 1);

    @Override
    public String key() {
        return "withdraw_lesson";
    }

    @Override
    public List<SheetGroup> groups() {
        return List.of(SheetGroup.of("withdraw_lesson", List.of(LESSON), List.of(WHY), List.of(WHEN, WHEN_TIME, BY)));
    }

    @Override
    public Map<SheetField, String> fresh(SheetSight sight) {
        return Map.of(WHEN, sight.today().toString(), BY, sight.who());
    }

    @Override
    public List<Choice> choices(SheetField field, SheetTyped typed, SheetSight sight) {
        return field.equals(LESSON) ? Lessons.choices(sight, lesson -> lesson.withdrawn() == null) : List.of();
    }

    @Override
    public void read(ReadSheet in) {
        Entry<Lesson> lesson = in.chosen(LESSON, Lesson.class);
        if (lesson != null && lesson.fact().withdrawn() != null) {
            in.wrong(LESSON, ProblemKind.LESSON_WITHDRAWN, lesson.fact().what());
        }
        in.note(WHY, SheetNote.of("withdrawn_because_example"));
        String why = in.needed(WHY);
        Moment when = new ReadValues(in).moment(WHEN, WHEN_TIME);
        String by = in.needed(BY);
        if (lesson != null && when != null && when.isBefore(lesson.fact().from())) {
            in.wrong(WHEN, ProblemKind.EARLIER_THAN, WHEN, when, lesson.fact().from());
        }
        if (lesson != null && when != null && in.fine()) {
            Lesson was = lesson.fact();
            in.change(
                    LESSON,
                    lesson,
                    new Lesson(
                            was.incident(),
                            was.what(),
                            was.question(),
                            was.kind(),
                            was.atLeast(),
                            was.atMost(),
                            was.design(),
                            was.partKind(),
                            was.from(),
                            was.by(),
                            when,
                            by,
                            why));
        }
    }

    @Override
    public List<String> about(SheetTyped typed, SheetSight sight) {
        return List.of(Lessons.name(sight, typed.text(LESSON)));
    }
}
