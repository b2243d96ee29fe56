package witnessmark.logbook.sheets;

import static witnessmark.logbook.sheets.SheetField.choice;
import static witnessmark.logbook.sheets.SheetField.of;
import static witnessmark.logbook.sheets.SheetField.text;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.Chase;
import witnessmark.domain.Entry;
import witnessmark.domain.SentOut;
import witnessmark.outcome.ProblemKind;
import witnessmark.quantity.Moment;

/** A call or a letter about something that is out with others, and what was answered. */
public final class ChaseOut implements LogSheet {
    public static final SheetField OUT = choice("out", 2);
    public static final SheetField WHEN = of("when", FieldKind.DAY);
    public static final SheetField WHEN_TIME = of("when_time", FieldKind.CLOCK);
    public static final SheetField ANSWER = text("answer", 4);
    public static final SheetField PROMISED = of("new_promise", FieldKind.DAY);
    public static final SheetField BY = text("by", 1);

    @Override
    public String key() {
        return "chase";
    }

    @Override
    public List<SheetGroup> groups() {
        return List.of(SheetGroup.of("chase", List.of(OUT, WHEN, WHEN_TIME), List.of(ANSWER), List.of(PROMISED, BY)));
    }

    @Override
    public Map<SheetField, String> fresh(SheetSight sight) {
        return Map.of(OUT, OutNow.onlyOne(sight), WHEN, sight.today().toString(), BY, sight.who());
    }

    @Override
    public Set<SheetField> kept() {
        return Set.of(WHEN, BY);
    }

    @Override
    public List<Choice> choices(SheetField field, SheetTyped typed, SheetSight sight) {
        return field.equals(OUT) ? OutNow.choices(sight) : List.of();
    }

    @Override
    public void read(ReadSheet in) {
        ReadValues values = new ReadValues(in);
        @Nullable Entry<SentOut> out = OutNow.read(in, OUT);
        Moment when = values.moment(WHEN, WHEN_TIME);
        in.note(ANSWER, SheetNote.of("answer_empty"));
        LocalDate promised = values.dayAhead(PROMISED);
        if (in.text(PROMISED).isEmpty()) {
            in.note(PROMISED, SheetNote.of("no_new_promise"));
        }
        if (out == null || when == null) {
            return;
        }
        Moment sent = out.fact().from();
        if (when.isBefore(sent)) {
            in.wrong(WHEN, ProblemKind.EARLIER_THAN, WHEN, when, sent);
        }
        if (promised != null && promised.isBefore(when.day())) {
            in.wrong(PROMISED, ProblemKind.EARLIER_THAN, PROMISED, promised, when);
        }
        if (promised != null && in.text(ANSWER).isEmpty()) {
            in.wrong(ANSWER, ProblemKind.NEEDED, ANSWER);
        }
        if (in.fine()) {
            in.make(WHEN, new Chase(out.id(), when, in.text(ANSWER), promised, in.text(BY)));
        }
    }

    @Override
    public List<String> about(SheetTyped typed, SheetSight sight) {
        return List.of(
                OutNow.find(sight, typed.text(OUT))
                        .map(sent -> OutNow.name(sight, sent))
                        .orElse(""),
                OutNow.find(sight, typed.text(OUT)).map(SentOut::sentTo).orElse(""));
    }
}
