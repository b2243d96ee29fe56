package witnessmark.logbook.sheets;

import static witnessmark.logbook.sheets.SheetField.choice;
import static witnessmark.logbook.sheets.SheetField.of;
import static witnessmark.logbook.sheets.SheetField.text;

import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.Entry;
import witnessmark.domain.Id;
import witnessmark.domain.Notice;
import witnessmark.domain.NoticeDone;
import witnessmark.domain.Part;
import witnessmark.domain.image.RecordTypes;
import witnessmark.outcome.ProblemKind;
import witnessmark.quantity.Moment;

/** What a maker's notice asks for was done on a part. */
public final class DoNotice implements LogSheet {
    public static final SheetField NOTICE = choice("notice", 2);
    public static final SheetField PART = choice("part", 2);
    public static final SheetField WHEN = of("when", FieldKind.DAY);
    public static final SheetField WHEN_TIME = of("when_time", FieldKind.CLOCK);
    public static final SheetField BY = text("by", 1);
    public static final SheetField DONE = text("notice_done", 4);

    @Override
    public String key() {
        return "do_notice";
    }

    @Override
    public List<SheetGroup> groups() {
        return List.of(SheetGroup.of("do_notice", List.of(NOTICE, PART), List.of(WHEN, WHEN_TIME, BY), List.of(DONE)));
    }

    @Override
    public Map<SheetField, String> fresh(SheetSight sight) {
        return Map.of(WHEN, sight.today().toString(), BY, sight.who());
    }

    @Override
    public Set<SheetField> kept() {
        return Set.of(NOTICE, WHEN, WHEN_TIME, BY);
    }

    @Override
    public boolean oneAfterTheOther() {
        return true;
    }

    @Override
    public List<Choice> choices(SheetField field, SheetTyped typed, SheetSight sight) {
        if (field.equals(NOTICE)) {
            return NoticesNow.choices(sight);
        }
        Set<Id<Part>> open = sight.find(Notice.class, typed.text(NOTICE))
                .map(notice -> NoticesNow.open(sight, notice))
                .orElse(Set.of());
        return field.equals(PART)
                ? PartsNow.choices(sight, where -> open.contains(where.part().id()))
                : List.of();
    }

    @Override
    public void read(ReadSheet in) {
        @Nullable Entry<Notice> notice = in.chosen(NOTICE, Notice.class);
        @Nullable Entry<Part> part = in.chosen(PART, Part.class);
        Moment when = new ReadValues(in).moment(WHEN, WHEN_TIME);
        in.note(DONE, SheetNote.of("notice_done_example"));
        String done = in.needed(DONE);
        String by = in.needed(BY);
        if (notice == null) {
            return;
        }
        Set<Id<Part>> open = NoticesNow.open(in.sight(), notice);
        in.note(NOTICE, SheetNote.of("notice_open", open.size()));
        if (part != null && !open.contains(part.id())) {
            in.wrong(
                    PART,
                    ProblemKind.NOT_FOUND,
                    RecordTypes.of(Part.class),
                    part.fact().mark());
        }
        if (in.fine() && part != null && when != null) {
            in.make(PART, new NoticeDone(notice.id(), part.id(), when, done, by));
        }
    }

    @Override
    public List<String> about(SheetTyped typed, SheetSight sight) {
        return List.of(
                sight.find(Notice.class, typed.text(NOTICE))
                        .map(notice -> notice.fact().number())
                        .orElse(""),
                PartsNow.name(sight, typed.text(PART), ""));
    }
}
