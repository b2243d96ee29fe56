package witnessmark.logbook.sheets;

import static witnessmark.logbook.sheets.SheetField.choice;
import static witnessmark.logbook.sheets.SheetField.of;
import static witnessmark.logbook.sheets.SheetField.text;

import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.Entry;
import witnessmark.domain.Notice;
import witnessmark.domain.NoticeTold;
import witnessmark.outcome.ProblemKind;
import witnessmark.quantity.Moment;

/** Somebody was told of a maker's notice. */
public final class TellNotice implements LogSheet {
    public static final SheetField NOTICE = choice("notice", 2);
    public static final SheetField WHO = text("told_who", 2);
    public static final SheetField WHEN = of("when", FieldKind.DAY);
    public static final SheetField WHEN_TIME = of("when_time", FieldKind.CLOCK);
    public static final SheetField BY = text("by", 1);
    public static final SheetField HOW = text("told_how", 4);

    @Override
    public String key() {
        return "tell_notice";
    }

    @Override
    public List<SheetGroup> groups() {
        return List.of(SheetGroup.of("tell_notice", List.of(NOTICE, WHO), List.of(WHEN, WHEN_TIME, BY), List.of(HOW)));
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
        return field.equals(NOTICE) ? NoticesNow.choices(sight) : List.of();
    }

    @Override
    public void read(ReadSheet in) {
        @Nullable Entry<Notice> notice = in.chosen(NOTICE, Notice.class);
        String who = in.needed(WHO);
        Moment when = new ReadValues(in).moment(WHEN, WHEN_TIME);
        in.note(HOW, SheetNote.of("told_how_example"));
        if (notice == null || when == null) {
            return;
        }
        in.note(NOTICE, SheetNote.of("notice_dated", notice.fact().dated()));
        if (when.day().isBefore(notice.fact().dated())) {
            in.wrong(WHEN, ProblemKind.EARLIER_THAN, WHEN, when, notice.fact().dated());
        }
        if (in.fine()) {
            in.make(WHO, new NoticeTold(notice.id(), who, when, in.text(HOW), in.text(BY)));
        }
    }

    @Override
    public List<String> about(SheetTyped typed, SheetSight sight) {
        return List.of(
                typed.text(WHO),
                sight.find(Notice.class, typed.text(NOTICE))
                        .map(notice -> notice.fact().number())
                        .orElse(""));
    }
}
